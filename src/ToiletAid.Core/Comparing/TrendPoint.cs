using ToiletAid.Core.Person;

namespace ToiletAid.Core.Comparing;

/// <summary>One measurement of a trend.</summary>
/// <param name="Visit">When.</param>
/// <param name="Answer">The whole answer that it is taken from.</param>
/// <param name="Amount">The number as entered.</param>
/// <param name="Unit">Symbol of its unit.</param>
public sealed record TrendPoint(Visit Visit, Answer Answer, double Amount, string Unit)
{
    /// <summary>The number in SI.</summary>
    public double Si => Quantities.Units.Find(Unit)!.ToSi(Amount);
}
