using ToiletAid.Core.Quantities;
using UnitsNet;
using UnitsNet.Units;
using OwnUnits = ToiletAid.Core.Quantities.Units;

namespace ToiletAid.Core.Tests.Typed;

/// <summary>Every conversion factor against a general-purpose unit library (UnitsNet 5.75).</summary>
public sealed class UnitFactorTests
{
    private static readonly Dictionary<string, Func<double, double>> Library = new(StringComparer.Ordinal)
    {
        ["m"] = x => new Length(x, LengthUnit.Meter).Meters,
        ["cm"] = x => new Length(x, LengthUnit.Centimeter).Meters,
        ["mm"] = x => new Length(x, LengthUnit.Millimeter).Meters,
        ["in"] = x => new Length(x, LengthUnit.Inch).Meters,
        ["ft"] = x => new Length(x, LengthUnit.Foot).Meters,
        ["kg"] = x => new Mass(x, MassUnit.Kilogram).Kilograms,
        ["g"] = x => new Mass(x, MassUnit.Gram).Kilograms,
        ["lb"] = x => new Mass(x, MassUnit.Pound).Kilograms,
        ["st"] = x => new Mass(x, MassUnit.Stone).Kilograms,
        ["oz"] = x => new Mass(x, MassUnit.Ounce).Kilograms,
        ["N"] = x => new Force(x, ForceUnit.Newton).Newtons,
        ["kgf"] = x => new Force(x, ForceUnit.KilogramForce).Newtons,
        ["lbf"] = x => new Force(x, ForceUnit.PoundForce).Newtons,
        ["deg"] = x => new Angle(x, AngleUnit.Degree).Radians,
        ["rad"] = x => new Angle(x, AngleUnit.Radian).Radians,
        ["s"] = x => new Duration(x, DurationUnit.Second).Seconds,
        ["min"] = x => new Duration(x, DurationUnit.Minute).Seconds,
        ["C"] = x => new Temperature(x, TemperatureUnit.DegreeCelsius).DegreesCelsius,
        ["F"] = x => new Temperature(x, TemperatureUnit.DegreeFahrenheit).DegreesCelsius,
        ["m3"] = x => new Volume(x, VolumeUnit.CubicMeter).CubicMeters,
        ["l"] = x => new Volume(x, VolumeUnit.Liter).CubicMeters,
        ["ml"] = x => new Volume(x, VolumeUnit.Milliliter).CubicMeters,
        ["ml/s"] = x => new VolumeFlow(x, VolumeFlowUnit.MilliliterPerSecond).CubicMetersPerSecond,
        ["l/min"] = x => new VolumeFlow(x, VolumeFlowUnit.LiterPerMinute).CubicMetersPerSecond,
    };

    public static TheoryData<string> Symbols => [.. OwnUnits.All.Where(u => u.Dimension != Dimension.Number).Select(u => u.Symbol)];

    [Theory]
    [MemberData(nameof(Symbols))]
    public void Every_factor_agrees_with_a_general_purpose_unit_library(string symbol)
    {
        var unit = OwnUnits.Find(symbol)!;
        foreach (double x in new[] { -40, -1, 0.37, 1, 12.5, 98.6, 1234 })
        {
            double want = Library[symbol](x);

            // The library rounds its stone (6.350288 kg); 14 pounds of 0.45359237 kg are 6.35029318 kg, checked exactly below.
            double relative = symbol == "st" ? 1e-6 : 1e-12;

            // Absolute at the scale of the temperature offset, where the two subtract nearly equal numbers (273.15 K).
            double tolerance = (relative * Math.Abs(want)) + (unit.Dimension == Dimension.Temperature ? 1e-10 : 0);
            Assert.InRange(unit.ToSi(x), want - tolerance, want + tolerance);
            Assert.InRange(unit.FromSi(want), x - Math.Max(1e-9, relative * Math.Abs(x)), x + Math.Max(1e-9, relative * Math.Abs(x)));
        }
    }

    [Theory]
    [InlineData("years")]
    [InlineData("a-day")]
    [InlineData("share")]
    [InlineData("ratio")]
    [InlineData("money")]
    public void Plain_numbers_are_not_converted(string symbol) => Assert.Equal(7.25, OwnUnits.Find(symbol)!.ToSi(7.25));

    [Fact]
    public void Every_unit_is_either_checked_here_or_a_plain_number() =>
        Assert.Equal(
            OwnUnits.All.Where(u => u.Dimension != Dimension.Number).Select(u => u.Symbol).Order(StringComparer.Ordinal),
            Library.Keys.Order(StringComparer.Ordinal));

    /// <summary>A stone is 14 pounds: common practice.</summary>
    [Fact]
    public void A_stone_is_exactly_fourteen_pounds() => Assert.Equal(14 * 0.45359237, OwnUnits.Find("st")!.ToSi(1), 1e-12);

    /// <summary>Fixed points of the Fahrenheit scale: common practice.</summary>
    [Theory]
    [InlineData(32, 0)]
    [InlineData(212, 100)]
    [InlineData(-40, -40)]
    public void Fahrenheit_meets_Celsius_at_the_fixed_points(double fahrenheit, double celsius) =>
        Assert.Equal(celsius, OwnUnits.Find("F")!.ToSi(fahrenheit), 1e-12);

    /// <summary>2010 ADA Standards 309.4 prints 5 pounds as 22.2 N.</summary>
    [Fact]
    public void Five_pounds_of_force_are_the_printed_22_2_newtons() =>
        Assert.Equal(22.2, OwnUnits.Find("lbf")!.ToSi(5), 0.05);
}
