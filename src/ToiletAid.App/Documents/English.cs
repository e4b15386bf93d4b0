using System.Globalization;
using System.Text.RegularExpressions;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Documents;

/// <summary>One of the two kinds of English that documents are written in. Everything is composed in British English and metric units.</summary>
public sealed partial class English
{
    private const string British = "en-GB";
    private const string American = "en-US";
    private const double FeetFrom = 1;

    private readonly IReadOnlyDictionary<string, string> _words;

    private English(string tag, IReadOnlyDictionary<string, string> words)
    {
        Tag = tag;
        _words = words;
    }

    /// <summary>Tags of the languages there are; the first is the default.</summary>
    public static IReadOnlyList<string> Tags { get; } = [British, American];

    /// <summary>Language tag.</summary>
    public string Tag { get; }

    /// <summary>The language of a tag.</summary>
    public static English Of(string tag, DocumentData data) =>
        tag == American ? new(American, data.UnitedStates) : new(British, new Dictionary<string, string>(StringComparer.Ordinal));

    /// <summary>A date with the month in words, so that day and month cannot be mixed up.</summary>
    public string Date(DateOnly date) => date.ToString(Tag == American ? "MMMM d, yyyy" : "d MMMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>The text in this language: spelling and words, and the other units beside the metric ones.</summary>
    public string Say(string text)
    {
        if (Tag == British)
        {
            return text;
        }

        string both = Temperature().Replace(Measure().Replace(text, BothUnits), BothTemperatures);
        return Word().Replace(both, m => Swap(m.Value));
    }

    private string Swap(string word)
    {
        if (!_words.TryGetValue(word.ToLowerInvariant(), out string? other))
        {
            return word;
        }

        return char.IsUpper(word[0]) ? char.ToUpperInvariant(other[0]) + other[1..] : other;
    }

    private static string BothUnits(Match match)
    {
        double amount = double.Parse(match.Groups["amount"].Value, CultureInfo.InvariantCulture);
        string unit = match.Groups["unit"].Value;
        return $"{match.Value} ({(unit.StartsWith("centi", StringComparison.Ordinal) ? Length(amount) : unit.StartsWith("kilo", StringComparison.Ordinal) ? In(amount, "kg", "lb") : unit.StartsWith("milli", StringComparison.Ordinal) ? Ounces(amount) : In(amount, "N", "lbf"))})";
    }

    private static string Length(double centimetres)
    {
        double metres = Units.Find("cm")!.ToSi(centimetres);
        double inches = Units.Find("in")!.FromSi(metres);
        if (metres < FeetFrom)
        {
            return $"{Round(inches)} inches";
        }

        double whole = Math.Round(inches);
        return $"{Math.Floor(whole / 12).ToString(CultureInfo.InvariantCulture)} feet {(whole % 12).ToString(CultureInfo.InvariantCulture)} inches";
    }

    private static string In(double amount, string from, string to) => $"{Round(Units.Find(to)!.FromSi(Units.Find(from)!.ToSi(amount)))} {Units.Find(to)!.Name}";

    /// <summary>The fluid ounce of the United States is 231/128 cubic inches by definition.</summary>
    private static string Ounces(double millilitres) => $"{Round(millilitres / (231.0 / 128 * 2.54 * 2.54 * 2.54))} fluid ounces";

    /// <summary>Rounded down: the number is a limit, and a limit never grows by being said in another unit.</summary>
    private static string BothTemperatures(Match match)
    {
        string last = Fahrenheit(match.Groups["last"].Value);
        return match.Groups["first"].Success
            ? $"{match.Value} ({Fahrenheit(match.Groups["first"].Value)} and {last} degrees Fahrenheit)"
            : $"{match.Value} ({last} degrees Fahrenheit)";
    }

    private static string Fahrenheit(string celsius) =>
        Math.Floor(Units.Find("F")!.FromSi(double.Parse(celsius, CultureInfo.InvariantCulture)) + 1e-9).ToString(CultureInfo.InvariantCulture);

    private static string Round(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?<![\w.])(?<amount>\d+(\.\d+)?) (?<unit>centimetres?|kilograms?|millilitres?|newtons?)\b(?!-)", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Measure();

    [GeneratedRegex(@"((?<first>\d+(\.\d+)?) and )?(?<last>\d+(\.\d+)?) degrees Celsius", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Temperature();

    [GeneratedRegex(@"\b(lidded bin|extension lead|[A-Za-z]+)\b", RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase, 10_000)]
    private static partial Regex Word();
}
