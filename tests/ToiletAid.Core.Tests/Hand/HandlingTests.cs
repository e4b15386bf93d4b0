using System.Collections.Immutable;
using ToiletAid.App.Files;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Hand;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Tests.Hand;

public sealed class HandlingTests
{
    private static readonly HandCoefficients Numbers = HandData.Model.Coefficients;

    private static Sourced Exactly(double x) => new(x, x, x, Basis.Decision, "test");

    private static Operation Release(double newtons, params ImmutableArray<Grasp> grasps) => new()
    {
        Kind = OperationKind.Release,
        Force = Exactly(newtons),
        Grasps = grasps,
        Duration = Exactly(2),
    };

    private static Aid With(params ImmutableArray<Operation> operations) => HandData.Aid("long-clamp") with { Operations = operations };

    /// <summary>2010 ADA Standards 309.4: 5 pounds (22.2 N) at most, one hand, no tight grasping, pinching or twisting.</summary>
    [Theory]
    [InlineData(22.2, Grasp.PressWithPalmOrFist, 1, true)]
    [InlineData(22.3, Grasp.PressWithPalmOrFist, 1, false)]
    [InlineData(10, Grasp.PressWithForearm, 1, true)]
    [InlineData(10, Grasp.WholeHand, 1, false)]
    [InlineData(10, Grasp.FinePinch, 1, false)]
    [InlineData(10, Grasp.PressWithPalmOrFist, 2, false)]
    public void A_release_meets_the_accessibility_line_or_not(double newtons, Grasp grasp, int hands, bool meets)
    {
        var aid = With(Release(newtons, grasp) with { Hands = hands });
        Assert.Equal(meets, HandData.Assess(aid, [], HandData.Usual).ReleaseIsAccessible);
    }

    [Fact]
    public void A_release_with_fine_handling_does_not_meet_the_accessibility_line() =>
        Assert.False(AccessibilityLine.Meets(Release(5, Grasp.PressWithPalmOrFist) with { Fine = FineHandling.Some }, Numbers));

    [Fact]
    public void The_accessibility_line_is_five_pounds_of_force() =>
        Assert.Equal(5 * 4.4482216152605, Numbers.AccessibleForce, 0.05);

    /// <summary>Worked by hand: 0.22 kg weigh 2.157 N; level, half of 0.38 m away, that is 0.4099 N m.</summary>
    [Fact]
    public void Holding_is_own_weight_and_moment_turned_into_grip()
    {
        var hold = HoldDemand.Of(HandData.Aid("long-clamp"), Numbers);

        Assert.Equal(0.22, hold.MassKilograms, 1e-12);
        Assert.Equal(0.4099, hold.MomentNewtonMetres, 1e-4);

        // 1.5 · (2.157 / (2 · 0.5) + 0.4099 / 0.0782).
        Assert.Equal(11.10, hold.GripNewtons, 0.01);
    }

    [Fact]
    public void A_full_reservoir_is_held_too() =>
        Assert.Equal(0.280 + 0.180, HoldDemand.Of(HandData.Aid("spray-wash"), Numbers).MassKilograms, 1e-9);

    [Theory]
    [InlineData(Grasp.FinePinch, true, true, true, true)]
    [InlineData(Grasp.WholeHand, false, true, true, true)]
    [InlineData(Grasp.PressWithPalmOrFist, false, false, true, true)]
    [InlineData(Grasp.PressWithForearm, false, false, false, true)]
    [InlineData(Grasp.None, false, false, false, false)]
    public void A_hand_has_its_best_grasp_and_the_coarser_ones(Grasp best, bool pinch, bool grip, bool palm, bool forearm)
    {
        var strength = HandData.Model.Capacity(HandData.Usual with { BestGrasp = best, GripNewtons = 200, PinchNewtons = 50 }).At(0.5);

        Assert.Equal((pinch, grip, palm, forearm), (strength.Pinch > 0, strength.Grip > 0, strength.Palm > 0, strength.Forearm > 0));
    }

