using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Fitting;

/// <summary>Turns the ranking round: what must an article be like to suit this person? Every bound is found by halving on the real advice, in steps
/// that can be read off a ruler or a scale, so that the number told is on the good side and the next one is not.</summary>
/// <param name="knowledge">Kinds and steps.</param>
/// <param name="advisor">Ranks.</param>
public sealed class ArticleSearch(KnowledgeBase knowledge, Advisor advisor)
{
    /// <summary>What is not a number counts as failed by every other article: nothing is known of how many have it (decision).</summary>
    private const double HalfOfThem = 0.5;

    /// <summary>Part of a step that rounding may cost.</summary>
    private const double Slack = 1e-6;

    private readonly double _sureShare = knowledge.Evidence.Value("reach.sure-share");
    private readonly double _beyond = knowledge.Evidence.Value("fitting.beyond-range");

    /// <summary>What to look for.</summary>
    /// <param name="known">Answers as given.</param>
    /// <param name="plan">A plan of the shortlist, made of the same knowledge.</param>
    /// <param name="isFirst">True when it is first there.</param>
    /// <returns>No lines where nothing is bought, or where nothing about the article matters.</returns>
    public ArticleDemand Of(Answers known, Plan plan, bool isFirst)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var judge = new ArticleJudge(knowledge, advisor, known, plan.Aid.Id, other => SameWay(other, plan));
        var kind = plan.Aid;
        var standing = judge.Stands(kind);
        var lines = new List<ArticleLine>();
        foreach (var trait in ArticleTrait.All(kind, plan.AddOns))
        {
            lines.AddRange(trait.IsNumber ? Numbers(judge, kind, trait, standing, isFirst) : Features(judge, kind, trait, standing, isFirst));
        }

