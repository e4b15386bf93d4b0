using ToiletAid.App.Files;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Safety;
using ToiletAid.Core.Simulation;
using ToiletAid.Core.Tests.Advising;
using ToiletAid.Core.Tests.Trials;

namespace ToiletAid.Core.Tests.Plans;

public sealed class DrawnNumbersTests
{
    private static readonly DrawnNumbers Numbers = new(Cases.Knowledge, new AdviceSettings().Seed);

    private static readonly PeopleSimulator Simulator = new(Cases.Knowledge, BuiltIn.People());

    private static IEnumerable<Answers> People(int count) => Enumerable.Range(0, count).Select(i => Simulator.Make(22, i, Depth.Full, new(2026, 3, 9)).Sessions[0].Answers);

    private static IEnumerable<NumberSet> Sets => Enumerable.Range(0, DrawnNumbers.Sets).Select(Numbers.Of);

    /// <summary>Each set draws from another of the equal parts: the distribution function of the triangle (common practice, any handbook of statistics)
    /// takes the draws of a number, in order, to the middles of the parts.</summary>
    [Fact]
    public void The_draws_of_each_number_spread_evenly_over_its_triangle()
    {
        int ranged = 0;
        foreach (var id in Cases.Knowledge.Evidence.Ids)
        {
            var number = Cases.Knowledge.Evidence[id];
            double[] draws = [.. Sets.Select(s => s.Evidence.Value(id)).Order()];
            if (number.High <= number.Low || number.Basis == Basis.Decision)
            {
                Assert.All(draws, d => Assert.Equal(number.Value, d));
                continue;
            }

            ranged++;
            for (int i = 0; i < draws.Length; i++)
            {
                Assert.Equal((i + 0.5) / draws.Length, Triangle(number, draws[i]), 1e-9);
            }
        }

        Assert.InRange(ranged, 70, int.MaxValue);
    }

    /// <summary>Were all numbers high in one set and low in another, their ranges would add up as they do not in the world.</summary>
    [Fact]
    public void Numbers_are_drawn_apart()
    {
        var ids = Cases.Knowledge.Evidence.Ids.Where(id => Cases.Knowledge.Evidence[id] is { Basis: not Basis.Decision } n && n.High > n.Low).OrderBy(id => id.Text, StringComparer.Ordinal).ToList();
        double[][] standard = [.. ids.Select(id => Standard([.. Sets.Select(s => Triangle(Cases.Knowledge.Evidence[id], s.Evidence.Value(id)))]))];
        double[] products = [.. from i in Enumerable.Range(0, ids.Count) from j in Enumerable.Range(0, i) select standard[i].Zip(standard[j], (a, b) => a * b).Average()];

        // Of two that have nothing to do with each other, over 16 draws, the correlation spreads by 1/sqrt(15) around 0 (common practice).
        Assert.InRange(products.Average(), -0.01, 0.01);
        Assert.InRange(Math.Sqrt(products.Average(p => p * p)), 0.24, 0.28);
    }

    [Fact]
    public void Plans_of_an_aid_share_its_numbers_and_an_article_that_was_measured_keeps_its_own()
    {
        var set = Numbers.Of(3);
        Plan alone = TrialCases.Plan("tongs"), other = TrialCases.Plan("tongs") with { Posture = Posture.SideLying };
        var measured = alone with { Aid = alone.Aid with { Length = alone.Aid.Length! with { Low = alone.Aid.Length!.Value, High = alone.Aid.Length!.Value } } };

        Assert.Same(set.Of(alone).Aid, set.Of(other).Aid);
        Assert.NotEqual(alone.Aid.Length!.Value, set.Of(alone).Aid.Length!.Value);
        Assert.Equal(alone.Aid.Length!.Value, set.Of(measured).Aid.Length!.Value);
        Assert.Equal(set.Of(alone).Aid.Coverage, set.Of(measured).Aid.Coverage);
        Assert.Equal(set.Of(alone).Aid.Coverage, Numbers.Under(Cases.Knowledge).Of(3).Of(alone).Aid.Coverage);
    }

    [Fact]
    public void Hands_are_judged_by_drawn_numbers_too()
    {
        var friction = Cases.Knowledge.Hand.Coefficients.Numbers["hand.hold-friction"];

        Assert.Equal(DrawnNumbers.Sets, Sets.Select(s => s.Hand.Coefficients.HoldFriction).Distinct().Count());
        Assert.All(Sets, s => Assert.InRange(s.Hand.Coefficients.HoldFriction, friction.Low, friction.High));
        Assert.All(Sets, s => Assert.Equal(1, s.Hand.Coefficients.Helped));
    }

    /// <summary>Who is told that a kind is first in so many of 100 draws is told too little of what is not known where the numbers stand still.</summary>
    [Fact]
    public void Shares_of_first_places_count_what_is_not_known_of_the_numbers()
    {
        Advisor drawn = new(Cases.Knowledge, new() { AsksGrip = false }), still = new(Cases.Knowledge, new() { AsksGrip = false, DrawsNumbers = false });
        double Entropy(Advice advice) => -advice.Ranked.Where(r => r.FirstShare > 0).Sum(r => r.FirstShare * Math.Log(r.FirstShare));
        var people = People(40).Where(a => drawn.Stops(a).IsEmpty).ToList();

        double with = people.Average(a => Entropy(drawn.Advise(a))), without = people.Average(a => Entropy(still.Advise(a)));

        Assert.True(with > without, $"{with} and {without}");
    }

    /// <summary>Whoever chooses questions looks at rules of reach once for all plans that differ in add-ons only.</summary>
    [Fact]
    public void What_rules_say_of_reach_is_the_same_whatever_is_added_to_a_plan()
    {
        int compared = 0;
        var rules = Cases.Hazards.RulesOut.Where(r => r.DependsOnReach).ToList();
        var advisor = new Advisor(Cases.Knowledge, new() { AsksGrip = false });
        foreach (var answers in People(20))
        {
            var appraiser = advisor.Appraise(answers, 16).Appraiser;
            var space = new PlanSpace(Cases.Knowledge.Catalogue, Cases.Knowledge.Evidence, answers);
            foreach (var same in Cases.Knowledge.Catalogue.Aids.SelectMany(space.Of).GroupBy(p => (p.Aid.Key, p.Companion?.Key, p.Posture, p.Approach)).Where(g => g.Count() > 1))
            {
                var said = same.Select(p => string.Join(' ', rules.Where(r => r.Check(new RuleContext(Cases.Knowledge, answers, p, appraiser.ReachDemands(p))).Applies == true).Select(r => r.Id))).Distinct().ToList();
                Assert.Single(said);
                compared += said[0].Length > 0 ? 1 : 0;
            }
        }

        Assert.InRange(compared, 20, int.MaxValue);
    }

    private static double Triangle(Sourced n, double x) => x < n.Value
        ? (x - n.Low) * (x - n.Low) / ((n.High - n.Low) * (n.Value - n.Low))
        : 1 - ((n.High - x) * (n.High - x) / ((n.High - n.Low) * (n.High - n.Value)));

    private static double[] Standard(double[] values)
    {
        double mean = values.Average(), deviation = Math.Sqrt(values.Average(v => (v - mean) * (v - mean)));
        return [.. values.Select(v => (v - mean) / deviation)];
    }
}