    [Fact]
    public void A_dynamometer_that_contradicts_the_observed_grasp_is_flagged()
    {
        var person = HandData.Usual with { GripNewtons = 200 };
        Assert.False(HandData.Model.Capacity(person).MeasurementAndGraspDisagree);
        Assert.True(HandData.Model.Capacity(person with { BestGrasp = Grasp.PressWithPalmOrFist }).MeasurementAndGraspDisagree);
    }

    [Fact]
    public void A_measured_grip_counts_instead_of_the_norm_within_its_error()
    {
        var grip = HandData.Model.Capacity(HandData.Usual with { GripNewtons = 300 }).Of(Grasp.WholeHand);
        Assert.Equal(300, grip.Median, 1e-9);

        // Schreuders et al. 2003: smallest detectable difference 61 N, so a standard error of 61 / (1.96 · √2) = 22 N.
        Assert.Equal(22, grip.At(0.8413447460685429) - 300, 0.05);
    }

    [Theory]
    [InlineData(2, HandlingObstacle.None)]
    [InlineData(1, HandlingObstacle.NeedsTwoHands)]
    public void Wrapping_paper_takes_two_hands(int handsFree, HandlingObstacle obstacle)
    {
        var assessment = HandData.Assess(HandData.Aid("paddle-lock"), [], HandData.Usual with { HandsFree = handsFree });
        Assert.Equal(obstacle, assessment.Operations.Single(o => o.Kind == OperationKind.Load).Obstacle);
        Assert.Equal(obstacle == HandlingObstacle.None, assessment.Possible);
    }

    [Fact]
    public void Prepared_paper_serves_what_takes_a_pad_and_not_what_is_tucked_in()
    {
        var person = HandData.Usual with { HandsFree = 1, Dexterity = Dexterity.Cannot, BestGrasp = Grasp.WholeHand };
        Assert.Equal(HandlingObstacle.NeedsTwoHands, HandData.Assess(HandData.Aid("short-soft"), [], person).Score.Obstacle);
        Assert.Equal(HandlingObstacle.NeedsTwoHands, HandData.Assess(HandData.Aid("short-soft"), [HandData.AddOn("prepared-paper")], person).Score.Obstacle);
        Assert.True(HandData.Assess(HandData.Aid("by-hand"), [HandData.AddOn("prepared-paper")], person).Value > HandData.Assess(HandData.Aid("by-hand"), [], person).Value);
    }

    [Fact]
    public void Tucking_paper_is_not_for_a_hand_that_cannot_handle_small_things()
    {
        var load = HandData.Assess(HandData.Aid("short-soft"), [], HandData.Usual with { Dexterity = Dexterity.Cannot }).Operations[0];
        Assert.Equal((OperationKind.Load, HandlingObstacle.NeedsFineHandling), (load.Kind, load.Obstacle));
    }

    [Fact]
    public void A_hand_cuff_takes_over_holding_but_not_loading_or_letting_go()
    {
        var person = HandData.Usual with { BestGrasp = Grasp.PressWithPalmOrFist };
        var bare = HandData.Assess(HandData.Aid("long-clamp"), [], person);
        var cuffed = HandData.Assess(HandData.Aid("long-clamp"), [HandData.AddOn("hand-cuff")], person);

        Assert.True(Demand(bare, OperationKind.Hold) > 10);
        Assert.Equal(0, Demand(cuffed, OperationKind.Hold));
        Assert.Equal(Demand(bare, OperationKind.Load), Demand(cuffed, OperationKind.Load));
        Assert.Equal(Demand(bare, OperationKind.Release), Demand(cuffed, OperationKind.Release));
    }

