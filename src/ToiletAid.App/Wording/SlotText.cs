using System.Globalization;
using ToiletAid.App.Typed;
using ToiletAid.Core.Person;
using ToiletAid.Core.Quantities;
using ToiletAid.Core.Safety;

namespace ToiletAid.App.Wording;

/// <summary>Sentences of rules with the numbers of the case put in.</summary>
public static class SlotText
{
    /// <summary>The sentence with every slot filled.</summary>
    /// <exception cref="InvalidOperationException">A slot of the sentence has no number: a fault in a rule.</exception>
    public static string Fill(string text, IEnumerable<Slot> slots)
    {
        foreach (var slot in slots)
        {
            text = text.Replace("{" + slot.Name + "}", Say(slot), StringComparison.Ordinal);
        }

        return text.Contains('{', StringComparison.Ordinal)
            ? throw new InvalidOperationException($"a slot of this sentence is not filled: {text}")
            : text;
    }

    /// <summary>A share as people count: 83 of 100 is 83.</summary>
    public static string OfHundred(double share) => Math.Round(share * 100).ToString(CultureInfo.InvariantCulture);

    /// <summary>A length in whole centimetres.</summary>
    public static string Centimetres(double metres) => !double.IsFinite(metres) ? "any length"
        : metres is >= 0 and < 0.005 ? "less than 1 centimetre"
        : "centimetre".Counting((int)Math.Round(metres * 100));

    /// <summary>The same without its unit, for a sentence that says the unit once.</summary>
    public static string Whole(double metres) => Math.Round(metres * 100).ToString(CultureInfo.InvariantCulture);

    /// <summary>What the hand does, as a noun.</summary>
    public static string Operation(string word) => word switch
    {
        "fill" => "Filling",
        "load" => "Loading",
        "hold" => "Holding",
        "clean" => "Cleaning",
        "release" => "Letting go",
        _ => "Washing the aid",
    };

    private static string Say(Slot slot) => slot switch
    {
        { Name: "operation", Word: { } word } => Operation(word),
        { Name: "approach", Word: { } word } => PlanText.Way(Words.Find<Approach>(word)!.Value),
        { Name: "prompting", Word: { } word } => word == "nobody" ? "and no carer is available to prompt" : "too few even with prompting",
        { Word: { } word } => word,
        { Name: "share" } => OfHundred(slot.Si),
        { Dimension: Dimension.Length } => Centimetres(slot.Si),
        { Dimension: Dimension.Force } => "newton".Counting((int)Math.Round(slot.Si)),
        { Dimension: Dimension.Temperature } => $"{Math.Round(slot.Si).ToString(CultureInfo.InvariantCulture)} degrees Celsius",
        { Dimension: Dimension.Time } => Spoken.Time(slot.Si),
        { Si: double.PositiveInfinity } => "any number",
        _ => Math.Round(slot.Si, 1).ToString("0.#", CultureInfo.InvariantCulture),
    };
}
