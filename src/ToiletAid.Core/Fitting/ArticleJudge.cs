using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Fitting;

/// <summary>Judges articles of one kind for one person with the real advice. People who would give the answers are drawn once for all of them.</summary>
internal sealed class ArticleJudge
{
    private readonly Advisor _advisor;
    private readonly Answers _known;
    private readonly string _kind;
    private readonly Func<Plan, bool>? _way;
    private readonly Answers[] _people;

    /// <summary>Makes ready.</summary>
    /// <param name="knowledge">The questions.</param>
    /// <param name="advisor">Ranks.</param>
    /// <param name="known">Answers as given; no red flag among them.</param>
    /// <param name="kind">Id of the kind.</param>
    /// <param name="way">Ways of using it that count; null for all.</param>
    internal ArticleJudge(KnowledgeBase knowledge, Advisor advisor, Answers known, string kind, Func<Plan, bool>? way)
    {
        _advisor = advisor;
        _known = known;
        _kind = kind;
        _way = way;
        _people = advisor.Likely(known) ?? [.. Enumerable.Range(0, advisor.ValueDraws).Select(draw => Assumptions.Draw(knowledge.Questions, known, advisor.Seed, draw))];
    }

    /// <summary>The best plan with the article, and how many can use it; null with what speaks against the closest plan where none is allowed.</summary>
    /// <param name="article">The article, under the id of its kind.</param>
    internal ScreenedArticle Screen(Aid article)
    {
        var advisor = _advisor.With(article);
        var (appraiser, weights) = advisor.Appraise(_known, advisor.ValueDraws);
        var hands = advisor.Hands(appraiser);
        var (offered, ruledOut) = advisor.Choose(hands, weights.Set, a => a.Id == _kind, Counts);
        return offered.Count == 0 ? new(null, 0, ruledOut.Length == 0 ? null : ruledOut[0])
            : new(offered[0], advisor.Ranking(hands, weights, _people).UsableShare(offered[0]), null);
    }

    /// <summary>True when a plan with the article is first among all kinds.</summary>
    /// <param name="article">The article, under the id of its kind.</param>
    internal bool IsFirst(Aid article)
    {
        var advisor = _advisor.With(article);
        var (appraiser, weights) = advisor.Appraise(_known, advisor.ValueDraws);
        var hands = advisor.Hands(appraiser);
        var (offered, _) = advisor.Choose(hands, weights.Set, null, Counts);
        return offered.Any(o => o.Plan.Aid.Id == _kind) && advisor.Ranking(hands, weights, _people).First(offered).Aid.Id == _kind;
    }

    private bool Counts(Plan plan) => plan.Aid.Id != _kind || _way is null || _way(plan);
}
