using ToiletAid.App.Store;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Fitting;
using ToiletAid.Core.Person;
using ToiletAid.Core.Randomness;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Fitting;

/// <summary>Invented articles, asked about one thing at a time, against the whole ranking with the article in place of its kind.</summary>
public sealed class ArticleFitterTests(ITestOutputHelper output)
{
    private static readonly AdviceSettings Settings = new() { AsksGrip = false, WeightDraws = 2000 };
    private static readonly string[] People = ["k-014-stiff-shoulder", "r-033-cord-injury", "m-207-one-hand", "t-562-weak-grip", "s-275-breastbone"];
    private static readonly string[] Kinds = ["long-clamp", "short-soft", "paddle-lock", "tongs", "squeeze-wash", "spray-wash"];

    /// <summary>Every article of five demo people and six kinds: the share of verdicts that are those of the ranking, and how much was asked for them.</summary>
    [Fact]
    public void The_verdict_on_thirty_invented_articles_is_that_of_the_ranking_after_few_measurements()
    {
        var verdicts = Judge(0).ToList();

        Assert.All(verdicts, v => Assert.True(v.IsSame, v.Said));
        Assert.Equal(3, verdicts.Select(v => v.Fit).Distinct().Count());
        int[] asked = [.. verdicts.Select(v => v.Asked).Order()];
        output.WriteLine($"Asked at the median {asked[asked.Length / 2]}, at most {asked[^1]}.");
        Assert.InRange(asked[asked.Length / 2], 0, 4);
    }

    /// <summary>What is certain is so over drawn articles, so that one in a hundred may be missed.</summary>
    [Fact]
    [Trait("Speed", "Slow")]
    public void The_verdict_on_three_hundred_articles_is_nearly_always_that_of_the_ranking()
    {
        var verdicts = Enumerable.Range(1, 10).SelectMany(Judge).ToList();
        int[] asked = [.. verdicts.Select(v => v.Asked).Order()];
        output.WriteLine($"{verdicts.Count(v => !v.IsSame)} of {verdicts.Count} differ; asked at the median {asked[asked.Length / 2]}, at most {asked[^1]}. {string.Join(", ", verdicts.CountBy(v => v.Fit))}");
        foreach (var verdict in verdicts.Where(v => !v.IsSame))
        {
            output.WriteLine(verdict.Said);
        }

        Assert.InRange(verdicts.Count(v => !v.IsSame), 0, verdicts.Count / 100);
    }

    [Fact]
    public void What_would_make_it_fit_does_make_it_fit()
    {
        int changes = 0;
        for (int i = 0; i < People.Length * Kinds.Length; i++)
        {
            var (known, kind) = Case(i);
            var fitter = new ArticleFitter(Cases.Knowledge, new Advisor(Cases.Knowledge, Settings), known, kind);
            var facts = new ArticleFacts(kind).With(new(ArticleTraitKind.Length), 0.1);
            foreach (var change in fitter.WouldFit(facts))
            {
                changes++;
                var changed = change.Needed is { } si ? facts.With(change.Trait, si) : facts.With(change.Trait, true);
                Assert.NotEqual(ArticleFit.DoesNotFit, fitter.OutlookFor(changed).Verdict.Fit);
            }

            var pair = fitter.WouldFitTogether(facts).Aggregate(facts, (f, c) => f.With(c.Trait, true));
            Assert.True(pair == facts || fitter.OutlookFor(pair).Verdict.Fit != ArticleFit.DoesNotFit);
        }

        Assert.True(changes >= 5, $"{changes} changes");
    }

    private IEnumerable<(bool IsSame, ArticleFit Fit, int Asked, string Said)> Judge(int round)
    {
        for (int i = 0; i < People.Length * Kinds.Length; i++)
        {
            var (known, kind) = Case(i);
            var advisor = new Advisor(Cases.Knowledge, Settings);
            var fitter = new ArticleFitter(Cases.Knowledge, advisor, known, kind);
            var article = Invent(fitter, kind, (round * 1000) + i);
            var facts = new ArticleFacts(kind);
            var outlook = fitter.OutlookFor(facts);
            int count = 0;
            for (; outlook.Next is { } next; outlook = fitter.OutlookFor(facts), count++)
            {
                facts = next.IsNumber ? facts.With(next, next.Number(article)!.Value) : facts.With(next, next.Has(article)!.Value);
            }

            var ranked = ArticleVerdict.Of(
                Cases.Knowledge, advisor.WithStock(Cases.Knowledge.Catalogue.Under(new([article.AsArticle()], [])), Cases.Knowledge.Prices).Advise(known), kind.Id);
            string asked = string.Join(' ', facts.Numbers.Keys.Concat(facts.Features.Keys).Select(k => k.Kind));
            yield return (
                outlook.IsCertain && outlook.Verdict.IsSame(ranked), ranked.Fit, count,
                $"{People[i % People.Length]} {kind.Id}: {outlook.Verdict.Fit} with {string.Join('+', outlook.Verdict.With)} after {asked}, ranked {ranked.Fit} with {string.Join('+', ranked.With)}");
        }
    }

    private static (Answers Known, Aid Kind) Case(int number) =>
        (Answers(People[number % People.Length]), Cases.Knowledge.Catalogue.Aids.Single(a => a.Id == Kinds[number / People.Length]));

    private static Answers Answers(string name) => new ProfileFile(Cases.Knowledge.Questions).Read(DemoPeople.File(name), null).Value!.Latest.Answers;

    /// <summary>An article in the range of its kind or beyond it by half its width; three of four of what it may have, it has.</summary>
    private static Aid Invent(ArticleFitter fitter, Aid kind, int number)
    {
        var random = new RandomDraws(30, (ulong)number);
        var article = kind;
        foreach (var trait in fitter.Traits)
        {
            double part = random.NextUniform();
            article = trait.Number(kind) is { } range ? trait.With(article, Math.Max(0.0001, range.Low + (((2 * part) - 0.5) * (range.High - range.Low)))) : trait.With(article, part < 0.75);
        }

        return article;
    }
}
