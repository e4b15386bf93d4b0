using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Fitting;
using ToiletAid.Core.Person;
using ToiletAid.Core.Simulation;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Fitting;

/// <summary>Every bound is held against the whole ranking with an article on either side of it, which comes in as a clinic's stock does.</summary>
public sealed class ArticleSearchTests(ITestOutputHelper output)
{
    private static readonly AdviceSettings Settings = new() { AsksGrip = false, WeightDraws = 2000 };
    private static readonly DateOnly Day = new(2026, 3, 9);

    [Fact]
    public void Every_bound_of_the_demo_people_is_true()
    {
        int[] lines = [.. DemoPeople.Names.SelectMany(n => Check(Answers(n.Data), 2))];

        Assert.True(lines.Sum() >= 10, $"{lines.Sum()} lines");
    }

    [Fact]
    [Trait("Speed", "Slow")]
    public void Every_bound_of_simulated_people_is_true()
    {
        var simulator = new PeopleSimulator(Cases.Knowledge, BuiltIn.People());
        int[] lines = [.. Enumerable.Range(0, 800).SelectMany(i => Check(simulator.Make(22, i, i % 2 == 0 ? Depth.Full : Depth.Measured, Day).Sessions[0].Answers, 1)).Take(200)];

        output.WriteLine($"{lines.Length} plans, {lines.Sum()} lines, at most {lines.Max()}, none for {lines.Count(l => l == 0)}.");
        Assert.Equal(200, lines.Length);
        Assert.True(lines.Sum() >= 200, $"{lines.Sum()} lines");
    }

    /// <summary>Counted by hand from the drawn needs: the first whole centimetre that is enough for at least 80 of 100 of them, and for at least half.</summary>
    [Fact]
    public void The_length_to_be_sure_of_is_the_first_that_is_enough_for_most_of_the_drawn_people()
    {
        var known = Answers("k-014-stiff-shoulder");
        var advisor = new Advisor(Cases.Knowledge, Settings);
        var ranked = advisor.Advise(known).Ranked[0];
        var length = new ArticleSearch(Cases.Knowledge, advisor).Of(known, ranked.Plan, true).Musts.Single(l => l.Trait.Kind == ArticleTraitKind.Length);
        var draws = ranked.Demands.Need!.Draws;
        double First(double share) => Enumerable.Range(1, 100).Select(cm => cm / 100.0).First(m => draws.Count(d => d <= m) >= share * draws.Length);

        Assert.Equal(First(0.8), length.Sure!.Value, 1e-9);
        Assert.Equal(First(0.5), length.Limit!.Value, 1e-9);
        Assert.True(length.AtLeast);
    }

    [Theory]
    [InlineData("by-hand")]
    [InlineData("wipe-moist")]
    [InlineData("helper-wipe")]
    public void There_is_nothing_to_look_for_where_nothing_is_bought(string aid) =>
        Assert.Empty(ArticleTrait.All(Cases.Knowledge.Catalogue.Aids.Single(a => a.Id == aid), []));

    [Fact]
    public void What_is_put_into_an_article_is_what_it_then_has()
    {
        foreach (var aid in Cases.Knowledge.Catalogue.Aids)
        {
            Assert.All(ArticleTrait.All(aid, Cases.Knowledge.Catalogue.AddOns), trait =>
            {
                if (trait.IsNumber)
                {
                    Assert.Equal(0.123, trait.Number(trait.With(aid, 0.123))!.Value);
                }
                else
                {
                    Assert.True(trait.Has(trait.With(aid, true)));
                    Assert.False(trait.Has(trait.With(aid, false)));
                }
            });
        }
    }

    private static Answers Answers(string name) => new ProfileFile(Cases.Knowledge.Questions).Read(DemoPeople.File(name), null).Value!.Latest.Answers;

    /// <summary>Checks the lines of the first plans of which something is bought; how many lines each has.</summary>
    private IEnumerable<int> Check(Answers known, int plans)
    {
        var advisor = new Advisor(Cases.Knowledge, Settings);
        var advice = advisor.Advise(known);
        // The ranking below limits the article to its way, which would limit it also where another plan pats dry with it.
        foreach (var ranked in advice.Ranked.Where(r => ArticleTrait.IsArticle(r.Plan.Aid) && !advice.Ranked.Any(o => o.Plan.Companion?.Id == r.Plan.Aid.Id)).Take(plans))
        {
            var demand = new ArticleSearch(Cases.Knowledge, advisor).Of(known, ranked.Plan, ranked.Rank == 1);
            Assert.InRange(demand.Lines.Length, 0, ArticleDemand.MostLines);
            Assert.All(demand.Musts, m => Assert.True(m.IsMust));
            foreach (var line in demand.Lines)
            {
                Check(advisor, known, demand, line);
            }

            if (demand.LeftOut > 0)
            {
                output.WriteLine($"{demand.LeftOut} left out of {ranked.Plan.Key}.");
            }

            yield return demand.Lines.Length;
        }
    }

    private static void Check(Advisor advisor, Answers known, ArticleDemand demand, ArticleLine line)
    {
        string what = $"{demand.Plan.Key}: {line}";
        if (!line.Trait.IsNumber)
        {
            bool has = line.Trait.Has(demand.Plan.Aid)!.Value;
            Ranked good = Rank(advisor, known, demand, line.Trait.With(demand.Plan.Aid, true)), bad = Rank(advisor, known, demand, line.Trait.With(demand.Plan.Aid, false));
            Assert.True(line.IsMust ? good.Share > 0 && (!bad.Offered || (bad.Share < 0.8 && good.Share >= 0.8)) : good.First && !bad.First, what);
            Assert.True(has || !line.IsMust, what);
            return;
        }

        Ranked At(double si) => Rank(advisor, known, demand, line.Trait.With(demand.Plan.Aid, si));
        if (line.Limit is { } limit)
        {
            Assert.True(line.IsMust ? At(limit).Offered : At(limit).First, what + " inside");
            Assert.False(line.IsMust ? At(line.Beyond!.Value).Offered : At(line.Beyond!.Value).First, what + " outside");
            double usual = line.Trait.Number(demand.Plan.Aid)!.Value, between = (usual + limit) / 2;
            Assert.True(line.IsMust ? At(between).Offered : !demand.IsFirst || At(between).First, what + " between");
        }

        if (line.Sure is { } sure)
        {
            Assert.True(At(sure).Share >= 0.8, what + " sure");
            Assert.True(At(line.BeyondSure!.Value).Share < 0.8, what + " not sure");
        }
    }

    /// <summary>The ranking with the article in place of its kind, used in the way of the plan.</summary>
    private static Ranked Rank(Advisor advisor, Answers known, ArticleDemand demand, Aid article)
    {
        var plan = demand.Plan;
        var used = article with
        {
            Approaches = plan.Approach is { } approach ? [approach] : article.Approaches,
            Postures = [plan.Posture],
            Companions = plan.Companion is { } companion ? [companion.Id] : [],
            AddOns = [.. article.AddOns.Where(plan.Has)],
        };
        var advice = advisor.WithStock(Cases.Knowledge.Catalogue.Under(new([used.AsArticle()], [])), Cases.Knowledge.Prices).Advise(known);
        var place = advice.Ranked.FirstOrDefault(r => r.Plan.Aid.Id == article.Id);

        // A plan with a companion may be taken alone, which is another way of using it.
        Assert.True(place is null || place.Plan.Companion?.Id == plan.Companion?.Id, plan.Key);
        return new(place is not null, place?.Rank == 1, place?.UsableShare ?? 0);
    }

    private sealed record Ranked(bool Offered, bool First, double Share);
}
