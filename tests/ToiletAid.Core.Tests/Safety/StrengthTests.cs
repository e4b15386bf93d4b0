using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;
using ToiletAid.Core.Simulation;
using ToiletAid.Core.Tests.Advising;
using ToiletAid.Core.Tests.Trials;

namespace ToiletAid.Core.Tests.Safety;

/// <summary>What is said of strength is true: more than the hand can give, more than it can comfortably repeat, or not known before it is measured.</summary>
public sealed class StrengthTests
{
    private static readonly AdviceSettings Few = new() { ValueDraws = 4, WeightDraws = 50, AsksGrip = false };

    private static readonly Advisor Advisor = new(Cases.Knowledge, Few);

    /// <summary>Two kilograms of force measured is 19.6 newtons. Squeezing takes 10 the whole time and 12 to clean: the hand gives that, so nothing may say that it does not.</summary>
    [Theory]
    [InlineData(19.6, null)]
    [InlineData(13, "too-hard-to-repeat")]
    [InlineData(8, "too-weak")]
    public void Ten_newtons_are_not_more_than_a_hand_of_twenty_can_give(double grip, string? rule)
    {
        var (appraiser, _) = Advisor.Appraise(Cases.Able.Choose("grip", grip, "N").Choose("pinch", 40, "N"), 4);
        string[] said = [.. PlanCheck.Of(Cases.Knowledge, Advisor.Hands(appraiser), TrialCases.Plan("tongs")).Reasons.Select(r => r.Rule.Id).Where(id => id.StartsWith("too-", StringComparison.Ordinal))];

        Assert.Equal(rule is null ? [] : [rule], said);
    }

    [Fact]
    public void More_than_the_hand_can_give_is_said_of_more_and_of_nothing_else()
    {
        int weak = 0, tiring = 0;
        foreach (double grip in Enumerable.Range(1, 60).Select(n => n * 2.5))
        {
            foreach (double pinch in (double[])[8, 30])
            {
                var person = Cases.Able.Choose("grip", grip, "N").Choose("pinch", pinch, "N");
                foreach (var reason in Advisor.Advise(person).RuledOut.SelectMany(r => r.Reasons).Where(r => r.Rule.Id is "too-weak" or "too-hard-to-repeat"))
                {
                    bool more = Told(reason, "force") > Told(reason, "capacity");
                    Assert.True(more == (reason.Rule.Id == "too-weak"), $"{grip} N grip, {pinch} N pinch: {AdviceText.Sentence(reason)}");
                    _ = more ? weak++ : tiring++;
                }
            }
        }

        Assert.True(weak > 5 && tiring > 5, $"{weak} too weak, {tiring} tiring");
    }

    /// <summary>What is assumed of a hand rules nothing out, not even a tool that no hand could squeeze: the rule cannot tell, and says what would settle it.</summary>
    [Theory]
    [InlineData(null, null)]
    [InlineData(200.0, "too-weak")]
    [InlineData(605.0, "too-hard-to-repeat")]
    public void A_grip_that_was_not_measured_rules_nothing_out_and_is_asked_for(double? grip, string? rule)
    {
        var catalogue = Cases.Knowledge.Catalogue;
        var stiff = catalogue with { Aids = [.. catalogue.Aids.Select(a => a.Id == "tongs" ? a with { Operations = [.. a.Operations.Select(o => o.Kind == OperationKind.Hold ? o with { Force = o.Force with { Value = 600 } } : o)] } : a)] };
        var knowledge = Cases.Knowledge with { Catalogue = stiff };
        var known = grip is { } measured ? Cases.Able.Choose("grip", measured, "N").Choose("pinch", 40, "N") : Cases.Able;
        var advisor = new Advisor(knowledge, Few);
        var (appraiser, _) = advisor.Appraise(known, 4);
        var check = PlanCheck.Of(knowledge, advisor.Hands(appraiser), TrialCases.Plan("tongs") with { Aid = stiff.Aids.Single(a => a.Id == "tongs") });

        Assert.Equal(rule is null ? [] : [rule], check.Reasons.Select(r => r.Rule.Id).Where(id => id.StartsWith("too-", StringComparison.Ordinal)));
        Assert.Equal(grip is null, check.Unclear.Any(u => u.Id is "too-weak"));
        Assert.Equal<QuestionId>(grip is null ? [QuestionIds.Grip] : [], check.Unclear.Where(u => u.DependsOnHand).SelectMany(u => u.Check(new(knowledge, known, TrialCases.Plan("tongs"), check.Demands)).Needs).Distinct());
    }

    [Fact]
    public void Nor_does_it_for_anybody_who_is_simulated()
    {
        var simulator = new PeopleSimulator(Cases.Knowledge, BuiltIn.People());
        for (int i = 0; i < TestRun.Times(1000, 100); i++)
        {
            var answers = simulator.Make(41, i, Depth.Full, new(2026, 3, 9)).Sessions[0].Answers.Without(QuestionIds.Stature).Without(QuestionIds.Mass).Without(QuestionIds.Joints).Without(QuestionIds.Grip).Without(QuestionIds.Pinch);
            Assert.DoesNotContain(Advisor.Advise(answers).RuledOut.SelectMany(r => r.Reasons), r => r.Rule.Id is "too-weak" or "too-hard-to-repeat");
        }
    }

    private static int Told(Finding reason, string slot) => (int)Math.Round(reason.Slots.Single(s => s.Name == slot).Si);
}
