using ToiletAid.Core.Asking;
using ToiletAid.Core.Person;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Asking;

public sealed class BuildTests
{
    /// <summary>Likely people share one build until it is known, so that the worth of knowing it cannot be seen; but hips decide whether what reaches for
    /// half of such people reaches for this one.</summary>
    [Theory]
    [InlineData("not-past-the-hip", "not-past-mid-thigh", true)]
    [InlineData("waist-or-above", "past-the-groin", false)]
    public void Who_may_not_get_there_with_the_first_kind_is_asked_for_their_weight(string behind, string front, bool asked)
    {
        var known = Answers.None.Mark("red-flags").Mark("precautions").Mark("conditions").Choose("posture", "seated")
            .Choose("reach-behind", behind).Choose("reach-front", front).Choose("lean", "forward")
            .Choose("grasp", "whole-hand").Choose("dexterity", "slow").Choose("tremor", "none")
            .Choose("feeling", "usual").Choose("skin", "sound").Choose("steps", "two-or-three").Choose("helper", "sometimes");

        var values = new QuestionPlanner(Cases.Knowledge).OutlookFor(Depth.Quick, known).Values;

        Assert.Equal(asked, values.Single(v => v.Question.Id == "mass").MustBeAsked);
    }
}
