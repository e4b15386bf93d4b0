using System.Collections.Immutable;
using ToiletAid.Core.Explaining;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Comparing;

/// <summary>What differs between the answers of two visits, and whether it is more than measuring error.</summary>
public static class AnswerDifferences
{
    private const double Rounding = 1e-9;

    /// <summary>Every difference, in the order of the questions.</summary>
    /// <param name="knowledge">Questions and limits of change.</param>
    /// <param name="from">Answers of the earlier visit.</param>
    /// <param name="to">Answers of the later visit.</param>
    /// <param name="sameRater">True when the same person measured both times, false when not, null when that is not known.</param>
    public static ImmutableArray<AnswerDifference> Of(KnowledgeBase knowledge, Answers from, Answers to, bool? sameRater)
    {
        ArgumentNullException.ThrowIfNull(knowledge);
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        var found = ImmutableArray.CreateBuilder<AnswerDifference>();
        foreach (var question in knowledge.Questions.All)
        {
            Answer? before = Known(from[question.Id]), after = Known(to[question.Id]);
            if (before?.Value is AnswerValue.Parts || after?.Value is AnswerValue.Parts)
            {
                found.AddRange(question.Parts.Select(p => OfPart(knowledge, question, p, before, after, sameRater)).OfType<AnswerDifference>());
            }
            else if (!SameAnswer.Of(before?.Value, after?.Value))
            {
                found.Add(Whole(knowledge, question, before, after, sameRater));
            }
            else if (before is not null && before.How != after!.How)
            {
                found.Add(OtherWay(question, null, before, after));
            }
        }

        return found.ToImmutable();
    }

    /// <summary>The verdict on two measurements of one thing.</summary>
    /// <param name="rule">The limits.</param>
    /// <param name="first">The earlier measurement, SI.</param>
    /// <param name="second">The later measurement, SI.</param>
    /// <param name="sameRater">True when the same person measured both times, false when not, null when that is not known.</param>
    /// <returns>Verdict, reason, and the limit or limits in SI that decided.</returns>
    public static (Verdict Verdict, VerdictReason Reason, double Limit, double? Upper) Judge(DetectableChange rule, double first, double second, bool? sameRater)
    {
        ArgumentNullException.ThrowIfNull(rule);
        var (least, sure) = rule.Limits(first, sameRater);
        double size = Math.Abs(second - first) * (1 + Rounding);
        return size < least ? (Verdict.WithinError, VerdictReason.BelowLimit, least, null)
            : size >= sure ? (Verdict.Real, VerdictReason.ReachesLimit, sure, null)
            : (Verdict.Unknown, VerdictReason.BetweenLimits, least, sure);
    }

    private static Answer? Known(Answer? answer) => SameAnswer.Known(answer?.Value) is null ? null : answer;

    private static AnswerDifference? OfPart(KnowledgeBase knowledge, Question question, Part part, Answer? before, Answer? after, bool? sameRater)
    {
        Answer? from = Only(before, part.Id), to = Only(after, part.Id);
        double? first = Si(from, part.Id), second = Si(to, part.Id);
        if (first is { } a && second is { } b)
        {
            return !SameAnswer.Near(a, b) ? Measured(knowledge, question, part, from!, to!, a, b, sameRater)
                : from!.How == to!.How ? null
                : OtherWay(question, part, from, to);
        }

        return first is null && second is null ? null
            : new() { Question = question, Part = part, From = from, To = to, Verdict = Verdict.Unknown, Reason = VerdictReason.OneVisitOnly };
    }

    private static AnswerDifference Whole(KnowledgeBase knowledge, Question question, Answer? before, Answer? after, bool? sameRater)
    {
        if (before?.Value is AnswerValue.Number a && after?.Value is AnswerValue.Number b)
        {
            return Measured(knowledge, question, null, before, after, SameAnswer.Si(a), SameAnswer.Si(b), sameRater);
        }

        var (verdict, reason) = before is null || after is null ? (Verdict.Unknown, VerdictReason.OneVisitOnly)
            : !question.MayBeWrong ? (Verdict.Real, VerdictReason.Stated)
            : AnswerChanges.Steps(question, before.Value, after.Value) is not { } steps ? (Verdict.Unknown, VerdictReason.NoLimit)
            : steps < knowledge.Evidence.Value(EvidenceIds.ChangeSteps) ? (Verdict.WithinError, VerdictReason.FewSteps)
            : (Verdict.Real, VerdictReason.ManySteps);
        return new() { Question = question, From = before, To = after, Verdict = verdict, Reason = reason };
    }

    private static AnswerDifference Measured(KnowledgeBase knowledge, Question question, Part? part, Answer from, Answer to, double first, double second, bool? sameRater)
    {
        var difference = new AnswerDifference
        {
            Question = question,
            Part = part,
            From = from,
            To = to,
            Change = second - first,
            Rule = knowledge.Changes.FirstOrDefault(c => c.Question == question.Id && c.Part == part?.Id),
            Verdict = Verdict.Unknown,
            Reason = VerdictReason.NoLimit,
        };
        if (difference.Rule is null)
        {
            return question.MayBeWrong ? difference : difference with { Verdict = Verdict.Real, Reason = VerdictReason.Stated };
        }

        if (from.How != HowObtained.Measured || to.How != HowObtained.Measured)
        {
            return difference with { Reason = VerdictReason.NotMeasured };
        }

        var (verdict, reason, limit, upper) = Judge(difference.Rule, first, second, sameRater);
        return difference with { Verdict = verdict, Reason = reason, Limit = limit, UpperLimit = upper };
    }

    private static AnswerDifference OtherWay(Question question, Part? part, Answer from, Answer to) =>
        new() { Question = question, Part = part, From = from, To = to, Change = part is null && from.Value is not AnswerValue.Number ? null : 0, Verdict = Verdict.WithinError, Reason = VerdictReason.OtherWay };

    /// <summary>The answer with one part only, or null when it has no such part.</summary>
    private static Answer? Only(Answer? answer, string part) => answer?.Value is AnswerValue.Parts p && p.Amounts.TryGetValue(part, out double amount)
        ? answer with { Value = p with { Amounts = ImmutableSortedDictionary<string, double>.Empty.Add(part, amount) } }
        : null;

    private static double? Si(Answer? answer, string part) => answer?.Value is AnswerValue.Parts p ? SameAnswer.Si(p, part) : null;
}
