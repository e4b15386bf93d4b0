using System.Collections.Immutable;
using ToiletAid.Core.Outcomes;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Tests.Advising;
using ToiletAid.Core.Tests.Trials;

namespace ToiletAid.Core.Tests.Outcomes;

public sealed class OutcomeTallyTests
{
    private static readonly TrialPrediction Said = TrialPrediction.Of([0.8, 0.7, 0.6, 0.9, 0.9, 0.5, 0.5, 0.5, 1]);

    [Fact]
    public void Only_the_first_try_of_a_kind_counts_and_its_real_run_decides()
    {
        var plan = TriedPlan.Of(TrialCases.Plan("long-clamp"));
        var other = TriedPlan.Of(TrialCases.Plan("tongs"));
        var person = Of(
            [Trial(plan, "01", TrialCases.Good(RunKind.Dry), TrialCases.FailedRelease(RunKind.Real))],
            [Trial(plan, "03", TrialCases.Good(RunKind.Real)), Trial(other, null, TrialCases.Good(RunKind.Dry))]);

        Assert.Equal(["long-clamp", "tongs"], person.Tries.Select(t => t.Aid));
        Assert.Equal([true, false], person.Tries.Select(t => t.Failed));
        Assert.Equal([RunKind.Real, RunKind.Dry], person.Tries.Select(t => t.Decided));
        Assert.Equal(["could-not-let-go"], person.Tries[0].Problems);
        Assert.Equal(("01", "06", 7), (person.Before, person.After, person.DaysFollowed));
    }

    [Fact]
    public void A_prediction_that_is_not_noted_is_made_from_what_was_known_before()
    {
        var asked = new List<Answers>();
        var profile = Profile([Trial(TriedPlan.Of(TrialCases.Plan("long-clamp")), null, TrialCases.Good(RunKind.Dry)), Trial(TriedPlan.Of(TrialCases.Plan("tongs")), null, TrialCases.Good(RunKind.Dry)) with { Predicted = null }]);
        PersonOutcome.Of(Cases.Knowledge, profile, (known, _) =>
        {
            asked.Add(known);
            return Said;
        });

        // The trial that was noted before it is known then, the trial itself is not.
        Assert.Equal("long-clamp", Assert.Single(Assert.Single(asked).Trials).Trial.Plan.Aid);
    }

    [Fact]
    public void A_plan_that_the_catalogue_does_not_hold_is_counted_as_unknown()
    {
        var person = Of([Trial(new("somebody-s-own", [], null, null, Posture.Seated), null, TrialCases.Good(RunKind.Dry))]);

        Assert.Empty(person.Tries);
        Assert.Equal(1, person.Unknown);
    }

    [Fact]
    public void What_was_not_tried_is_no_try() =>
        Assert.Empty(Of([Trial(TriedPlan.Of(TrialCases.Plan("tongs")), null, TrialCases.Run(RunKind.Real, "88"))]).Tries);

    [Fact]
    public void Counts_add_up_over_kinds_and_bands()
    {
        var tally = Clinic.Tally([.. Clinic.Of("tongs", 10, 3, 0.75), .. Clinic.Of("long-clamp", 6, 1, 0.95), .. Clinic.Of("bottle", 4, 4, 1)]);

        Assert.Equal((20, 8), (tally.All.People, tally.All.Failed));
        Assert.Equal(2.5 + 0.3, tally.All.ExpectedToFail, 1e-9);
        Assert.Equal((10, 3), (tally.All.Between(0.7, 0.8).Count, tally.All.Between(0.7, 0.8).Failed));
        Assert.Equal((10, 5), (tally.All.Between(0.9, 1).Count, tally.All.Between(0.9, 1).Failed));
        Assert.Equal(8, tally.All.Problems["could-not-hold"]);
        Assert.Equal(20, tally.At(tally.Levels.IndexOf("03"), tally.Levels.IndexOf("05")));
        Assert.Equal((20, 20), (tally.WithGoal, tally.GoalReached));
    }

    [Fact]
    public void An_answer_that_goes_with_failures_is_found_and_chance_is_not()
    {
        var marked = Answers.None.With(QuestionIds.Tremor, new(new AnswerValue.Choice("marked"), HowObtained.Observed));
        var none = Answers.None.With(QuestionIds.Tremor, new(new AnswerValue.Choice("none"), HowObtained.Observed));
        var signs = Clinic.Tally([.. Tries(marked, 30, 20), .. Tries(none, 60, 12)]).Foresight.Signs(3, out int looks);

        Assert.Equal(("tremor", "marked"), (signs[0].Question, signs[0].Option));
        Assert.Equal((30, 20), (signs[0].People, signs[0].Failed));
        Assert.True(signs[0].ByChance < 0.05, $"{signs[0].ByChance}");
        Assert.True(looks >= 2);

        var evenly = Clinic.Tally([.. Tries(marked, 30, 6), .. Tries(none, 60, 12)]).Foresight.Signs(3, out _);
        Assert.All(evenly, s => Assert.True(s.ByChance > 0.5));

        static IEnumerable<FirstTry> Tries(Answers known, int people, int failed) => Enumerable.Range(0, people).Select(i => Clinic.Try("tongs", 0.8, i < failed, known: known));
    }

    [Fact]
    public void A_number_that_goes_with_failures_is_found_with_its_cut()
    {
        var signs = Clinic.Tally(Enumerable.Range(0, 120).Select(i =>
        {
            double grip = 4 + (i % 40);
            return Clinic.Try("tongs", 0.8, grip < 15 || i % 5 == 0, known: Answers.None.With(QuestionIds.Grip, new(new AnswerValue.Number(grip, "kgf"), HowObtained.Measured)));
        })).Foresight.Signs(1, out _);

        Assert.Equal("grip", signs[0].Question);
        Assert.InRange(signs[0].Below!.Value, 8, 25);
    }

    [Fact]
    public void The_order_in_which_people_come_changes_no_count()
    {
        FirstTry[] tries = [.. Clinic.Of("tongs", 10, 3, 0.75), .. Clinic.Of("long-clamp", 6, 1, 0.95)];
        var (one, other) = (Clinic.Tally(tries), Clinic.Tally(tries.Reverse()));

        Assert.Equal(one.All.Failed, other.All.Failed);
        Assert.Equal(one.All.ExpectedToFail, other.All.ExpectedToFail, 1e-12);
    }

    private static Trial Trial(TriedPlan plan, string? before, params TrialRun[] runs) => new() { Plan = plan, Predicted = Said, Before = before, Runs = [.. runs] };

    private static PersonOutcome Of(params ImmutableArray<Trial>[] visits) =>
        PersonOutcome.Of(Cases.Knowledge, Profile(visits), (_, _) => throw new InvalidOperationException("the prediction is noted"));

    private static Profile Profile(params ImmutableArray<Trial>[] visits)
    {
        var answers = Answers.None.With(QuestionIds.Tremor, new(new AnswerValue.Choice("none"), HowObtained.Observed));
        return new("K-014", [.. visits.Select((trials, i) => new Session(new DateOnly(2026, 3, 2).AddDays(7 * i), Depth.Quick, i == 0 ? answers : Answers.None) { Trials = trials })]);
    }
}