    [Fact]
    public void A_built_up_handle_scales_what_the_whole_hand_must_give()
    {
        var bare = HandData.Assess(HandData.Aid("tongs"), [], HandData.Usual);
        var thick = HandData.Assess(HandData.Aid("tongs"), [HandData.AddOn("built-up-handle")], HandData.Usual);

        Assert.Equal(0.8 * Demand(bare, OperationKind.Hold), Demand(thick, OperationKind.Hold), 1e-9);
        Assert.Equal(Demand(bare, OperationKind.Load), Demand(thick, OperationKind.Load));
    }

    [Fact]
    public void Pressing_against_the_thigh_counts_the_strongest_that_the_hand_has()
    {
        var person = HandData.Usual with { BestGrasp = Grasp.PressWithForearm };
        var free = Release(20, Grasp.FinePinch);
        Assert.Equal(HandlingObstacle.NoUsableGrasp, HandData.Assess(With(free), [], person).Score.Obstacle);

        var pressed = HandData.Assess(With(free with { AgainstTheBody = true }), [], person).Operations[0];
        Assert.Equal((true, Grasp.PressWithForearm, true), (pressed.Possible, pressed.GraspUsed, pressed.AgainstTheBody));
    }

    /// <summary>Bands of demand over acceptable force at 0.5, 0.8 and 1 (decision), each end and just beyond it.</summary>
    [Theory]
    [InlineData(0.50, EffortBand.Ok, true)]
    [InlineData(0.51, EffortBand.Caution, true)]
    [InlineData(0.80, EffortBand.Caution, true)]
    [InlineData(0.81, EffortBand.Poor, true)]
    [InlineData(1.00, EffortBand.Poor, true)]
    [InlineData(1.01, EffortBand.NotFeasible, false)]
    public void Effort_is_banded_and_too_much_is_not_possible(double ratio, EffortBand band, bool possible)
    {
        var person = HandData.Usual with { GripNewtons = 100 };
        double acceptable = HandData.Assess(With(Release(1, Grasp.WholeHand)), [], person).Operations[0].AcceptableNewtons;
        var operation = HandData.Assess(With(Release((ratio - 1e-9) * acceptable, Grasp.WholeHand)), [], person).Operations[0];

        Assert.Equal(ratio, operation.ShareOfAcceptable, 1e-6);
        Assert.Equal((band, possible), (operation.Band, operation.Possible));
        Assert.Equal(possible ? HandlingObstacle.None : HandlingObstacle.TooWeak, operation.Obstacle);
    }

    [Fact]
    public void A_slow_peg_test_stretches_fine_handling()
    {
        // Median of women at 67.5: between 18.99 s at 63.5 and 19.90 s at 68.5, that is 19.718 s.
        var capacity = HandData.Model.Capacity(HandData.Usual with { PegSeconds = 39.436 });
        Assert.Equal(2, capacity.Slowness, 1e-3);
    }

    [Theory]
    [InlineData(Grasp.WholeHand, 1)]
    [InlineData(Grasp.PressWithPalmOrFist, 5)]
    [InlineData(Grasp.PressWithForearm, 5)]
    public void A_hand_that_only_presses_cannot_handle_small_things(Grasp best, double slowness) =>
        Assert.Equal(slowness, HandData.Model.Capacity(HandData.Usual with { BestGrasp = best }).Slowness);

    [Fact]
    public void A_hand_without_grip_still_presses_with_its_arm()
    {
        var strength = HandData.Model.Capacity(HandData.Usual with { BestGrasp = Grasp.PressWithPalmOrFist, GripNewtons = 0 }).At(0.5);
        Assert.Equal(0, strength.Grip);

        // Women of 67.5 years, 25.0 kg: half of it is pressed with the palm, and 0.6 of that is left.
        Assert.Equal(25.0 * HandData.NewtonsInKilogram * 0.5 * 0.6, strength.Palm, 1e-6);
    }