        var ordered = lines.OrderByDescending(l => l.IsMust).ThenByDescending(l => l.Fails).ToList();
        var kept = ordered.Take(ArticleDemand.MostLines).ToList();
        return new(plan, isFirst, standing.UsableShare, [.. kept.Where(l => l.IsMust)], [.. kept.Where(l => !l.IsMust)], ordered.Count - kept.Count);
    }

    /// <summary>True when a plan takes its article to the skin in the same way, with no add-on more.</summary>
    /// <param name="other">A plan of the same kind.</param>
    /// <param name="plan">The plan.</param>
    internal static bool SameWay(Plan other, Plan plan) =>
        other.Posture == plan.Posture && other.Approach == plan.Approach && other.Companion?.Id == plan.Companion?.Id && other.AddOns.All(a => plan.Has(a.Id));

    private IEnumerable<ArticleLine> Features(ArticleJudge judge, Aid kind, ArticleTrait trait, ArticleStanding usual, bool isFirst)
    {
        bool has = trait.Has(kind)!.Value;
        if (has && judge.Stands(trait.With(kind, false)) is var without && (!without.Allowed || (IsSure(usual) && !IsSure(without))))
        {
            return [new(trait, true) { Fails = HalfOfThem }];
        }

        // Nothing but a rule hangs on a material.
        return trait.Kind != ArticleTraitKind.FreeOf && has == isFirst && judge.IsFirst(trait.With(kind, !has)) != isFirst
            ? [new(trait, false) { Fails = HalfOfThem }]
            : [];
    }

    private IEnumerable<ArticleLine> Numbers(ArticleJudge judge, Aid kind, ArticleTrait trait, ArticleStanding usual, bool isFirst)
    {
        var number = trait.Number(kind)!;
        double width = Math.Max(number.High - number.Low, Step(trait));
        double low = Math.Max(Step(trait), number.Low - (_beyond * width)), high = number.High + (_beyond * width);
        var standings = new Dictionary<double, ArticleStanding> { [number.Value] = usual };
        ArticleStanding Stands(double si) => standings.TryGetValue(si, out var found) ? found : standings[si] = judge.Stands(trait.With(kind, si));
        foreach (bool atLeast in (bool[])[true, false])
        {
            double end = atLeast ? low : high, other = atLeast ? high : low;
            var allowed = trait.Kind == ArticleTraitKind.Price ? null : Bound(trait, number.Value, end, si => Stands(si).Allowed);
            var sure = trait.Kind == ArticleTraitKind.Price ? null
                : IsSure(usual) ? Bound(trait, number.Value, end, si => IsSure(Stands(si)))
                : IsSure(Stands(OnGrid(trait, other, number.Value))) ? Reversed(Bound(trait, number.Value, other, si => !IsSure(Stands(si))))
                : null;
            if (sure is { } s && allowed is { } a && !Binds(s.Good, a.Good, atLeast))
            {
                sure = null;
            }

            if (allowed is not null || sure is not null)
            {
                yield return new(trait, true)
                {
                    AtLeast = atLeast,
                    Limit = allowed?.Good,
                    Beyond = allowed?.Bad,
                    Sure = sure?.Good,
                    BeyondSure = sure?.Bad,
                    Fails = Fails(number, width, sure?.Good ?? allowed!.Value.Good, atLeast),
                };
            }

            var first = isFirst ? Bound(trait, number.Value, end, si => judge.IsFirst(trait.With(kind, si)))
                : judge.IsFirst(trait.With(kind, OnGrid(trait, other, number.Value))) ? Reversed(Bound(trait, number.Value, other, si => !judge.IsFirst(trait.With(kind, si))))
                : null;
            if (first is { } f && (allowed is null || Binds(f.Good, allowed.Value.Good, atLeast)) && (sure is null || Binds(f.Good, sure.Value.Good, atLeast)))
            {
                yield return new(trait, false) { AtLeast = atLeast, Limit = f.Good, Beyond = f.Bad, Fails = Fails(number, width, f.Good, atLeast) };
            }
        }
    }

    private bool IsSure(ArticleStanding standing) => standing.UsableShare >= _sureShare;

    /// <summary>True when one bound asks for more than another.</summary>
    private static bool Binds(double one, double other, bool atLeast) => atLeast ? one > other : one < other;

    private static double Fails(Sourced range, double width, double limit, bool atLeast) =>
        Math.Min(1, (atLeast ? limit - range.Low : range.High - limit) / width);

    private static (double Good, double Bad)? Reversed((double Good, double Bad)? bound) => bound is { } b ? (b.Bad, b.Good) : null;

    /// <summary>The last step from a number towards an end at which something still holds, and the next, at which it does not; null when it holds up to the end.</summary>
    private (double Good, double Bad)? Bound(ArticleTrait trait, double from, double end, Func<double, bool> holds)
    {
        double step = Step(trait);
        int sign = end < from ? -1 : 1;
        int first = sign < 0 ? (int)Math.Ceiling((from / step) - Slack) - 1 : (int)Math.Floor((from / step) + Slack) + 1;
        int last = Last(trait, end, sign);
        int count = ((last - first) * sign) + 1;
        if (count <= 0 || holds(At(first + ((count - 1) * sign))))
        {
            return null;
        }

        // Below good it holds, at bad it does not.
        int good = -1, bad = count - 1;
        while (bad - good > 1)
        {
            int middle = (good + bad) / 2;
            (good, bad) = holds(At(first + (middle * sign))) ? (middle, bad) : (good, middle);
        }

        return (good < 0 ? from : At(first + (good * sign)), At(first + (bad * sign)));

        double At(int steps) => steps * step;
    }

    private double OnGrid(ArticleTrait trait, double end, double from) => Last(trait, end, end < from ? -1 : 1) * Step(trait);

    private int Last(ArticleTrait trait, double end, int sign) =>
        sign < 0 ? (int)Math.Ceiling((end / Step(trait)) - Slack) : (int)Math.Floor((end / Step(trait)) + Slack);

    private double Step(ArticleTrait trait) => trait.Kind switch
    {
        ArticleTraitKind.Length or ArticleTraitKind.JetReach or ArticleTraitKind.FoldedLength => knowledge.Evidence.Value("fitting.step-length"),
        ArticleTraitKind.TipWidth => knowledge.Evidence.Value("fitting.step-width"),
        ArticleTraitKind.Mass => knowledge.Evidence.Value("fitting.step-mass"),
        ArticleTraitKind.Reservoir => knowledge.Evidence.Value("fitting.step-reservoir"),
        ArticleTraitKind.Price => knowledge.Evidence.Value("fitting.step-price"),
        _ => knowledge.Evidence.Value("fitting.step-force"),
    };
}
