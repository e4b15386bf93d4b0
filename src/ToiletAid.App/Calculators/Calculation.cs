using System.Globalization;
using System.Text.Json.Nodes;
using Humanizer;

namespace ToiletAid.App.Calculators;

/// <summary>The result of a quick calculator: the same numbers as lines to be read aloud and as JSON.</summary>
public abstract class Calculation
{
    /// <summary>The result as lines, one idea a sentence.</summary>
    public abstract IEnumerable<string> Lines();

    /// <summary>The result as one JSON object.</summary>
    public abstract JsonObject Json();

    /// <summary>A number with at most this many decimals.</summary>
    internal static string Number(double value, int decimals = 1) =>
        Math.Round(value, decimals).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);

    /// <summary>A time in seconds below two minutes, in words above.</summary>
    internal static string Seconds(double seconds) => seconds < 120
        ? "second".ToQuantity((int)Math.Round(seconds))
        : TimeSpan.FromSeconds(Math.Round(seconds)).Humanize(2, culture: CultureInfo.InvariantCulture);

    /// <summary>A volume in whole millilitres, rounded down.</summary>
    internal static string Millilitres(double cubicMetres) => "millilitre".ToQuantity((int)Math.Floor((cubicMetres * 1e6) + 1e-6));

    /// <summary>A temperature.</summary>
    internal static string Celsius(double celsius) => $"{Number(celsius)} degrees Celsius";
}
