using System.Collections.Immutable;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Randomness;

namespace ToiletAid.Core.Fitting;

/// <summary>Is this article right for this person? Finds out what is most decisive first, and stops as soon as the verdict is certain.</summary>
/// <remarks>What was not asked for may be anything, also beyond the range of the kind by its width; what cannot be found out is taken to lie within that range. The
/// best, the worst and many drawn articles are all judged by the real advice. While they differ, that is asked next which changes the verdict of most of them.</remarks>
public sealed class ArticleFitter
{
    /// <summary>Articles drawn besides the best and the worst (decision: so many that what matters for one in ten is missed by one person in ten).</summary>
    private const int Drawn = 24;

    /// <summary>Of these, how many are changed trait by trait to see what decides (decision, for speed).</summary>
    private const int Changed = 6;

    private const ulong Stream = 0x4152_5449;

    private readonly KnowledgeBase _knowledge;
    private readonly Advisor _advisor;
    private readonly Aid _kind;
    private readonly ArticleJudge _judge;
    private readonly ArticleSteps _steps;

    /// <summary>Makes ready for articles of a kind.</summary>
    /// <param name="knowledge">Kinds and limits.</param>
    /// <param name="advisor">Ranks, with the same knowledge.</param>
    /// <param name="known">Answers as given; no red flag among them.</param>
    /// <param name="kind">The kind that the articles resemble.</param>
    public ArticleFitter(KnowledgeBase knowledge, Advisor advisor, Answers known, Aid kind)
    {
        ArgumentNullException.ThrowIfNull(knowledge);
        ArgumentNullException.ThrowIfNull(advisor);
        ArgumentNullException.ThrowIfNull(kind);
        _knowledge = knowledge;
        _advisor = advisor;
        _kind = kind;
        _judge = new(knowledge, advisor, known, kind.Id, null);
        _steps = new(knowledge.Evidence);
        Traits = ArticleTrait.All(kind, knowledge.Catalogue.AddOns.RemoveAll(a => !kind.AddOns.Contains(a.Id)));
    }

    /// <summary>All that can be found out about such an article.</summary>
    public ImmutableArray<ArticleTrait> Traits { get; }

    /// <summary>What can be said so far.</summary>
    /// <param name="facts">What is known.</param>
    public ArticleOutlook OutlookFor(ArticleFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var usual = Judge(facts.Usual());
        ArticleTrait[] open = [.. Traits.Where(t => !facts.Knows(t))];
        Aid[] possible = [.. Extremes(facts, open), .. Enumerable.Range(0, Drawn).Select(i => Draw(facts, open, i))];
        if (possible.All(a => Judge(a).IsSame(usual)))
        {
            return new(usual, true, null);
        }

        var decides = open.Select(t => (Trait: t, Count: possible.Take(Changed).Count(a => Decides(facts, a, t)))).Where(d => d.Count > 0).OrderByDescending(d => d.Count).ToList();
        ArticleTrait[] order = decides.Count > 0 ? [.. decides.Select(d => d.Trait)] : open;
        return new(usual, false, order.FirstOrDefault(t => !facts.NotKnown.Contains(t))) { CanChange = [.. order] };
    }

    /// <summary>Changes of one thing, each of which alone would make it fit; empty where it fits or no single one is enough.</summary>
    /// <param name="facts">What is known of the article; the rest is as the kind usually is.</param>
    public ImmutableArray<ArticleChange> WouldFit(ArticleFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var article = facts.Usual();
        return Fits(article) ? [] : [.. Traits.Select(t => Change(article, t)).OfType<ArticleChange>()];
    }

