using CsCheck;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Hand;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Tests.Hand;

/// <summary>Laws that hold for every person, aid and choice of add-ons.</summary>
public sealed class HandlingLaws
{
    private static readonly Gen<double> Percentile = Gen.Double[0.01, 0.99];

    private static HandlingScore Score((Aid Aid, AddOn[] AddOns) plan, HandFacts person, double u)
    {
        var capacity = HandData.Model.Capacity(person);
        return HandData.Model.Demands(plan.Aid, plan.AddOns, person, capacity).Score(capacity.At(u));
    }

    private static void NeverWorse(HandlingScore before, HandlingScore after)
    {
        Assert.True(after.Possible || !before.Possible, $"{before} became {after}");
        Assert.True(after.Value >= before.Value - 1e-12, $"{before} became {after}");
        Assert.True(after.FailureChance <= before.FailureChance + 1e-12, $"{before} became {after}");
    }

    [Fact]
    public void A_stronger_hand_never_rules_out_what_a_weaker_one_could_do() =>
        Gen.Select(HandData.People, HandData.Plans, Percentile, Percentile).Sample(
            (person, plan, a, b) => NeverWorse(Score(plan, person, Math.Min(a, b)), Score(plan, person, Math.Max(a, b))),
            iter: 3_000);

    [Fact]
    public void A_higher_reading_on_dynamometer_or_gauge_never_rules_anything_out() =>
        Gen.Select(HandData.People, HandData.Plans, Percentile, Gen.Double[1, 3], Gen.Double[1, 3]).Sample(
            (person, plan, u, grip, pinch) =>
            {
                var stronger = person with { GripNewtons = grip * person.GripNewtons, PinchNewtons = pinch * person.PinchNewtons };
                NeverWorse(Score(plan, person, u), Score(plan, stronger, u));
            },
            iter: 3_000);

    [Fact]
    public void A_better_grasp_more_hands_quicker_fingers_or_less_tremor_never_rule_anything_out() =>
        Gen.Select(HandData.People, HandData.People, HandData.Plans, Percentile).Sample(
            (drawn, other, plan, u) =>
            {
                // A grip that was measured tells of a hand that grips.
                var person = drawn with { GripNewtons = drawn.BestGrasp <= Grasp.WholeHand ? drawn.GripNewtons : null };
                var better = person with
                {
                    BestGrasp = (Grasp)Math.Min((int)person.BestGrasp, (int)other.BestGrasp),
                    HandsFree = Math.Max(person.HandsFree, other.HandsFree),
                    Dexterity = (Dexterity)Math.Min((int)person.Dexterity, (int)other.Dexterity),
                    Tremor = (Tremor)Math.Min((int)person.Tremor, (int)other.Tremor),
                    PegSeconds = person.PegSeconds is { } p ? Math.Min(p, other.PegSeconds ?? p) : null,
                };
                NeverWorse(Score(plan, person, u), Score(plan, better, u));
            },
            iter: 3_000);

    [Fact]
    public void Any_add_on_helps_the_hand_or_leaves_it_as_it_was() =>
        Gen.Select(HandData.People, HandData.Plans, Gen.OneOf(HandData.AddOns), Percentile).Sample(
            (person, plan, more, u) => NeverWorse(Score(plan, person, u), Score((plan.Aid, [.. plan.AddOns, more]), person, u)),
            iter: 3_000);

    [Fact]
    public void The_cuff_never_raises_hold_demand()
    {
        int lowered = 0;
        Gen.Select(HandData.People, HandData.Plans, Percentile).Sample(
            (person, plan, u) =>
            {
                var without = HandData.Assess(plan.Aid, plan.AddOns, person, u).Operations;
                var with = HandData.Assess(plan.Aid, [.. plan.AddOns, HandData.AddOn("hand-cuff")], person, u).Operations;
                for (int i = 0; i < without.Length; i++)
                {
                    Assert.True(with[i].DemandNewtons <= without[i].DemandNewtons);
                    lowered += with[i].Kind == OperationKind.Hold && with[i].DemandNewtons < without[i].DemandNewtons ? 1 : 0;
                }
            },
            iter: 2_000);
        Assert.True(lowered > 100);
    }

    [Fact]
    public void A_heavier_or_longer_aid_is_never_lighter_to_hold() =>
        Gen.Select(HandData.Plans, Gen.Double[1, 3], Gen.Double[1, 3]).Sample(
            (plan, heavier, longer) =>
            {
                var aid = plan.Aid;
                var other = aid with
                {
                    Mass = aid.Mass with { Value = heavier * aid.Mass.Value },
                    Length = aid.Length is { } l ? l with { Value = longer * l.Value } : null,
                };
                var numbers = HandData.Model.Coefficients;
                Assert.True(HoldDemand.Of(other, numbers).GripNewtons >= HoldDemand.Of(aid, numbers).GripNewtons);
            },
            iter: 1_000);

    [Fact]
    public void The_short_score_says_what_the_long_assessment_says() =>
        Gen.Select(HandData.People, HandData.Plans, Percentile).Sample(
            (person, plan, u) =>
            {
                var assessment = HandData.Assess(plan.Aid, plan.AddOns, person, u);
                var score = Score(plan, person, u);

                Assert.Equal(score, assessment.Score);
                Assert.Equal(assessment.Operations.All(o => o.Possible), score.Possible);
                Assert.Equal(assessment.Operations.Select(o => o.Value).DefaultIfEmpty(1).Min(), score.Value);
                Assert.Equal(score.Value, assessment.Limiting?.Value ?? 1);
                Assert.Equal(1 - assessment.Operations.Aggregate(1.0, (all, o) => all * (1 - o.FailureChance)), score.FailureChance, 1e-12);
                Assert.All(assessment.Operations, o => Assert.True(o.Possible == (o.Obstacle == HandlingObstacle.None)));
                Assert.All(assessment.Operations, o => Assert.InRange(o.Value, 0, 1));
                Assert.All(assessment.Operations, o => Assert.InRange(o.FailureChance, 0, 1));
                Assert.All(assessment.Operations, o => Assert.True(o.Possible || (o.Value == 0 && o.FailureChance == 1)));
            },
            iter: 2_000);

    [Fact]
    public void Strength_is_finite_and_rises_with_its_percentile() =>
        Gen.Select(HandData.People, Gen.Double[0.0001, 0.9999], Gen.Double[0.0001, 0.9999]).Sample(
            (person, a, b) =>
            {
                var capacity = HandData.Model.Capacity(person);
                var weak = capacity.At(Math.Min(a, b));
                var strong = capacity.At(Math.Max(a, b));
                foreach (var grasp in Enum.GetValues<Grasp>())
                {
                    Assert.InRange(weak.Of(grasp), 0, strong.Of(grasp));
                    Assert.True(strong.Of(grasp) < 3000, $"{grasp} {strong.Of(grasp)} N");
                }
            },
            iter: 2_000);

    [Fact]
    public void Scoring_makes_no_garbage()
    {
        var capacity = HandData.Model.Capacity(HandData.Usual);
        var demands = HandData.Model.Demands(HandData.Aid("long-clamp"), [], HandData.Usual, capacity);
        double total = demands.Score(capacity.At(0.5)).Value;
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 1; i < 1000; i++)
        {
            total += demands.Score(capacity.At(i / 1000.0)).Value;
        }

        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
        Assert.True(total > 0);
    }
}
