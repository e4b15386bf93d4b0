using System.Collections.Immutable;
using ToiletAid.Core.Explaining;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAid.Core.Quantities;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Explaining;

public sealed class AnswerChangeTests
{
    private static Answers Joint(string part, double amount, string unit) => Cases.Able.With(
        QuestionIds.Joints, new(new AnswerValue.Parts(ImmutableSortedDictionary<string, double>.Empty.Add(part, amount), unit), HowObtained.Measured));

    private static double[] Moved(Answers known, string question, string part = "") =>
    [
        .. AnswerChanges.Of(Cases.Knowledge, known).Where(c => c.Question.Id == question)
            .Select(c => c.To is AnswerValue.Parts p ? p.Amounts[part] : ((AnswerValue.Number)c.To).Amount),
    ];

    /// <summary>Whoever is told of an answer must be able to give it: the ranges of the questions hold for what is tried.</summary>
    [Theory]
    [InlineData("shoulder-flexion", 175, "deg", new[] { 160.0, 180 })]
    [InlineData("shoulder-flexion", 90, "deg", new[] { 75.0, 105 })]
    [InlineData("shoulder-extension", 0, "deg", new[] { 15.0 })]
    public void A_joint_is_moved_by_its_error_and_no_further_than_the_question_takes(string part, double amount, string unit, double[] moved) =>
        Assert.Equal(moved, Moved(Joint(part, amount, unit), "joints", part));

    /// <summary>15 degrees are 0.2618 radians, by the definition of the radian.</summary>
    [Fact]
    public void The_error_of_a_joint_is_the_same_in_radians()
    {
        double[] moved = Moved(Joint("internal-rotation", 0.5, "rad"), "joints", "internal-rotation");

        Assert.Equal(2, moved.Length);
        Assert.Equal(0.5 - (15 * Math.PI / 180), moved[0], 1e-6);
        Assert.Equal(0.5 + (15 * Math.PI / 180), moved[1], 1e-6);
    }

    [Theory]
    [InlineData("mass", 30.0, "kg", new[] { 32.0 })]
    [InlineData("mass", 249.0, "kg", new[] { 247.0, 250 })]
    [InlineData("grip", 25.0, "kgf", new[] { 19.0, 31 })]
    [InlineData("pinch", 0.0, "N", new[] { 12.0 })]
    public void A_number_is_moved_by_its_error_and_no_further_than_the_question_takes(string question, double amount, string unit, double[] moved) =>
        Assert.Equal(moved, Moved(Cases.Able.Choose(question, amount, unit), question));

    [Theory]
    [InlineData("mass", 67.0)]
    [InlineData("mass", 549.0)]
    [InlineData("grip", 195.0)]
    public void The_range_of_a_question_holds_in_every_unit(string question, double amount)
    {
        NumberSpec spec = Cases.Knowledge.Questions[new(question)].Number!;
        Unit first = Units.Find(spec.Units[0])!, second = Units.Find(spec.Units[1])!;

        Assert.All(
            Moved(Cases.Able.Choose(question, amount, second.Symbol), question),
            m => Assert.InRange(first.FromSi(second.ToSi(m)), spec.Low - 1e-9, spec.High + 1e-9));
    }
}
