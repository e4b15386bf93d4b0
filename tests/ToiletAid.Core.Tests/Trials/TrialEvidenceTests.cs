using CsCheck;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using static ToiletAid.Core.Tests.Trials.TrialCases;

namespace ToiletAid.Core.Tests.Trials;

public sealed class TrialEvidenceTests
{
    private static readonly int Criteria = Enum.GetValues<Criterion>().Length;

    private static readonly double[] Predicted = [0.9, 0.9, 0.8, 0.9, 0.7, 0.6, 0.5, 0.4, 1];

    private static readonly Gen<TrialRun> Runs = Gen.Select(Gen.Bool, Gen.Int[0, 10], Gen.Int[0, 3], Gen.Int[-1, 10], Gen.Int[0, 3]).Select((real, level, clean, effort, problem) => Run(
        real ? RunKind.Real : RunKind.Dry,
        ((string?[])["06", "05", "04", "03", "02", "01", "07", "09", "10", "88", null])[level],
        real ? ((string?[])["clean", "traces", "not-clean", null])[clean] : null,
        effort < 0 ? null : effort,
        ((string[][])[[], ["hurt"], ["could-not-let-go"], ["tired", "steps-forgotten"]])[problem]));

    /// <summary>Worked by hand. The answers give a spread of 0.2, the model adds 0.25: variance 0.04 + 0.0625 = 0.1025, precision 9.7561. A real try has
    /// the error 0.15: precision 44.4444. Handling was predicted 0.9, and the release failed: (0.9 × 9.7561 + 0 × 44.4444) / 54.2005 = 0.1620.
    /// Another real try in which all went well: (8.7805 + 1 × 44.4444) / 98.6449 = 0.5396.</summary>
    [Fact]
    public void A_failed_release_and_then_a_good_try_as_worked_by_hand()
    {
        var plan = Plan("short-soft");

        Assert.Equal(0.1620, Believed(plan, Predicted, 0.04, Of(plan, FailedRelease(RunKind.Real)))[(int)Criterion.Handling], 0.00005);
        Assert.Equal(0.5396, Believed(plan, Predicted, 0.04, Of(plan, FailedRelease(RunKind.Real)), Of(plan, Good(RunKind.Real)))[(int)Criterion.Handling], 0.00005);
    }

    /// <summary>Worked by hand. No spread from the answers: precision 1 / 0.0625 = 16. A dry try has the error 0.2: precision 25. Upkeep is not seen in a
    /// try, so after a good one it stays as predicted, 0.4; after a failed one it is 0.4 × 16 / 41 = 0.1561; after both (0.4 × 16 + 0.4 × 25) / 66
    /// = 0.2485.</summary>
    [Fact]
    public void What_a_try_does_not_show_stays_as_predicted_as_worked_by_hand()
    {
        var plan = Plan("short-soft");

        Assert.Equal(0.4, Believed(plan, Predicted, 0, Of(plan, Good(RunKind.Dry)))[(int)Criterion.Upkeep], 1e-12);
        Assert.Equal(0.1561, Believed(plan, Predicted, 0, Of(plan, FailedRelease(RunKind.Dry)))[(int)Criterion.Upkeep], 0.00005);
        Assert.Equal(0.2485, Believed(plan, Predicted, 0, Of(plan, FailedRelease(RunKind.Dry), Good(RunKind.Dry)))[(int)Criterion.Upkeep], 0.00005);
    }

    /// <summary>However sure the prediction was, less than half of it is left.</summary>
    [Fact]
    public void A_failed_release_outweighs_what_was_predicted() =>
        Gen.Select(Gen.Double[0, 0.25], Gen.Double[0.01, 1].Array[Criteria], Gen.Bool).Sample((variance, predicted, real) =>
        {
            var plan = Plan("long-clamp");
            double[] believed = Believed(plan, predicted, variance, Of(plan, FailedRelease(real ? RunKind.Real : RunKind.Dry)));
            Assert.All(believed.Zip(predicted), p => Assert.True(p.First < p.Second / 2));
        });

    [Fact]
    public void A_failed_try_never_raises_a_plan_whatever_was_tried_before() =>
        Gen.Select(Gen.Double[0, 0.25], Gen.Double[0, 1].Array[Criteria], Runs.Array[0, 4], Gen.Bool).Sample((variance, predicted, earlier, real) =>
        {
            var plan = Plan("long-clamp");
            double[] before = Believed(plan, predicted, variance, [.. earlier.Select(r => Of(plan, r))]);
            double[] after = Believed(plan, predicted, variance, [.. earlier.Select(r => Of(plan, r)), Of(plan, FailedRelease(real ? RunKind.Real : RunKind.Dry))]);
            Assert.All(before.Zip(after), p => Assert.True(p.Second <= p.First + 1e-12));
        });

