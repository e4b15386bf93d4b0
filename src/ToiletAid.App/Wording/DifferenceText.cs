using ToiletAid.App.Sessions;
using ToiletAid.App.Typed;
using ToiletAid.Core.Comparing;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Wording;

/// <summary>One answer at two visits, and whether the person changed, as sentences to be read aloud.</summary>
public static class DifferenceText
{
    /// <summary>Question, both answers, verdict.</summary>
    public static string Line(AnswerDifference d) =>
        $"{Name(d)} Before: {Said(d, d.From)}. Now: {Said(d, d.To)}. {VerdictOf(d)}";

    /// <summary>What was asked.</summary>
    public static string Name(AnswerDifference d) => d.Part is { } part ? $"{Spoken.Capital(part.Label)}." : $"{Spoken.Capital(d.Question.Name)}.";

    /// <summary>The answer of a visit in words.</summary>
    public static string Said(AnswerDifference d, Answer? answer)
    {
        if (answer is null)
        {
            return "not known";
        }

        string said = answer.Value is AnswerValue.Parts p && d.Part is { } part ? Spoken.Amount(p.Amounts[part.Id], Units.Find(p.Unit)!) : AnswerWording.Of(d.Question, answer.Value);
        return d.Reason == VerdictReason.OtherWay && answer.How is { } how ? $"{said}, {Words.Of(how)}" : said;
    }

    /// <summary>The verdict and what it rests on.</summary>
    public static string VerdictOf(AnswerDifference d) => d.Reason switch
    {
        VerdictReason.ReachesLimit => $"A real change: the difference is {Size(d)}, and {Amount(d, d.Limit)} or more counts as real.",
        VerdictReason.BelowLimit => $"Within measurement error: the difference is {Size(d)}, and less than {Amount(d, d.Limit)} does not count as change.",
        VerdictReason.BetweenLimits => $"Uncertain: the difference is {Size(d)}. {Between(d)}",
        VerdictReason.NoLimit when d.Change is not null => $"Uncertain: the difference is {Size(d)}, and there is no published limit for it.",
        VerdictReason.NoLimit => "Uncertain: there is no published limit for this answer.",
        VerdictReason.NotMeasured => $"Uncertain: the difference is {Size(d)}, but it was not measured both times.",
        VerdictReason.OneVisitOnly => "Uncertain: one visit has no answer.",
        VerdictReason.Stated => "A real change: the answer was taken as given.",
        VerdictReason.FewSteps => "Within observation error: one option either way.",
        VerdictReason.ManySteps => "A real change: more than observation error.",
        _ => "The same answer, obtained differently.",
    };

    /// <summary>How large the difference is, in the unit of the later answer.</summary>
    private static string Size(AnswerDifference d) => Amount(d, Math.Abs(d.Change!.Value));

    private static string Amount(AnswerDifference d, double? si)
    {
        var unit = Unit(d);
        double amount = unit.FromSi(si!.Value) - unit.FromSi(0);
        return Spoken.Amount(Math.Round(amount, 1), unit);
    }

    private static string Between(AnswerDifference d) => d.Rule!.Spread switch
    {
        LimitSpread.Rater => $"Less than {Amount(d, d.Limit)} does not count as change. {Amount(d, d.Limit)} or more is real if the same person measured both times, otherwise {Amount(d, d.UpperLimit)} or more.",
        LimitSpread.Hand => $"Less than {Amount(d, d.Limit)} does not count as change. {Amount(d, d.Limit)} or more is real for the dominant hand, and {Amount(d, d.UpperLimit)} or more for the other.",
        _ => $"Less than {Amount(d, d.Limit)} does not count as change, and {Amount(d, d.UpperLimit)} or more is real. Between them it depends on the movement.",
    };

    internal static Unit Unit(AnswerDifference d) => Units.Find(d.To!.Value switch
    {
        AnswerValue.Number n => n.Unit,
        AnswerValue.Parts p => p.Unit,
        _ => "ratio",
    })!;
}
