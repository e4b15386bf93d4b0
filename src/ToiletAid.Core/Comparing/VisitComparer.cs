using System.Collections.Immutable;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Comparing;

/// <summary>Compares two visits: what changed, whether it is real, how the recommendation moved and what moved it.</summary>
/// <param name="knowledge">Questions and limits of change.</param>
/// <param name="advisor">Ranks.</param>
public sealed class VisitComparer(KnowledgeBase knowledge, Advisor advisor)
{
    /// <summary>Compares.</summary>
    /// <param name="from">The earlier visit.</param>
    /// <param name="to">The later visit.</param>
    /// <param name="sameRater">True when the same person measured both times, false when not, null when that is not known.</param>
    public Comparison Compare(Visit from, Visit to, bool? sameRater)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        var differences = AnswerDifferences.Of(knowledge, from.Answers, to.Answers, sameRater);
        Advice before = advisor.Rank(from.Answers), after = advisor.Rank(to.Answers);
        ImmutableArray<QuestionId> changed = [.. differences.Select(d => d.Question.Id).Distinct()];
        bool stopped = !before.Stops.IsEmpty || !after.Stops.IsEmpty;
        return new()
        {
            From = from,
            To = to,
            Differences = differences,
            Same = [.. knowledge.Questions.All.Select(q => q.Id).Where(id => from.Answers.Knows(id) && to.Answers.Knows(id) && !changed.Contains(id))],
            Before = before,
            After = after,
            Places = stopped ? [] : Places(before, after),
            Lead = Contrast(before, after) is { } pair ? LeadShares.Of(knowledge, advisor, from.Answers, to.Answers, changed, pair.One, pair.Other) : null,
            FirstIfOnlyReal = stopped ? null : advisor.First(OnlyReal(from.Answers, differences, to.Answers.Trials)),
        };
    }

    /// <summary>The kind that is first now, and the one that it is held against.</summary>
    private static (Aid One, Aid Other)? Contrast(Advice before, Advice after)
    {
        if (before.Ranked.IsEmpty || after.Ranked.IsEmpty)
        {
            return null;
        }

        Aid one = after.Ranked[0].Plan.Aid, other = before.Ranked[0].Plan.Aid;
        return one.Id != other.Id ? (one, other)
            : after.Ranked.Length > 1 ? (one, after.Ranked[1].Plan.Aid)
            : null;
    }

    private ImmutableArray<PlaceChange> Places(Advice before, Advice after) =>
    [
        .. knowledge.Catalogue.Aids.Select(a => new PlaceChange(a, Place(before, a), Place(after, a)))
            .Where(p => p.Before != p.After)
            .OrderBy(p => p.After ?? int.MaxValue).ThenBy(p => p.Before),
    ];

    private static int? Place(Advice advice, Aid aid) => advice.Ranked.FirstOrDefault(r => r.Plan.Aid.KindId == aid.KindId)?.Rank;

    /// <summary>The earlier answers with those changes made that are real, and what was tried since.</summary>
    private static Answers OnlyReal(Answers from, ImmutableArray<AnswerDifference> differences, ImmutableArray<PastTrial> trials) => differences
        .Where(d => d.Verdict == Verdict.Real)
        .Aggregate(from.With(trials), (answers, d) => answers.With(d.Question.Id, d.Part is null ? d.To! : WithPart(answers[d.Question.Id], d)));

    private static Answer WithPart(Answer? now, AnswerDifference d)
    {
        var later = (AnswerValue.Parts)d.To!.Value;
        if (now?.Value is not AnswerValue.Parts parts)
        {
            return d.To;
        }

        var unit = Quantities.Units.Find(parts.Unit)!;
        double amount = unit.FromSi(SameAnswer.Si(later, d.Part!.Id)!.Value);
        return now with { Value = parts with { Amounts = parts.Amounts.SetItem(d.Part.Id, amount) } };
    }
}
