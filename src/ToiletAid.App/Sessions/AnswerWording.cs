using Humanizer;
using ToiletAid.App.Typed;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Sessions;

/// <summary>Answers in words that can be read aloud.</summary>
public static class AnswerWording
{
    /// <summary>The answer in words, without how it was obtained.</summary>
    public static string Of(Question question, AnswerValue value) => value switch
    {
        AnswerValue.Choice c => question.FindOption(c.Option)?.Label ?? c.Option,
        AnswerValue.Many { Options.IsEmpty: true } => "none of them",
        AnswerValue.Many m => m.Options.Select(o => question.FindOption(o)?.Label ?? o).Humanize("and"),
        AnswerValue.Number n => Amount(n.Amount, n.Unit),
        AnswerValue.Parts { Amounts.IsEmpty: true } => "no part",
        AnswerValue.Parts p => question.Parts.Where(q => p.Amounts.ContainsKey(q.Id)).Select(q => $"{q.Label} {Amount(p.Amounts[q.Id], p.Unit)}").Humanize("and"),
        AnswerValue.Order { Groups.IsEmpty: true } => "no order",
        AnswerValue.Order o => string.Join(", then ", o.Groups.Select(g => g.Humanize("and"))),
        _ => "not known",
    };

    /// <summary>The answer as it would be typed again: the number of the option, or the quantity.</summary>
    public static string Typed(Question question, AnswerValue value) => value switch
    {
        AnswerValue.Choice c => $"{question.Options.IndexOf(question.FindOption(c.Option)!) + 1}",
        AnswerValue.Many { Options.IsEmpty: true } => "none",
        AnswerValue.Many m => string.Join(' ', m.Options.Select(o => question.Options.IndexOf(question.FindOption(o)!) + 1)),
        AnswerValue.NotKnown => "unknown",
        AnswerValue.Number n => $"{Spoken.Number(n.Amount)} {n.Unit}",
        _ => "the answer",
    };

    private static string Amount(double amount, string unit) => Spoken.Amount(amount, Units.Find(unit)!);
}