    /// <summary>Two things that it has not, and with both of which it would fit; empty where there are none. Of numbers no two are looked at.</summary>
    /// <param name="facts">What is known of the article; the rest is as the kind usually is.</param>
    public ImmutableArray<ArticleChange> WouldFitTogether(ArticleFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var article = facts.Usual();
        if (Fits(article))
        {
            return [];
        }

        ArticleTrait[] lacking = [.. Traits.Where(t => t.Has(article) == false)];
        var pair = (from one in lacking
                    from other in lacking.SkipWhile(t => t != one).Skip(1)
                    where Fits(other.With(one.With(article, true), true))
                    select (ArticleTrait[])[one, other]).FirstOrDefault();
        return [.. (pair ?? []).Select(t => new ArticleChange(t, null, null))];
    }

    /// <summary>True when a plan with the article comes first among all kinds.</summary>
    /// <param name="facts">What is known of the article; the rest is as the kind usually is.</param>
    public bool ComesFirst(ArticleFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return _judge.IsFirst(facts.Usual());
    }

    private ArticleChange? Change(Aid article, ArticleTrait trait)
    {
        if (!trait.IsNumber)
        {
            return trait.Has(article) == false && Fits(trait.With(article, true)) ? new(trait, null, null) : null;
        }

        double now = trait.Number(article)!.Value;
        var (low, high) = _steps.Searched(trait, trait.Number(_kind)!);
        double end = trait.MoreReaches ? Math.Max(high, now) : Math.Min(low, now);
        return trait.Kind == ArticleTraitKind.Price || !Fits(trait.With(article, _steps.OnGrid(trait, end, now))) ? null
            : new(trait, now, _steps.Bound(trait, now, end, si => !Fits(trait.With(article, si)))?.Bad ?? end);
    }

    private bool Fits(Aid article) => Judge(article).Fit != ArticleFit.DoesNotFit;

    private ArticleVerdict Judge(Aid article) => ArticleVerdict.Of(_knowledge, _judge.Screen(article));

    /// <summary>True when either end of what it may be gives the article another verdict.</summary>
    private bool Decides(ArticleFacts facts, Aid article, ArticleTrait trait)
    {
        var number = Range(facts, trait);
        return !Judge(number is { } from ? trait.With(article, from.Low) : trait.With(article, true))
            .IsSame(Judge(number is { } to ? trait.With(article, to.High) : trait.With(article, false)));
    }

    /// <summary>The best, the worst, and one that is long and heavy: what reaches far is hard to hold.</summary>
    private IEnumerable<Aid> Extremes(ArticleFacts facts, ArticleTrait[] open)
    {
        yield return Made(facts, open, (t, range) => t.MoreReaches ? range : 1 - range, 1, true);
        yield return Made(facts, open, (t, range) => t.MoreReaches ? range : 1 - range, 0, false);
        yield return Made(facts, open, (_, range) => range, 1, false);
    }

    private Aid Made(ArticleFacts facts, ArticleTrait[] open, Func<ArticleTrait, double, double> part, double at, bool has)
    {
        var article = _kind;
        foreach (var trait in open)
        {
            article = Range(facts, trait) is { } number ? trait.With(article, number.Low + (part(trait, at) * (number.High - number.Low))) : trait.With(article, has);
        }

        return facts.Over(article);
    }

    /// <summary>From where to where it may lie, SI; null for what is not a number.</summary>
    private (double Low, double High)? Range(ArticleFacts facts, ArticleTrait trait) =>
        trait.Number(_kind) is not { } own ? null : facts.NotKnown.Contains(trait) ? (own.Low, own.High) : _steps.Searched(trait, own);

    private Aid Draw(ArticleFacts facts, ArticleTrait[] open, int draw)
    {
        var article = _kind;
        foreach (var trait in open)
        {
            // Each trait has numbers of its own, so that what is found out about one leaves the others as they were.
            double part = new RandomDraws(_advisor.Seed ^ Stream, ((ulong)Traits.IndexOf(trait) << 32) | (uint)draw).NextUniform();
            article = Range(facts, trait) is { } number ? trait.With(article, number.Low + (part * (number.High - number.Low))) : trait.With(article, part < 0.5);
        }

        return facts.Over(article);
    }
}
