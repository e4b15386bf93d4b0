using ToiletAid.App.Files;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Simulation;

namespace ToiletAid.Core.Tests.Advising;

public sealed class GripDependenceTests
{
    private static readonly KnowledgeBase Knowledge = BuiltIn.Knowledge();
    private static readonly Advisor Advisor = new(Knowledge, new());

    [Fact]
    public void A_measured_grip_leaves_nothing_to_say() =>
        Assert.Null(GripDependence.Of(Knowledge, Advisor, Answers.None.With(QuestionIds.Grip, new(new AnswerValue.Number(20, "kgf"), HowObtained.Measured))));

    [Theory]
    [InlineData("press-with-palm-or-fist")]
    [InlineData("press-with-forearm")]
    [InlineData("none")]
    public void A_hand_that_does_not_grip_leaves_nothing_to_say(string grasp) =>
        Assert.Null(GripDependence.Of(Knowledge, Advisor, Answers.None.With(QuestionIds.Grasp, new(new AnswerValue.Choice(grasp), HowObtained.Observed))));

    [Fact]
    public void A_red_flag_leaves_nothing_to_say() =>
        Assert.Null(GripDependence.Of(Knowledge, Advisor, Answers.None.With(QuestionIds.RedFlags, new(new AnswerValue.Many(["new-severe-pain"]), HowObtained.Reported))));

    [Fact]
    public void Weak_and_strong_stand_for_the_tenth_and_ninetieth_percentile_and_name_what_the_whole_ranking_puts_first()
    {
        var known = Answers.None
            .With(QuestionIds.Age, new(new AnswerValue.Number(72, "years"), HowObtained.Reported))
            .With(QuestionIds.Sex, new(new AnswerValue.Choice("female"), HowObtained.Reported))
            .With(QuestionIds.Grasp, new(new AnswerValue.Choice("fine-pinch"), HowObtained.Observed));

        var grip = GripDependence.Of(Knowledge, Advisor, known)!;

        // Tomkinson et al. 2025: women of 70 to 74, 15.5 and 31.8 kg; one tenth of the way from 65 to 69, 16.6 and 33.4 kg.
        Assert.Equal(((0.9 * 15.5) + (0.1 * 16.6)) * 9.80665, grip.WeakNewtons, 1e-6);
        Assert.Equal(((0.9 * 31.8) + (0.1 * 33.4)) * 9.80665, grip.StrongNewtons, 1e-6);
        foreach (var (newtons, plan) in new[] { (grip.WeakNewtons, grip.WithWeak), (grip.StrongNewtons, grip.WithStrong) })
        {
            var measured = known.With(QuestionIds.Grip, new(new AnswerValue.Number(newtons, "N"), HowObtained.Measured));
            Assert.Equal(Advisor.Advise(measured).Ranked[0].Plan.Key, plan!.Key);
        }
    }

    /// <summary>What does not depend on grip is taken over from the ranking without it; another advisor, who works out everything anew, must come to the same.</summary>
    [Fact]
    public void What_is_said_of_a_weak_and_a_strong_grip_is_what_a_ranking_from_scratch_comes_to()
    {
        var simulator = new PeopleSimulator(Knowledge, BuiltIn.People());
        var advisor = new Advisor(Knowledge, new() { WeightDraws = 500 });
        int differ = 0;
        foreach (var known in Enumerable.Range(0, 150).Select(n => simulator.Make(52, n, Depth.Quick, new(2026, 1, 1)).Latest.Answers.Without(QuestionIds.Grip)))
        {
            if (GripDependence.Of(Knowledge, advisor, known) is not { } grip)
            {
                continue;
            }

            foreach (var (newtons, plan) in new[] { (grip.WeakNewtons, grip.WithWeak), (grip.StrongNewtons, grip.WithStrong) })
            {
                var anew = new Advisor(Knowledge, new() { WeightDraws = 500, AsksGrip = false });
                var measured = known.With(QuestionIds.Grip, new(new AnswerValue.Number(newtons, "N"), HowObtained.Measured));
                Assert.Equal(anew.Advise(measured).Ranked.FirstOrDefault()?.Plan.Key, plan?.Key);
            }

            differ += grip.WithWeak?.Key != grip.WithStrong?.Key ? 1 : 0;
        }

        Assert.InRange(differ, 1, 150);
    }
}
