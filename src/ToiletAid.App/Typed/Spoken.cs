using System.Globalization;
using Humanizer;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Typed;

/// <summary>Numbers and units in words that a screen reader reads well.</summary>
internal static class Spoken
{
    private const int LongestQuote = 30;

    /// <summary>"172 centimetres", "1 foot", "40 degrees Celsius".</summary>
    public static string Amount(double value, Unit unit)
    {
        string number = Number(value);
        return unit.Symbol is "share" or "ratio" or "money" ? number : $"{number} {(number == "1" ? Singular(unit) : unit.Name)}";
    }

    /// <summary>A force as dynamometers show it, and in newtons.</summary>
    public static string Force(double newtons) =>
        $"{Amount(Math.Round(Units.Find("kgf")!.FromSi(newtons), 1), Units.Find("kgf")!)}, that is {Newtons(newtons)}";

    /// <summary>A force in whole newtons.</summary>
    public static string Newtons(double newtons) => "newton".ToQuantity((int)Math.Round(newtons));

    /// <summary>A time until something burns: seconds below two minutes, else the largest unit alone, and always rounded down.</summary>
    public static string Time(double seconds) => seconds < 120
        ? "second".ToQuantity((int)Math.Floor(seconds))
        : TimeSpan.FromSeconds(seconds).Humanize(culture: CultureInfo.InvariantCulture);

    /// <summary>At most three decimals, never an exponent.</summary>
    public static string Number(double value) =>
        Math.Abs(value) >= 1e9 ? "that number" : Math.Round(value, 3).ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>"centimetres, metres or inches".</summary>
    public static string Choice(IReadOnlyList<string> words) => words.Count == 1
        ? words[0]
        : string.Join(", ", words.Take(words.Count - 1)) + " or " + words[^1];

    /// <summary>What a unit measures, with its article.</summary>
    public static string Kind(Dimension dimension) => dimension switch
    {
        Dimension.Length => "a length",
        Dimension.Mass => "a weight",
        Dimension.Force => "a force",
        Dimension.Angle => "an angle",
        Dimension.Time => "a time",
        Dimension.Temperature => "a temperature",
        Dimension.Volume => "a volume",
        Dimension.Flow => "a flow",
        _ => "a plain number",
    };

    /// <summary>The same with a capital letter in front.</summary>
    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>What somebody typed, short and without control characters, to be told of it.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="whenEmpty">What stands for nothing.</param>
    public static string Quoted(string text, string whenEmpty)
    {
        string clean = new([.. text.Where(c => !char.IsControl(c))]);
        return clean.Length == 0 ? whenEmpty : clean.Length > LongestQuote ? clean[..LongestQuote] + " and more" : clean;
    }

    private static string Singular(Unit unit) => unit.Symbol switch
    {
        "ft" => "foot",
        "in" => "inch",
        "C" => "degree Celsius",
        "F" => "degree Fahrenheit",
        "kgf" => "kilogram-force",
        "lbf" => "pound-force",
        "st" or "a-day" => unit.Name,
        "ml/s" => "millilitre a second",
        "l/min" => "litre a minute",
        _ => unit.Name.TrimEnd('s'),
    };
}
