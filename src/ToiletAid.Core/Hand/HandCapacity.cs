using ToiletAid.Core.Person;
using ToiletAid.Core.Randomness;

namespace ToiletAid.Core.Hand;

/// <summary>How strong this person's hand may be in each grasp, as far as is known.</summary>
/// <remarks>All grasps share one percentile: a hand that is strong for its age in one is so in all (decision).</remarks>
public sealed class HandCapacity
{
    private readonly NormCurve _pinch;
    private readonly NormCurve _grip;
    private readonly NormCurve _palm;
    private readonly NormCurve _forearm;

    internal HandCapacity(NormCurve pinch, NormCurve grip, NormCurve palm, NormCurve forearm)
    {
        _pinch = pinch;
        _grip = grip;
        _palm = palm;
        _forearm = forearm;
    }

    /// <summary>True when the age is outside a norm table that was used.</summary>
    public bool IsOutsideNorms { get; init; }

    /// <summary>True when a dynamometer or gauge showed force in a grasp that was seen to be unusable; the weaker finding was used.</summary>
    public bool MeasurementAndGraspDisagree { get; init; }

    /// <summary>How slow the hand is with small things: 1 as usual for the age, more is slower.</summary>
    public required double Slowness { get; init; }

    /// <summary>The spread of one grasp's greatest force, N.</summary>
    /// <param name="grasp">The grasp; one that cannot be used, and none, give nothing: every percentile is 0.</param>
    public NormCurve Of(Grasp grasp) => grasp switch
    {
        Grasp.FinePinch => _pinch,
        Grasp.WholeHand => _grip,
        Grasp.PressWithPalmOrFist => _palm,
        Grasp.PressWithForearm => _forearm,
        _ => NormCurve.Zero,
    };

    /// <summary>The strength at a percentile; the same percentile for every plan gives common random numbers.</summary>
    /// <param name="u">Share of such people who are weaker, above 0 and below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="u"/> is not between 0 and 1.</exception>
    public HandStrength At(double u)
    {
        if (!(u > 0 && u < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(u), u, "not between 0 and 1");
        }

        double z = StandardNormal.Quantile(u);
        return new(_pinch.AtZ(z), _grip.AtZ(z), _palm.AtZ(z), _forearm.AtZ(z));
    }
}
