namespace ToiletAid.Core.Quantities;

/// <summary>A unit in which people give and read numbers.</summary>
/// <param name="Symbol">How it is written in files.</param>
/// <param name="Name">How it is read aloud, plural.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Factor">SI units in one of it.</param>
/// <param name="Offset">SI value of its zero.</param>
public sealed record Unit(string Symbol, string Name, Dimension Dimension, double Factor, double Offset = 0)
{
    /// <summary>The SI value of <paramref name="value"/> of this unit.</summary>
    public double ToSi(double value) => (value * Factor) + Offset;

    /// <summary>How many of this unit an SI value is.</summary>
    public double FromSi(double si) => (si - Offset) / Factor;
}
