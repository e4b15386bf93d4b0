using ToiletAid.Core.Person;
using ToiletAid.Core.Quantities;

namespace ToiletAid.Core.Comparing;

/// <summary>Whether two answers say the same, whatever the unit or the order in which it was said.</summary>
internal static class SameAnswer
{
    private const double Rounding = 1e-9;

    internal static bool Of(AnswerValue? one, AnswerValue? other) => (Known(one), Known(other)) switch
    {
        (null, null) => true,
        (AnswerValue.Choice a, AnswerValue.Choice b) => a.Option == b.Option,
        (AnswerValue.Many a, AnswerValue.Many b) => a.Options.ToHashSet(StringComparer.Ordinal).SetEquals(b.Options),
        (AnswerValue.Number a, AnswerValue.Number b) => Near(Si(a), Si(b)),
        (AnswerValue.Parts a, AnswerValue.Parts b) => a.Amounts.Count == b.Amounts.Count && a.Amounts.Keys.All(p => Si(b, p) is { } si && Near(Si(a, p)!.Value, si)),
        (AnswerValue.Order a, AnswerValue.Order b) => a.Groups.Length == b.Groups.Length
            && a.Groups.Zip(b.Groups).All(g => g.First.ToHashSet(StringComparer.Ordinal).SetEquals(g.Second)),
        _ => false,
    };

    /// <summary>The value, or null when it is missing or not known.</summary>
    internal static AnswerValue? Known(AnswerValue? value) => value is AnswerValue.NotKnown ? null : value;

    internal static double Si(AnswerValue.Number number) => Units.Find(number.Unit)!.ToSi(number.Amount);

    internal static double? Si(AnswerValue.Parts parts, string part) =>
        parts.Amounts.TryGetValue(part, out double amount) ? Units.Find(parts.Unit)!.ToSi(amount) : null;

    internal static bool Near(double one, double other) => Math.Abs(one - other) <= Rounding * Math.Max(1, Math.Max(Math.Abs(one), Math.Abs(other)));
}
