using System.Globalization;
using System.Text.Json;
using Humanizer;
using ToiletAid.App.Typed;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Calculators;

/// <summary>The result of a quick calculator: the same numbers as lines to be read aloud and as JSON.</summary>
public abstract class Calculation
{
    /// <summary>The result as lines, one idea a sentence.</summary>
    public abstract IEnumerable<string> Lines();

    /// <summary>The result as one JSON object.</summary>
    public abstract void Write(Utf8JsonWriter json);

    /// <summary>A number with at most this many decimals.</summary>
    internal static string Number(double value, int decimals = 1) =>
        Math.Round(value, decimals).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);

    /// <summary>A force as dynamometers show it, and in newtons.</summary>
    internal static string Force(double newtons) =>
        $"{Spoken.Amount(Math.Round(Units.Find("kgf")!.FromSi(newtons), 1), Units.Find("kgf")!)}, that is {Newtons(newtons)}";

    /// <summary>A force in whole newtons.</summary>
    internal static string Newtons(double newtons) => "newton".ToQuantity((int)Math.Round(newtons));

    /// <summary>A time in seconds below two minutes, in words above.</summary>
    internal static string Seconds(double seconds) => seconds < 120
        ? "second".ToQuantity((int)Math.Round(seconds))
        : TimeSpan.FromSeconds(Math.Round(seconds)).Humanize(2, culture: CultureInfo.InvariantCulture);

    /// <summary>A volume in whole millilitres, rounded down.</summary>
    internal static string Millilitres(double cubicMetres) => "millilitre".ToQuantity((int)Math.Floor((cubicMetres * 1e6) + 1e-6));

    /// <summary>A temperature.</summary>
    internal static string Celsius(double celsius) => $"{Number(celsius)} degrees Celsius";

    /// <summary>A number for JSON: four decimals, and null for what is no finite number.</summary>
    internal static void Put(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } v && double.IsFinite(v))
        {
            json.WriteNumber(name, Math.Round(v, 4));
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
