using System.Collections.Immutable;
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

    private readonly double _sureShare = knowledge.Evidence.Value(EvidenceIds.ReachSureShare);
    private readonly ArticleSteps _steps = new(knowledge.Evidence);

    /// <summary>What to look for.</summary>
    /// <param name="known">Answers as given.</param>
    /// <param name="plan">A plan of the shortlist, made of the same knowledge.</param>
    /// <param name="isFirst">True when it is first there.</param>
    /// <returns>No lines where nothing is bought, or where nothing about the article matters.</returns>
    public ArticleDemand Of(Answers known, Plan plan, bool isFirst)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var judge = new ArticleJudge(knowledge, advisor, known, plan.Aid.Id, other => SameWay(other, plan));
        var (usual, own) = Lines(judge, plan.Aid, plan.AddOns, isFirst);

        // Safety first: what a rule asks for is never left out.
        var ordered = own.Concat(new ArticleRules(knowledge).Of(known, plan)).OrderByDescending(l => l.Trait.IsOfARule).ThenByDescending(l => l.Fails).ToLookup(l => l.IsMust);
        var after = plan.Companion is { } companion ? Lines(judge, companion, [], isFirst: null).Lines.OrderByDescending(l => l.Fails) : Enumerable.Empty<ArticleLine>();
        int room = ArticleDemand.MostLines, leftOut = 0;
        ImmutableArray<ArticleLine> musts = Kept(ordered[true]), afterIt = Kept(after), wishes = Kept(ordered[false]);
        return new(plan, isFirst, usual.UsableShare, musts, wishes, leftOut) { After = afterIt };

        ImmutableArray<ArticleLine> Kept(IEnumerable<ArticleLine> lines)
        {
            ArticleLine[] all = [.. lines];
            int kept = Math.Min(room, all.Length);
            room -= kept;
            leftOut += all.Length - kept;
            return [.. all[..kept]];
        }
    }

    /// <summary>An article of the plan as its kind usually is, screened, and what its traits must be.</summary>
    /// <param name="judge">Judges the plan with other articles.</param>
    /// <param name="kind">The kind of the article.</param>
    /// <param name="addOns">Add-ons that it must take.</param>
    /// <param name="isFirst">Whether the plan is first, for the wishes; null for musts alone.</param>
    private (ScreenedArticle Usual, List<ArticleLine> Lines) Lines(ArticleJudge judge, Aid kind, ImmutableArray<AddOn> addOns, bool? isFirst)
    {
        var usual = judge.Screen(kind);
        return (usual, [.. ArticleTrait.All(kind, addOns).SelectMany(t => t.IsNumber ? Numbers(judge, kind, t, isFirst is not null) : Features(judge, kind, t, usual, isFirst))]);
    }

    /// <summary>True when a plan takes its article to the skin in the same way, with no add-on more.</summary>
    /// <param name="other">A plan of the same kind.</param>
    /// <param name="plan">The plan.</param>
    internal static bool SameWay(Plan other, Plan plan) =>
        other.Posture == plan.Posture && other.Approach == plan.Approach && other.Companion?.Id == plan.Companion?.Id && other.AddOns.All(a => plan.Has(a.Id));

    private IEnumerable<ArticleLine> Features(ArticleJudge judge, Aid kind, ArticleTrait trait, ScreenedArticle usual, bool? isFirst)
    {
        bool has = trait.Has(kind)!.Value;
        if (has && judge.Screen(trait.With(kind, false)) is var without && (!without.Allowed || (IsSure(usual) && !IsSure(without))))
        {
            return [new(trait, true) { Fails = HalfOfThem }];
        }

        // Nothing but a rule depends on a material.
        return trait.Kind != ArticleTraitKind.FreeOf && has == isFirst && judge.IsFirst(trait.With(kind, !has)) != has
            ? [new(trait, false) { Fails = HalfOfThem }]
            : [];
    }

    private IEnumerable<ArticleLine> Numbers(ArticleJudge judge, Aid kind, ArticleTrait trait, bool looksAtFirst)
    {
        var number = trait.Number(kind)!;
        var (low, high) = _steps.Searched(trait, number);
        var screened = new Dictionary<double, ScreenedArticle>();
        ScreenedArticle Screen(double si) => screened.TryGetValue(si, out var found) ? found : screened[si] = judge.Screen(trait.With(kind, si));

        // An article that measures what is most plausible of its kind: of the kind itself that is not sure.
        var usual = Screen(number.Value);
        bool? isFirst = looksAtFirst ? judge.IsFirst(trait.With(kind, number.Value)) : null;
        foreach (bool atLeast in (bool[])[true, false])
        {
            double end = atLeast ? low : high, other = atLeast ? high : low;
            var allowed = trait.Kind == ArticleTraitKind.Price ? null : _steps.Bound(trait, number.Value, end, si => Screen(si).Allowed);
            var sure = trait.Kind == ArticleTraitKind.Price ? null
                : IsSure(usual) ? _steps.Bound(trait, number.Value, end, si => IsSure(Screen(si)))
                : IsSure(Screen(_steps.OnGrid(trait, other, number.Value))) ? Reversed(_steps.Bound(trait, number.Value, other, si => !IsSure(Screen(si))))
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
                    Fails = Fails(trait, number, sure?.Good ?? allowed!.Value.Good, atLeast),
                };
            }

            if (isFirst is not { } isFirstNow || (atLeast && LessIsBetter(trait)))
            {
                continue;
            }

            var first = isFirstNow ? _steps.Bound(trait, number.Value, end, si => judge.IsFirst(trait.With(kind, si)))
                : judge.IsFirst(trait.With(kind, _steps.OnGrid(trait, other, number.Value))) ? Reversed(_steps.Bound(trait, number.Value, other, si => !judge.IsFirst(trait.With(kind, si))))
                : null;
            if (first is { } f && (allowed is null || Binds(f.Good, allowed.Value.Good, atLeast)) && (sure is null || Binds(f.Good, sure.Value.Good, atLeast)))
            {
                yield return new(trait, false) { AtLeast = atLeast, Limit = f.Good, Beyond = f.Bad, Fails = Fails(trait, number, f.Good, atLeast) };
            }
        }
    }

    /// <summary>Traits of which nobody wishes more: where less changes the first place, plans that are as good as equal change places.</summary>
    private static bool LessIsBetter(ArticleTrait trait) => trait.Kind is ArticleTraitKind.Price or ArticleTraitKind.Mass or ArticleTraitKind.FoldedLength;

    private bool IsSure(ScreenedArticle article) => article.UsableShare >= _sureShare;

    /// <summary>True when one bound asks for more than another.</summary>
    private static bool Binds(double one, double other, bool atLeast) => atLeast ? one > other : one < other;

    private double Fails(ArticleTrait trait, Sourced range, double limit, bool atLeast) =>
        Math.Min(1, (atLeast ? limit - range.Low : range.High - limit) / _steps.Width(trait, range));

    private static (double Good, double Bad)? Reversed((double Good, double Bad)? bound) => bound is { } b ? (b.Bad, b.Good) : null;
}
