using System.Collections.Immutable;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Fitting;

/// <summary>What the ranking says of an article that stands for its kind.</summary>
/// <param name="Fit">The verdict.</param>
/// <param name="With">Ids of the add-ons that the hand needs with it; empty where it needs none.</param>
/// <param name="AgainstTheBody">True when paper is let go by pressing it against thigh, hip or seat.</param>
/// <param name="Plan">The best plan with it; null where none is allowed.</param>
/// <param name="UsableShare">Share of the people who would give these answers that can use that plan, 0 to 1.</param>
/// <param name="Reasons">What forbids the plan that came closest; empty where one is allowed.</param>
public sealed record ArticleVerdict(ArticleFit Fit, ImmutableArray<string> With, bool AgainstTheBody, Plan? Plan, double UsableShare, ImmutableArray<Finding> Reasons)
{
    /// <summary>Reads the verdict off advice for which the article stood in place of its kind.</summary>
    /// <param name="knowledge">Limits.</param>
    /// <param name="advice">The advice, with no red flag.</param>
    /// <param name="kind">Id of the kind.</param>
    public static ArticleVerdict Of(KnowledgeBase knowledge, Advice advice, string kind)
    {
        ArgumentNullException.ThrowIfNull(knowledge);
        ArgumentNullException.ThrowIfNull(advice);
        return advice.Ranked.FirstOrDefault(r => r.Plan.Aid.Id == kind) is { } ranked
            ? Of(knowledge, ranked.Plan, ranked.Demands, ranked.UsableShare)
            : Not(advice.RuledOut.FirstOrDefault(r => r.Aid.Id == kind));
    }

    /// <summary>True when another verdict says the same of what is bought and done.</summary>
    /// <param name="other">Another verdict.</param>
    public bool IsSame(ArticleVerdict other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Fit == other.Fit && AgainstTheBody == other.AgainstTheBody && With.SequenceEqual(other.With);
    }

    internal static ArticleVerdict Of(KnowledgeBase knowledge, ScreenedArticle article) => article.Offer is { } offer
        ? Of(knowledge, offer.Plan, offer.Demands, article.UsableShare)
        : Not(article.RuledOut);

    private static ArticleVerdict Of(KnowledgeBase knowledge, Plan plan, PlanDemands demands, double usable)
    {
        if (usable < knowledge.Evidence.Value(EvidenceIds.ReachLeastShare))
        {
            return new(ArticleFit.DoesNotFit, [], false, plan, usable, []);
        }

        ImmutableArray<string> with = [.. plan.AddOns.Where(a => a.OnlyHelps).Select(a => a.Id)];
        bool against = demands.Handling?.Operations.Any(o => o is { Kind: OperationKind.Release, AgainstTheBody: true }) ?? false;
        return new(with.IsEmpty && !against ? ArticleFit.Fits : ArticleFit.FitsWith, with, against, plan, usable, []);
    }

    private static ArticleVerdict Not(RuledOutAid? ruledOut) => new(ArticleFit.DoesNotFit, [], false, null, 0, ruledOut?.Reasons ?? []);
}
