using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Typed;

/// <summary>The sentences with which typed numbers are refused: words only, so that they can be read aloud.</summary>
internal static class Refusals
{
    public static string Scan(ScannedText scanned, QuantityQuestion question) => scanned.Fault switch
    {
        ScanFault.Empty => $"Nothing was typed. {Example(question)}",
        ScanFault.TooLong => $"That is too long for one number. {Example(question)}",
        ScanFault.TooManyNumbers => $"There are too many numbers. {Example(question)}",
        ScanFault.CommaOfTwoMeanings => TwoMeanings(scanned, question),
        ScanFault.ThousandsSetApart => "Type the number without thousands marks." + DidYouMean(Plausible(scanned.Parts[^1], question)),
        _ => $"That is not a number with a unit. {Example(question)}",
    };

    public static string Unit(TypedPart part, QuantityQuestion question)
    {
        var elsewhere = UnitWords.FindAnywhere(part.Word);
        return elsewhere is null || elsewhere.Dimension == question.Dimension
            ? $"The unit after {Spoken.Number(part.Number)} is not known. {GivenIn(question)}"
            : $"{Spoken.Capital(Spoken.Amount(part.Number, elsewhere))} is {Spoken.Kind(elsewhere.Dimension)}, " +
              $"but {question.Name} is {Spoken.Kind(question.Dimension)}. {Example(question)}";
    }

    public static string NoUnitBetween(QuantityQuestion question) =>
        $"There are two numbers and no unit between them. {Example(question)}";

    public static string CannotFollow(Unit large, QuantityQuestion question) =>
        $"The second number cannot follow {large.Name}. {Example(question)}";

    public static string UnitLeftOut(TypedPart second, Unit small) =>
        $"Say the unit of the second number. Did you mean {Spoken.Amount(second.Number, small)}?";

    public static string NotWhole(Unit large, Unit small) =>
        $"When {small.Name} follow, the {large.Name} must be a whole number and neither may be below zero.";

    public static string TooManySmall(double total, Unit large, Unit small, double ratio, QuantityQuestion question)
    {
        double whole = Math.Floor(total / ratio);
        string meant = Spoken.Amount(whole, large) + " " + Spoken.Amount(total - (whole * ratio), small);
        return $"The {small.Name} after {large.Name} must be fewer than {Spoken.Number(ratio)}." +
            DidYouMean(question.Holds(small.ToSi(total)) ? meant : null);
    }

    public static string UnitNotAsked(double si, QuantityQuestion question) =>
        GivenIn(question) + DidYouMean(question.Holds(si) ? Spoken.Amount(question.Units[0].FromSi(si), question.Units[0]) : null);

    public static string NotCounted(double value, QuantityQuestion question) =>
        $"{Spoken.Capital(question.Name)} is counted in whole numbers. Did you mean {Spoken.Number(Math.Floor(value))} or {Spoken.Number(Math.Ceiling(value))}?";

    public static string OutOfRange(double value, Unit unit, QuantityQuestion question)
    {
        string start = $"{Spoken.Capital(Spoken.Amount(value, unit))} is out of range for {question.Name}.";
        foreach (var other in question.Units)
        {
            if (other != unit && question.Holds(other.ToSi(value)))
            {
                return start + DidYouMean(Spoken.Amount(value, other));
            }
        }

        return question.Below is { } below && value >= 0 && unit.ToSi(value) < question.Low ? below
            : $"{start} Give a number from {Spoken.Number(unit.FromSi(question.Low))} to {Spoken.Amount(unit.FromSi(question.High), unit)}.";
    }

    private static string TwoMeanings(ScannedText scanned, QuantityQuestion question)
    {
        string? thousands = Plausible(scanned.Parts[^1], question);
        string? decimals = scanned.OtherReading is { } other ? Plausible(other, question) : null;
        const string Start = "A comma before three digits can be read in two ways.";
        return thousands is not null && decimals is not null
            ? $"{Start} Did you mean {thousands} or {decimals}?"
            : Start + (DidYouMean(thousands ?? decimals) is { Length: > 0 } hint ? hint : " " + Example(question));
    }

    /// <summary>The part in words when it would be accepted alone; else null.</summary>
    private static string? Plausible(TypedPart part, QuantityQuestion question)
    {
        var unit = part.Word.Length == 0 ? question.Units[0] : UnitWords.Find(part.Word, question);
        return unit is not null && question.Holds(unit.ToSi(part.Number)) ? Spoken.Amount(part.Number, unit) : null;
    }

    private static string DidYouMean(string? meant) => meant is null ? string.Empty : $" Did you mean {meant}?";

    private static string GivenIn(QuantityQuestion question) =>
        $"{Spoken.Capital(question.Name)} is given in {Spoken.Choice([.. question.Units.Select(u => u.Name)])}.";

    /// <summary>A plausible answer to copy, from the middle of the range.</summary>
    private static string Example(QuantityQuestion question)
    {
        var unit = question.Units[0];
        double middle = unit.FromSi((question.Low + question.High) / 2);
        double step = Math.Pow(10, Math.Floor(Math.Log10(Math.Max(Math.Abs(middle), 1e-6))) - 1);
        double rounded = Math.Round(middle / step) * step;
        return $"Type {question.Name} like this: {Spoken.Amount(question.IsCount ? Math.Round(rounded) : rounded, unit)}.";
    }
}
