using System.Collections.Frozen;
using System.Collections.Immutable;

namespace ToiletAid.Core.Quantities;

/// <summary>The units that the tool reads and writes.</summary>
/// <remarks>Factors are exact by definition: international yard and pound agreement 1959 (0.3048 m, 0.45359237 kg), standard gravity
/// 9.80665 m/s² (CGPM 1901), litre 0.001 m³ (CGPM 1964). Each is checked in the tests against a general-purpose unit library.</remarks>
public static class Units
{
    /// <summary>Standard gravity, m/s².</summary>
    internal const double StandardGravity = 9.80665;

    private const double Pound = 0.45359237;
    private const double Inch = 0.0254;

    /// <summary>Every unit.</summary>
    public static ImmutableArray<Unit> All { get; } =
    [
        new("m", "metres", Dimension.Length, 1),
        new("cm", "centimetres", Dimension.Length, 0.01),
        new("mm", "millimetres", Dimension.Length, 0.001),
        new("in", "inches", Dimension.Length, Inch),
        new("ft", "feet", Dimension.Length, 12 * Inch),
        new("kg", "kilograms", Dimension.Mass, 1),
        new("g", "grams", Dimension.Mass, 0.001),
        new("lb", "pounds", Dimension.Mass, Pound),
        new("st", "stone", Dimension.Mass, 14 * Pound),
        new("oz", "ounces", Dimension.Mass, Pound / 16),
        new("N", "newtons", Dimension.Force, 1),
        new("kgf", "kilograms-force", Dimension.Force, StandardGravity),
        new("lbf", "pounds-force", Dimension.Force, Pound * StandardGravity),
        new("deg", "degrees", Dimension.Angle, Math.PI / 180),
        new("rad", "radians", Dimension.Angle, 1),
        new("s", "seconds", Dimension.Time, 1),
        new("min", "minutes", Dimension.Time, 60),
        new("C", "degrees Celsius", Dimension.Temperature, 1),
        new("F", "degrees Fahrenheit", Dimension.Temperature, 5.0 / 9, -160.0 / 9),
        new("m3", "cubic metres", Dimension.Volume, 1),
        new("l", "litres", Dimension.Volume, 0.001),
        new("ml", "millilitres", Dimension.Volume, 1e-6),
        new("ml/s", "millilitres a second", Dimension.Flow, 1e-6),
        new("l/min", "litres a minute", Dimension.Flow, 0.001 / 60),
        new("years", "years", Dimension.Number, 1),
        new("a-day", "a day", Dimension.Number, 1),
        new("share", "share", Dimension.Number, 1),
        new("ratio", "ratio", Dimension.Number, 1),
        new("money", "in the clinic's currency", Dimension.Number, 1),
    ];

    private static readonly FrozenDictionary<string, Unit> BySymbol = All.ToFrozenDictionary(u => u.Symbol, StringComparer.Ordinal);

    /// <summary>The unit written <paramref name="symbol"/>, or null. Upper and lower case differ.</summary>
    public static Unit? Find(string symbol) => BySymbol.GetValueOrDefault(symbol);
}