    [Fact]
    public void A_good_try_never_lowers_a_plan_whatever_was_tried_before() =>
        Gen.Select(Gen.Double[0, 0.25], Gen.Double[0, 1].Array[Criteria], Runs.Array[0, 4], Gen.Bool).Sample((variance, predicted, earlier, real) =>
        {
            var plan = Plan("long-clamp");
            double[] before = Believed(plan, predicted, variance, [.. earlier.Select(r => Of(plan, r))]);
            double[] after = Believed(plan, predicted, variance, [.. earlier.Select(r => Of(plan, r)), Of(plan, Good(real ? RunKind.Real : RunKind.Dry))]);
            Assert.All(before.Zip(after), p => Assert.True(p.Second >= p.First - 1e-12));
        });

    [Fact]
    public void Values_stay_between_nothing_and_everything() =>
        Gen.Select(Gen.Double[0, 0.25], Gen.Double[0, 1].Array[Criteria], Runs.Array[1, 6]).Sample((variance, predicted, runs) =>
        {
            var plan = Plan("tongs");
            Assert.All(Believed(plan, predicted, variance, [.. runs.Select(r => Of(plan, r))]), v => Assert.InRange(v, 0, 1));
        });

    [Fact]
    public void A_failed_release_speaks_for_every_plan_with_that_method_and_for_no_other()
    {
        var failed = Of(Plan("short-soft"), FailedRelease(RunKind.Real));

        Assert.True(Falls(Plan("short-soft"), failed));
        Assert.True(Falls(Plan("short-soft", addOns: "prepared-paper"), failed));
        Assert.True(Falls(Plan("short-soft", approach: Approach.Front), failed));
        Assert.True(Falls(Plan("squeeze-wash", "short-soft"), failed));
        Assert.False(Falls(Plan("tongs"), failed));
        Assert.False(Falls(Plan("squeeze-wash", "tongs"), failed));
    }

    [Fact]
    public void What_could_not_be_held_may_be_held_with_a_cuff()
    {
        var failed = Of(Plan("long-clamp"), Run(RunKind.Dry, "03", null, null, "could-not-hold"));

        Assert.True(Falls(Plan("long-clamp"), failed));
        Assert.False(Falls(Plan("long-clamp", addOns: "hand-cuff"), failed));
        Assert.True(Falls(Plan("long-clamp"), Of(Plan("long-clamp", addOns: "hand-cuff"), Run(RunKind.Dry, "03", null, null, "could-not-hold"))));
    }

    [Fact]
    public void What_did_not_reach_may_reach_from_another_side()
    {
        var failed = Of(Plan("tongs"), Run(RunKind.Real, "03", null, null, "could-not-reach"));

        Assert.True(Falls(Plan("tongs"), failed));
        Assert.False(Falls(Plan("tongs", approach: Approach.Front), failed));
        Assert.False(Falls(Plan("tongs", posture: Posture.SeatedLeaningForward), failed));
    }

    [Fact]
    public void What_was_not_tried_and_what_the_catalogue_lacks_say_nothing()
    {
        Assert.Equal(Predicted, Believed(Plan("tongs"), Predicted, 0.01, Of(Plan("tongs"), Run(RunKind.Real, "88"))));
        Assert.Null(TrialEvidence.Of(
            Advising.Cases.Knowledge,
            [new(new(2026, 3, 16), new() { Plan = new("ward-clamp", [], null, Approach.Behind, Posture.Seated), Runs = [FailedRelease(RunKind.Real)] })],
            _ => new double[Criteria]));
    }

    [Fact]
    public void A_helper_who_does_all_does_not_make_the_helper_fail()
    {
        var helper = Plan("helper-wipe", approach: null);

        Assert.False(Falls(helper, Of(helper, Run(RunKind.Real, "01", "clean"))));
        Assert.True(Falls(Plan("tongs"), Of(Plan("tongs"), Run(RunKind.Real, "01", "clean"))));
    }

    [Theory]
    [InlineData(3, 1)]
    [InlineData(4, 0.5)]
    [InlineData(6, 0.5)]
    [InlineData(7, 0.25)]
    public void Effort_shows_how_well_the_hand_does(int effort, double handling) =>
        Assert.Equal(handling, RunFindings.Of(Advising.Cases.Knowledge.Trials, Advising.Cases.Knowledge.Evidence, Run(RunKind.Dry, "06", null, effort), byHelper: false).Seen[(int)Criterion.Handling]);

    private static bool Falls(Core.Plans.Plan plan, PastTrial trial) => Believed(plan, Predicted, 0.01, trial).Zip(Predicted).All(p => p.First < p.Second);
}
