using System.Collections.Immutable;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Explaining;

/// <summary>Why not, and what would change it: by searching over the answers, each find checked with the whole ranking.</summary>
/// <param name="knowledge">Questions and limits.</param>
/// <param name="advisor">Ranks.</param>
public sealed class Explainer(KnowledgeBase knowledge, Advisor advisor)
{
    /// <summary>Of all single changes, so many that bring a plan nearest to the first place are tried together with every other. Decision: what is lost is a pair
    /// of which neither half helps much alone, and what is saved grows with the square of the changes.</summary>
    private const int Beam = 6;

    private readonly QuickRanking _quick = new(advisor);

    /// <summary>The smallest change of one answer, else of two, that puts a method first.</summary>
    /// <param name="known">Answers as given.</param>
    /// <param name="aid">Id of the method; an article stands for its kind.</param>
    public WhyNot WhyNot(Answers known, string aid)
    {
        aid = knowledge.Catalogue.KindOf(aid);
        if (IsFirst(known, aid))
        {
            return new(aid, true, [], 0);
        }

        var single = AnswerChanges.Of(knowledge, known).Select(c => (Change: c, Gap: Gap(c.In(known), aid))).ToList();
        var found = single.Where(c => c.Gap >= 0).OrderBy(c => c.Change.Size).ThenByDescending(c => c.Gap)
            .Select(c => c.Change).FirstOrDefault(c => IsFirst(c.In(known), aid));
        if (found is not null)
        {
            return new(aid, false, [found], single.Count);
        }

        int tried = single.Count;
        foreach (var (first, _) in single.OrderByDescending(c => c.Gap).Take(Beam))
        {
            var changed = first.In(known);
            foreach (var second in AnswerChanges.Of(knowledge, changed).Where(c => c.Question.Id != first.Question.Id).OrderBy(c => c.Size))
            {
                tried++;
                if (Gap(second.In(changed), aid) >= 0 && IsFirst(second.In(changed), aid))
                {
                    return new(aid, false, [first, second], tried);
                }
            }
        }

        return new(aid, false, [], tried);
    }

    /// <summary>Changes of one known answer, no larger than it may be wrong, that put another method first: the next option of what was seen or told, one error of what was measured.</summary>
    public ImmutableArray<Counterfactual> Counterfactuals(Answers known)
    {
        string? first = advisor.Rank(known).Ranked.FirstOrDefault()?.Plan.Aid.KindId;
        return
        [
            .. AnswerChanges.Of(knowledge, known)
                .Where(c => c.Size == 1 && known.Knows(c.Question.Id) && c.Question.MayBeWrong)
                .Where(c => QuickRanking.First(_quick.Values(c.In(known))) != first)
                .Select(c => (Change: c, First: advisor.Rank(c.In(known)).Ranked.FirstOrDefault()?.Plan.Aid.KindId))
                .Where(c => c.First is not null && c.First != first)
                .Select(c => new Counterfactual(c.Change, c.First!)),
        ];
    }

    private bool IsFirst(Answers known, string aid) => advisor.Rank(known).Ranked.FirstOrDefault()?.Plan.Aid.KindId == aid;

    /// <summary>How far the method is ahead of the best other one, below 0 when it is behind; -infinity when it is ruled out.</summary>
    private double Gap(Answers known, string aid)
    {
        var values = _quick.Values(known);
        return !values.TryGetValue(aid, out double value) ? double.NegativeInfinity
            : value - values.Where(p => p.Key != aid).Select(p => p.Value).DefaultIfEmpty(0).Max();
    }
}
