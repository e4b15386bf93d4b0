using ToiletAid.App.Files;
using ToiletAid.Core.Hand;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Tests.Interview;

public sealed class QuestionDataTests
{
    private static readonly QuestionSet Questions = BuiltIn.Questions();

    [Fact]
    public void Ids_never_change_silently() => Assert.Equal(
        [
            "age", "also", "bleeding", "budget", "carry", "cleans", "conditions", "deep", "dexterity", "drain", "feeling", "feeling-since", "fixtures", "grasp", "grip",
            "hand", "hands-free", "helper", "infection", "joints", "lean", "look", "mass", "method", "noise", "paper-touch", "pinch", "place",
            "posture", "precaution-side", "precautions", "priorities", "reach-behind", "reach-front", "red-flags", "sex", "sight", "skin", "socket",
            "sore-when-wiped", "stature", "steps", "stool", "tremor", "water",
        ],
        Questions.All.Select(q => q.Id.Text).Order(StringComparer.Ordinal));

    [Fact]
    public void Options_of_typed_questions_are_the_words_of_their_types()
    {
        Assert.Equal(Words.All<Sex>(), Options("sex"));
        Assert.Equal(Words.All<WorkingHand>(), Options("hand"));
        Assert.Equal(Words.All<Posture>(), Options("posture"));
        Assert.Equal(Words.All<Lean>(), Options("lean"));
        Assert.Equal(Words.All<LandmarkBehind>(), Options("reach-behind"));
        Assert.Equal(Words.All<LandmarkFront>(), Options("reach-front"));
        Assert.Equal(Words.All<Grasp>(), Options("grasp"));
        Assert.Equal(Words.All<Dexterity>(), Options("dexterity"));
        Assert.Equal(Words.All<Tremor>(), Options("tremor"));
        Assert.Equal(Words.All<Criterion>(), Options("priorities"));
    }

    [Fact]
    public void Every_question_says_how_to_find_out_and_why_in_whole_sentences() => Assert.All(Questions.All, q =>
    {
        Assert.EndsWith("?", q.Prompt, StringComparison.Ordinal);
        Assert.EndsWith(".", q.Observe, StringComparison.Ordinal);
        Assert.EndsWith(".", q.Why, StringComparison.Ordinal);
    });

    [Fact]
    public void Expected_shares_of_a_choice_add_up_to_one() => Assert.All(
        Questions.All.Where(q => q.Kind == QuestionKind.Choice), q => Assert.Equal(1, q.Options.Sum(o => o.Share), 9));

    [Fact]
    public void What_is_assumed_is_an_option_or_a_number_in_range() => Assert.All(
        Questions.All.Where(q => q.Kind == QuestionKind.Choice && q.Assume is not null), q => Assert.NotNull(q.FindOption(q.Assume!)));

    [Fact]
    public void A_filled_set_of_answers_has_no_unknown_choice()
    {
        var filled = Assumptions.Fill(Questions, Answers.None);
        var drawn = Assumptions.Draw(Questions, Answers.None, 1, 7);

        Assert.All(Questions.All.Where(q => q.Kind == QuestionKind.Choice), q =>
        {
            Assert.True(filled.Knows(q.Id));
            Assert.True(drawn.Knows(q.Id));
        });
        Assert.IsType<HandFacts>(AnswerMapping.Hand(filled));
    }

    [Fact]
    public void Depths_differ_in_what_is_used_and_not_in_what_may_be_asked()
    {
        Assert.Equal(OpenQuestions.Relevant(Questions, Depth.Full, Answers.None), OpenQuestions.Relevant(Questions, Depth.Quick, Answers.None));
        Assert.Equal(["joints", "grip", "pinch"], OpenQuestions.Relevant(Questions, Depth.Measured, Answers.None).Except(OpenQuestions.Relevant(Questions, Depth.Full, Answers.None)).Select(q => q.Id.Text));
    }

    [Fact]
    public void A_question_is_left_out_when_an_earlier_answer_settles_it()
    {
        var inBed = Answers.None.With(QuestionIds.Place, new(new AnswerValue.Choice("bed"), HowObtained.Reported));

        Assert.False(OpenQuestions.IsRelevant(Questions[QuestionIds.Carry], inBed));
        Assert.True(OpenQuestions.IsRelevant(Questions[QuestionIds.Carry], Answers.None));
        Assert.True(OpenQuestions.IsRelevant(Questions[QuestionIds.Carry], Answers.None.With(QuestionIds.Place, new(new AnswerValue.NotKnown(), null))));
    }

    /// <summary>The tables hold no children, so a child is turned away, with whom to ask; a slip of the key is not.</summary>
    [Theory]
    [InlineData("9", true)]
    [InlineData("15", true)]
    [InlineData("-4", false)]
    [InlineData("740", false)]
    public void A_child_is_turned_away_in_words(string typed, bool child)
    {
        var spec = Questions[QuestionIds.Age].Number!;
        var asked = App.Typed.QuantityQuestion.Of("age", spec.Low, spec.High, spec.Units.AsSpan()) with { IsCount = spec.Whole, Below = spec.Below };

        Assert.Equal(child, App.Typed.QuantityReader.Read(typed, asked).Refusal!.Contains("For a child ask", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("infection")]
    [InlineData("bleeding")]
    [InlineData("precautions")]
    [InlineData("conditions")]
    [InlineData("red-flags")]
    public void What_safety_hangs_on_is_asked_in_every_depth(string question) =>
        Assert.True(Questions[new(question)] is { Safety: true, Depths.Length: 3 });

    private static IEnumerable<string> Options(string id) => Questions[new(id)].Options.Select(o => o.Id);
}
