using ToiletAid.Core.Person;

namespace ToiletAid.Core.Hand;

/// <summary>Norms of the hand: strength of grip and pinch, and dexterity.</summary>
/// <param name="Grip">Greatest grip force, N; the better of both hands.</param>
/// <param name="PalmarPinch">Greatest palmar (three-jaw) pinch force of the dominant hand, N.</param>
/// <param name="NineHolePeg">Time of the nine-hole peg test, s; more is worse.</param>
public sealed record HandNorms(NormTable Grip, NormTable PalmarPinch, NormTable NineHolePeg)
{
    /// <summary>The pinch norm, carried on beyond the oldest band of its table in step with the median of the grip norm.</summary>
    /// <param name="ageYears">Age, years; any number.</param>
    /// <param name="sex">Sex; unstated gives the mixture of both.</param>
    /// <remarks>The pinch table ends at 69 years. Standing still there would credit an old hand with the strength of a younger one, so pinch
    /// is taken to fall as grip does (decision); the flag tells that the age is outside the table.</remarks>
    public NormLookup Pinch(double ageYears, Sex sex)
    {
        var pinch = PalmarPinch.For(ageYears, sex);
        double oldest = PalmarPinch.OldestMiddle;
        if (!(ageYears > oldest))
        {
            return pinch;
        }

        double fall = Grip.For(ageYears, sex).Curve.Median / Grip.For(oldest, sex).Curve.Median;
        return pinch with { Curve = pinch.Curve.Scaled(Math.Min(fall, 1), 0) };
    }
}
