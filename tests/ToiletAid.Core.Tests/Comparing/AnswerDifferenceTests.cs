using System.Collections.Immutable;
using CsCheck;
using ToiletAid.Core.Comparing;
using ToiletAid.Core.Person;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Comparing;

public sealed class AnswerDifferenceTests
{
    [Fact]
    public void The_same_answers_have_no_difference() => Assert.Empty(Of(Cases.Able, Cases.Able));

    [Fact]
    public void Another_unit_and_another_order_are_no_difference()
    {
        var one = Cases.Able.Choose("stature", 172, "cm").Mark("also", "urine", "menstrual-blood");
        var other = Cases.Able.Choose("stature", 1.72, "m").Mark("also", "menstrual-blood", "urine");

        Assert.Empty(Of(one, other));
    }

    [Fact]
    public void Not_known_and_not_asked_are_the_same() =>
        Assert.Empty(Of(Cases.Able.With(QuestionIds.Tremor, new(new AnswerValue.NotKnown(), null)), Cases.Able.Without(QuestionIds.Tremor)));

    [Theory]
    [InlineData("reach-behind", "waist-or-above", "tailbone", Verdict.WithinError, VerdictReason.FewSteps)]
    [InlineData("reach-behind", "waist-or-above", "the-cleft", Verdict.Real, VerdictReason.ManySteps)]
    [InlineData("deep", "no", "yes", Verdict.Unknown, VerdictReason.NoLimit)]
    [InlineData("water", "basin-in-reach", "none", Verdict.Real, VerdictReason.Stated)]
    [InlineData("method", "dry", "wet", Verdict.Real, VerdictReason.Stated)]
    public void A_choice_is_judged_by_what_looking_and_asking_may_be_wrong_by(string question, string from, string to, Verdict verdict, VerdictReason reason)
    {
        var d = Assert.Single(Of(Cases.Able.Choose(question, from), Cases.Able.Choose(question, to)));

        Assert.Equal((verdict, reason), (d.Verdict, d.Reason));
    }

    [Fact]
    public void An_answer_at_one_visit_only_cannot_be_told()
    {
        var d = Assert.Single(Of(Cases.Able.Choose("grip", 20, "kgf"), Cases.Able));

        Assert.Equal((Verdict.Unknown, VerdictReason.OneVisitOnly), (d.Verdict, d.Reason));
        Assert.Null(d.To);
    }

    [Fact]
    public void The_same_answer_found_in_another_way_is_no_change()
    {
        var reported = Cases.Able.With(QuestionIds.Grasp, Cases.Able[QuestionIds.Grasp]! with { How = HowObtained.Reported });

        Assert.Equal(VerdictReason.OtherWay, Assert.Single(Of(Cases.Able, reported)).Reason);
    }

    [Fact]
    public void Each_joint_is_judged_alone()
    {
        var found = Of(Joints(("shoulder-extension", 10), ("elbow-flexion", 130), ("wrist-flexion", 60)), Joints(("shoulder-extension", 50), ("elbow-flexion", 134)));

        Assert.Equal(
            [("shoulder-extension", Verdict.Real), ("elbow-flexion", Verdict.WithinError), ("wrist-flexion", Verdict.Unknown)],
            found.Select(d => (d.Part!.Id, d.Verdict)));
    }

    /// <summary>A larger difference is never judged to be less of a change.</summary>
    [Fact]
    public void A_larger_difference_is_never_less_real() =>
        Gen.Select(Gen.Int[0, Cases.Knowledge.Changes.Length - 1].Select(i => Cases.Knowledge.Changes[i]), Gen.Double[0.1, 100], Gen.Double[0, 50], Gen.Double[0, 50], Gen.Int[0, 2].Select(i => i == 0 ? (bool?)null : i == 1))
            .Sample((rule, first, small, more, sameRater) =>
                Assert.True(Order(AnswerDifferences.Judge(rule, first, first + small, sameRater).Verdict) <= Order(AnswerDifferences.Judge(rule, first, first + small + more, sameRater).Verdict)));

    private static int Order(Verdict verdict) => verdict switch { Verdict.WithinError => 0, Verdict.Unknown => 1, _ => 2 };

    private static ImmutableArray<AnswerDifference> Of(Answers from, Answers to) => AnswerDifferences.Of(Cases.Knowledge, from, to, null);

    private static Answers Joints(params (string Part, double Degrees)[] joints) => Cases.Able.With(
        QuestionIds.Joints,
        new(new AnswerValue.Parts(joints.ToImmutableSortedDictionary(j => j.Part, j => j.Degrees), "deg"), HowObtained.Measured));
}
