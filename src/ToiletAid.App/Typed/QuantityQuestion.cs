using System.Collections.Immutable;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Typed;

/// <summary>What a typed number is for: what it measures, in which units it may be given, and what is plausible.</summary>
public sealed record QuantityQuestion
{
    /// <summary>What is asked for, in lower case, as it stands in the middle of a sentence: "stature".</summary>
    public required string Name { get; init; }

    /// <summary>Units in which it may be given, all of one dimension; a number without a unit means the first.</summary>
    public required ImmutableArray<Unit> Units { get; init; }

    /// <summary>Lowest plausible value, SI, included.</summary>
    public required double Low { get; init; }

    /// <summary>Highest plausible value, SI, included.</summary>
    public required double High { get; init; }

    /// <summary>True when only whole numbers make sense.</summary>
    public bool IsCount { get; init; }

    /// <summary>What is said of a value of 0 or more below the lowest, where it can be true; null where it cannot.</summary>
    public string? Below { get; init; }

    /// <summary>What it measures.</summary>
    public Dimension Dimension => Units[0].Dimension;

    /// <summary>Makes a question.</summary>
    /// <param name="name">What is asked for.</param>
    /// <param name="low">Lowest plausible value, in the first unit.</param>
    /// <param name="high">Highest plausible value, in the first unit.</param>
    /// <param name="symbols">Symbols of the units, the usual one first.</param>
    /// <exception cref="ArgumentException">A symbol is unknown, there is none, or they measure different things.</exception>
    public static QuantityQuestion Of(string name, double low, double high, params ReadOnlySpan<string> symbols)
    {
        var units = ImmutableArray.CreateBuilder<Unit>(symbols.Length);
        foreach (string symbol in symbols)
        {
            units.Add(ToiletAid.Core.Quantities.Units.Find(symbol) ?? throw new ArgumentException($"no unit '{symbol}'", nameof(symbols)));
        }

        if (units.Count == 0 || units.Any(u => u.Dimension != units[0].Dimension))
        {
            throw new ArgumentException("units must be of one dimension", nameof(symbols));
        }

        var usual = units[0];
        return new() { Name = name, Units = units.ToImmutable(), Low = usual.ToSi(low), High = usual.ToSi(high) };
    }

    /// <summary>True when an SI value is plausible; rounding of the last digit is forgiven.</summary>
    internal bool Holds(double si)
    {
        double slack = 1e-9 * Math.Max(Math.Abs(Low), Math.Abs(High));
        return si >= Low - slack && si <= High + slack;
    }
}