    [Theory]
    [InlineData(Tremor.None, 15, 0.02, 0)]
    [InlineData(Tremor.Some, 18.75, 1 - (0.98 * 0.92), 0.01)]
    [InlineData(Tremor.Marked, 26.25, 1 - (0.98 * 0.7), 0.05)]
    public void Tremor_stretches_loading_and_spoils_it_more_than_a_press(Tremor tremor, double loadSeconds, double loadFails, double releaseFails)
    {
        // Fifteen seconds, 1.25 and 1.75 times longer; chances of 0.08 and 0.3 beside the 0.02 of a usual hand.
        var operations = HandData.Assess(HandData.Aid("long-clamp"), [], HandData.Usual with { Tremor = tremor }).Operations;
        var load = operations.Single(o => o.Kind == OperationKind.Load);

        Assert.Equal(loadSeconds, load.Seconds, 1e-9);
        Assert.Equal(loadFails, load.FailureChance, 1e-9);
        Assert.Equal(releaseFails, operations.Single(o => o.Kind == OperationKind.Release).FailureChance, 1e-9);
    }

    [Fact]
    public void Pinch_that_was_not_measured_follows_a_weak_grip_down_and_a_strong_one_not_up()
    {
        double grip = HandData.Model.Norms.Grip.For(67.5, Sex.Female).Curve.Median;
        double pinch = HandData.Model.Norms.Pinch(67.5, Sex.Female).Curve.Median;

        Assert.Equal(pinch / 2, Pinch(grip / 2), 1e-9);
        Assert.Equal(pinch, Pinch(2 * grip), 1e-9);

        static double Pinch(double newtons) => HandData.Model.Capacity(HandData.Usual with { GripNewtons = newtons }).Of(Grasp.FinePinch).Median;
    }

    [Fact]
    public void What_was_told_is_less_certain_than_what_was_seen()
    {
        var seen = HandData.Model.Capacity(HandData.Usual).Of(Grasp.WholeHand);
        var told = HandData.Model.Capacity(HandData.Usual with { GraspObtained = HowObtained.Reported }).Of(Grasp.WholeHand);

        Assert.Equal(seen.Median, told.Median, 1e-9);
        Assert.Equal(Math.Sqrt((seen.LogSpread * seen.LogSpread) + (0.15 * 0.15)), told.LogSpread, 0.01);
    }

    [Fact]
    public void Where_another_person_does_it_the_hand_has_nothing_to_do()
    {
        var assessment = HandData.Assess(HandData.Aid("helper-wipe"), [], HandData.Usual with { BestGrasp = Grasp.None });
        Assert.True(assessment.Possible);
        Assert.Equal(1, assessment.Value);
        Assert.Null(assessment.Limiting);
        Assert.Null(assessment.ReleaseIsAccessible);
    }

    [Fact]
    public void Every_number_of_the_hand_is_needed_and_missed_at_once()
    {
        var table = BuiltInNorms.HandNumbers();
        Assert.All(table.Ids, id => Assert.StartsWith("hand.", id, StringComparison.Ordinal));
        foreach (string id in table.Ids)
        {
            var without = new NumberTable(table.Ids.Where(i => i != id).Select(i => KeyValuePair.Create(i, table[i])));
            Assert.Throws<KeyNotFoundException>(() => new HandCoefficients(without));
        }
    }

    [Theory]
    [InlineData(0, 2, 2, 100)]
    [InlineData(70, 0, 2, 100)]
    [InlineData(70, 2, 3, 100)]
    [InlineData(70, 2, 2, -1)]
    [InlineData(70, 2, 2, double.NaN)]
    [InlineData(double.NaN, 2, 2, 100)]
    public void Facts_out_of_range_are_refused(double age, double cleans, int hands, double grip)
    {
        var person = HandData.Usual with { AgeYears = age, CleansPerDay = cleans, HandsFree = hands, GripNewtons = grip };
        Assert.Throws<ArgumentOutOfRangeException>(() => HandData.Model.Capacity(person));
    }

    private static double Demand(HandlingAssessment assessment, OperationKind kind) =>
        assessment.Operations.Single(o => o.Kind == kind).DemandNewtons;
}
