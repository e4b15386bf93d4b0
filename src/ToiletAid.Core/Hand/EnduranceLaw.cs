namespace ToiletAid.Core.Hand;

/// <summary>How long a steady effort can be held: time = b0 · effort^b1.</summary>
/// <param name="B0">Seconds at full effort; above 0.</param>
/// <param name="B1">Exponent; below 0.</param>
/// <remarks>Frey Law and Avin 2010, Ergonomics 53:109-129, table 2. Fitted from 10 to 100 % of the greatest force in healthy adults of 18
/// to 50 years. At full effort it still gives <paramref name="B0"/>, so it says nothing about shorter holds.</remarks>
public sealed record EnduranceLaw(double B0, double B1)
{
    /// <summary>How long an effort can be held, s.</summary>
    /// <param name="effort">Share of the greatest force, above 0, at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="effort"/> is not above 0 and at most 1.</exception>
    public double Seconds(double effort) => effort > 0 && effort <= 1
        ? B0 * Math.Pow(effort, B1)
        : throw new ArgumentOutOfRangeException(nameof(effort), effort, "not above 0 and at most 1");

    /// <summary>The share of the greatest force that can be held for a time, 0 to 1; 1 for every time below <see cref="B0"/>.</summary>
    /// <param name="seconds">Time held, s; 0 or more.</param>
    public double Effort(double seconds) => seconds <= B0 ? 1 : Math.Pow(seconds / B0, 1 / B1);
}
