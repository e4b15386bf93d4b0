using ToiletAid.Core.Advising;
using ToiletAid.Core.Person;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Trials;

/// <summary>Trials in the whole ranking.</summary>
public sealed class TrialRankingTests
{
    /// <summary>Somebody with eight kinds to choose from and none far ahead.</summary>
    private static readonly Answers Stiff = Cases.Able.Choose("reach-behind", "outer-buttock").Choose("grasp", "whole-hand").Choose("carry", "sometimes");

    [Fact]
    public void A_failed_try_lowers_the_plan_and_moves_no_untouched_kind_behind_it()
    {
        var before = Stiff.Advice();
        foreach (var tried in before.Ranked.Take(4))
        {
            var after = Stiff.With([TrialCases.Of(tried.Plan, TrialCases.FailedRelease(RunKind.Real))]).Advice();
            var now = after.Place(tried.Plan.Aid.Id);
            Assert.True(now.Value < tried.Value);
            Assert.True(now.FirstShare <= tried.FirstShare);

            // Kinds that the try says nothing of keep their value; those before it stay before it.
            foreach (var other in before.Ranked.Where(r => r.Plan.Methods.All(m => m.Id != tried.Plan.Aid.Id)))
            {
                Assert.Equal(other.Value, after.Place(other.Plan.Aid.Id).Value, 1e-12);
                Assert.True(other.Rank > tried.Rank || after.Place(other.Plan.Aid.Id).Rank < now.Rank);
            }
        }
    }

    [Fact]
    public void A_good_try_never_lowers_the_plan_and_a_better_place_can_follow()
    {
        var before = Stiff.Advice();
        foreach (var tried in before.Ranked.Take(4))
        {
            var now = Stiff.With([TrialCases.Of(tried.Plan, TrialCases.Good(RunKind.Dry), TrialCases.Good(RunKind.Real))]).Advice().Place(tried.Plan.Aid.Id);
            Assert.True(now.Value >= tried.Value);
            Assert.True(now.Rank <= tried.Rank);
            Assert.True(now.FirstShare >= tried.FirstShare);
        }
    }

    [Fact]
    public void A_failed_release_of_the_first_plan_puts_another_first()
    {
        var first = Stiff.Advice().Ranked[0];

        Assert.NotEqual(first.Plan.Aid.Id, Stiff.With([TrialCases.Of(first.Plan, TrialCases.FailedRelease(RunKind.Real))]).Advice().Ranked[0].Plan.Aid.Id);
    }

    [Theory]
    [InlineData("reclined")]
    [InlineData("standing")]
    [InlineData("side-lying")]
    public void A_trial_counts_when_the_person_has_taken_another_posture_since(string posture)
    {
        var tried = Stiff.Advice().Place("long-clamp");
        var now = Stiff.Choose("posture", posture);

        double untried = now.Advice().Place("long-clamp").Value, failed = now.With([TrialCases.Of(tried.Plan, TrialCases.FailedRelease(RunKind.Real))]).Advice().Place("long-clamp").Value;

        Assert.True(failed < untried);
    }

    [Fact]
    public void A_trial_lasts_through_later_answers()
    {
        var trial = TrialCases.Of(Stiff.Advice().Ranked[0].Plan, TrialCases.FailedRelease(RunKind.Real));

        Assert.Equal([trial], Stiff.With([trial]).Choose("tremor", "some").Without(QuestionIds.Stool).Trials);
    }

    [Fact]
    public void A_visit_with_a_trial_only_keeps_the_answers_of_the_one_before()
    {
        var trial = TrialCases.Of(TrialCases.Plan("tongs"), TrialCases.Good(RunKind.Real)).Trial;
        var answered = new Session(new(2026, 3, 9), Depth.Full, Stiff);
        var profile = new Profile("K-014", [answered, new(new(2026, 3, 16), Depth.Full, Answers.None) { Trials = [trial] }]);

        Assert.Equal(answered.Date, profile.Latest.Date);
        Assert.Equal("outer-buttock", profile.Latest.Answers.Choice((QuestionId)QuestionIds.ReachBehind));
        Assert.Equal([new(new(2026, 3, 16), trial)], profile.Latest.Answers.Trials);
        Assert.Empty(profile.KnownAt(0).Answers.Trials);
    }

    [Fact]
    public void The_spread_of_a_plan_is_that_of_its_drawn_values()
    {
        var advisor = new Advisor(Cases.Knowledge, Cases.Quick);
        var (appraiser, _) = advisor.Appraise(Stiff.Without(QuestionIds.Tremor), Cases.Quick.ValueDraws);

        double[] spread = PlanSpread.Of(Cases.Knowledge, appraiser, TrialCases.Plan("long-clamp"), Cases.Quick.Seed, Cases.Quick.ValueDraws);

        Assert.All(spread, v => Assert.InRange(v, 0, 0.25));
        Assert.Contains(spread, v => v > 0);
    }

    /// <summary>Codes and answers of item GG0130C typed in again from the MDS 3.0 questionnaire in HL7/fhir-pacio-pfe at 43c8d4a.</summary>
    [Theory]
    [InlineData("06", "LA27993-7")]
    [InlineData("05", "LA27994-5")]
    [InlineData("04", "LA28870-6")]
    [InlineData("03", "LA27996-0")]
    [InlineData("02", "LA11759-0")]
    [InlineData("01", "LA27998-6")]
    [InlineData("07", "LA27999-4")]
    [InlineData("09", "LA28871-4")]
    [InlineData("10", "LA28227-9")]
    [InlineData("88", "LA26735-3")]
    public void Levels_have_the_published_codes(string code, string loinc)
    {
        var level = Cases.Knowledge.Trials.Levels.Single(l => l.Id == code);

        Assert.Equal(loinc, level.Loinc);
        Assert.Equal(code is "07" or "09" or "10" or "88", level.NotTried);
    }

    [Fact]
    public void Every_finding_counts_for_something_fails_or_is_only_noted()
    {
        var trials = Cases.Knowledge.Trials;
        Assert.Equal(10, trials.Levels.Length);
        Assert.All(
            trials.Levels.Concat(trials.Cleanliness).Concat(trials.Problems).Where(f => f.Id != "other"),
            f => Assert.True(f.NotTried || f.Fails is not null || !f.Counts.IsEmpty));
        Assert.All(trials.Problems.SelectMany(p => p.Counts), c => Assert.InRange(c.Value.Value, c.Value.Low, c.Value.High));
    }
}
