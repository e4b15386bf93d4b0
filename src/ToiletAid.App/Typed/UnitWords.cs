using System.Collections.Frozen;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Typed;

/// <summary>The ways in which people write units.</summary>
internal static class UnitWords
{
    // Dynamometers print kilograms and pounds; asked for a force, these words mean kilograms-force and pounds-force.
    private static readonly (Dimension Dimension, string Symbol, string Words)[] Spellings =
    [
        (Dimension.Length, "m", "m|metre|metres|meter|meters"),
        (Dimension.Length, "cm", "cm|cms|centimetre|centimetres|centimeter|centimeters"),
        (Dimension.Length, "mm", "mm|mms|millimetre|millimetres|millimeter|millimeters"),
        (Dimension.Length, "in", "in|ins|inch|inches|\"|''"),
        (Dimension.Length, "ft", "ft|foot|feet|'"),
        (Dimension.Mass, "kg", "kg|kgs|kilo|kilos|kilogram|kilograms|kilogramme|kilogrammes"),
        (Dimension.Mass, "g", "g|gr|gram|grams|gramme|grammes"),
        (Dimension.Mass, "lb", "lb|lbs|pound|pounds"),
        (Dimension.Mass, "st", "st|stone|stones"),
        (Dimension.Mass, "oz", "oz|ounce|ounces"),
        (Dimension.Force, "N", "n|newton|newtons"),
        (Dimension.Force, "kgf", "kgf|kg|kgs|kilo|kilos|kilogram|kilograms|kilogramme|kilogrammes|kilogram-force|kilograms-force"),
        (Dimension.Force, "lbf", "lbf|lb|lbs|pound|pounds|pound-force|pounds-force"),
        (Dimension.Angle, "deg", "deg|degs|degree|degrees|°"),
        (Dimension.Angle, "rad", "rad|rads|radian|radians"),
        (Dimension.Time, "s", "s|sec|secs|second|seconds"),
        (Dimension.Time, "min", "min|mins|minute|minutes|:"),
        (Dimension.Temperature, "C", "c|°c|° c|deg c|degree c|degrees c|celsius|degree celsius|degrees celsius|centigrade|degrees centigrade"),
        (Dimension.Temperature, "F", "f|°f|° f|deg f|degree f|degrees f|fahrenheit|degree fahrenheit|degrees fahrenheit"),
        (Dimension.Volume, "m3", "m³|cubic metre|cubic metres|cubic meter|cubic meters"),
        (Dimension.Volume, "l", "l|litre|litres|liter|liters"),
        (Dimension.Volume, "ml", "ml|mls|millilitre|millilitres|milliliter|milliliters|cc"),
        (Dimension.Flow, "ml/s", "ml/s|ml/sec|ml per second|ml a second|millilitres a second|millilitres per second|milliliters per second"),
        (Dimension.Flow, "l/min", "l/min|l per minute|l a minute|litres a minute|litres per minute|liters per minute"),
        (Dimension.Number, "years", "years|year|yrs|yr|y|years old"),
        (Dimension.Number, "a-day", "a day|per day|times a day|times per day|times|/day|/ day|daily|a-day"),
        (Dimension.Number, "money", "£|$|€|eur|euro|euros|gbp|usd|dollars|pounds"),
        (Dimension.Number, "share", "share"),
        (Dimension.Number, "ratio", "ratio"),
    ];

    private static readonly FrozenDictionary<(Dimension, string), Unit[]> ByWord = Spellings
        .SelectMany(s => s.Words.Split('|').Select(word => (Key: (s.Dimension, word), Unit: Known(s.Symbol))))
        .GroupBy(pair => pair.Key, pair => pair.Unit)
        .ToFrozenDictionary(group => group.Key, group => group.ToArray());

    /// <summary>The unit of <paramref name="question"/>'s dimension that <paramref name="word"/> stands for, an allowed one if any; or null.</summary>
    public static Unit? Find(string word, QuantityQuestion question)
    {
        // "degrees" asked for a temperature names no scale: it is the one that the question shows.
        if (question.Dimension == Dimension.Temperature && word is "°" or "deg" or "degree" or "degrees")
        {
            return question.Units[0];
        }

        // Numbers have no units to convert between, so "a day" after an age is a mistake, not a conversion.
        return ByWord.TryGetValue((question.Dimension, word), out var units)
            ? units.FirstOrDefault(u => question.Units.Contains(u)) ?? (question.Dimension == Dimension.Number ? null : units[0])
            : null;
    }

    /// <summary>The unit that <paramref name="word"/> stands for in whichever dimension has it; or null.</summary>
    public static Unit? FindAnywhere(string word)
    {
        foreach (var dimension in Enum.GetValues<Dimension>())
        {
            if (ByWord.TryGetValue((dimension, word), out var units))
            {
                return units[0];
            }
        }

        return null;
    }

    /// <summary>The smaller unit that people name after <paramref name="unit"/>, and how many make one; or null.</summary>
    public static (Unit Small, double Ratio)? Smaller(Unit unit) => unit.Symbol switch
    {
        "ft" => (Known("in"), 12),
        "st" => (Known("lb"), 14),
        "lb" => (Known("oz"), 16),
        "m" => (Known("cm"), 100),
        "kg" => (Known("g"), 1000),
        "min" => (Known("s"), 60),
        _ => null,
    };

    private static Unit Known(string symbol) => ToiletAid.Core.Quantities.Units.Find(symbol)!;
}
