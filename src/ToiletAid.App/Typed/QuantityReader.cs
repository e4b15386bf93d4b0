using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Typed;

/// <summary>Reads quantities as people type them: "172", "1.72 m", "5 ft 7 in", "5'7", "11 st 4", "22 kg" for a force, "104 F".</summary>
/// <remarks>Never throws. A number without a unit means the question's first unit. What makes no sense is refused with a sentence
/// in words, and with what may have been meant where one reading is plausible.</remarks>
public static class QuantityReader
{
    /// <summary>Reads <paramref name="text"/> as an answer to <paramref name="question"/>.</summary>
    public static QuantityReading Read(string? text, QuantityQuestion question)
    {
        string typed = (text ?? string.Empty).Trim();
        string body = question.Units[0].Symbol == "money" ? typed.TrimStart('£', '$', '€', ' ') : typed;
        if (question.Dimension == Dimension.Volume)
        {
            body = body.Replace("m3", "m³", StringComparison.OrdinalIgnoreCase).Replace("m^3", "m³", StringComparison.OrdinalIgnoreCase);
        }

        var scanned = QuantityScanner.Scan(body);
        if (scanned.Fault != ScanFault.None)
        {
            return QuantityReading.Refused(Refusals.Scan(scanned, question));
        }

        return scanned.Parts.Count == 1
            ? One(typed, scanned.Parts[0], question)
            : Two(typed, scanned.Parts[0], scanned.Parts[1], question);
    }

    private static QuantityReading One(string typed, TypedPart part, QuantityQuestion question)
    {
        var unit = part.Word.Length == 0 ? question.Units[0] : UnitWords.Find(part.Word, question);
        return unit is null
            ? QuantityReading.Refused(Refusals.Unit(part, question))
            : Checked(typed, part.Number, unit, unit, question);
    }

    private static QuantityReading Two(string typed, TypedPart first, TypedPart second, QuantityQuestion question)
    {
        var large = UnitWords.Find(first.Word, question);
        if (large is null)
        {
            return QuantityReading.Refused(first.Word.Length == 0 ? Refusals.NoUnitBetween(question) : Refusals.Unit(first, question));
        }

        if (UnitWords.Smaller(large) is not var (small, ratio))
        {
            return QuantityReading.Refused(Refusals.CannotFollow(large, question));
        }

        // After metres, "1 m 7" could be 1.07 m or 1.70 m: with two digits there is one reading.
        bool mayLeaveOut = large.Symbol != "kg" && (large.Symbol != "m" || second.Number >= 10);
        if (second.Word.Length == 0 && !mayLeaveOut)
        {
            return QuantityReading.Refused(Refusals.UnitLeftOut(second, small));
        }

        if (second.Word.Length > 0 && UnitWords.Find(second.Word, question) != small)
        {
            return QuantityReading.Refused(Refusals.CannotFollow(large, question));
        }

        if (first.Number < 0 || second.Number < 0 || first.Number != Math.Floor(first.Number))
        {
            return QuantityReading.Refused(Refusals.NotWhole(large, small));
        }

        double total = (first.Number * ratio) + second.Number;
        return second.Number >= ratio
            ? QuantityReading.Refused(Refusals.TooManySmall(total, large, small, ratio, question))
            : Checked(typed, total, small, large, question);
    }

    private static QuantityReading Checked(string typed, double value, Unit unit, Unit spoken, QuantityQuestion question)
    {
        double si = unit.ToSi(value);
        if (!question.Units.Contains(unit) && !question.Units.Contains(spoken))
        {
            return QuantityReading.Refused(Refusals.UnitNotAsked(si, question));
        }

        if (!question.Holds(si))
        {
            return QuantityReading.Refused(Refusals.OutOfRange(value, unit, question));
        }

        return question.IsCount && value != Math.Floor(value)
            ? QuantityReading.Refused(Refusals.NotCounted(value, question))
            : QuantityReading.Understood(new(typed, value, unit, si));
    }
}
