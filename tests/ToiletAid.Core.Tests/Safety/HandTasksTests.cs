using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Safety;
using ToiletAid.Core.Tests.Advising;
using ToiletAid.Core.Tests.Trials;

namespace ToiletAid.Core.Tests.Safety;

/// <summary>What hands can do besides the plan, on hands that can and on hands that nearly can.</summary>
public sealed class HandTasksTests
{
    private static readonly Advisor Advisor = new(Cases.Knowledge, new() { ValueDraws = 4, WeightDraws = 20, AsksGrip = false });

    private static readonly Rule Held = WithHands(AskedOfHands.Hold), Patted = WithHands(AskedOfHands.Pat), Other = Cases.Knowledge.Rules.All.First(r => r.Hands is null);

    /// <summary>Folding takes three steps in a row, and fingers.</summary>
    [Theory]
    [InlineData("fine-pinch", "usual", "four-or-more", true)]
    [InlineData("whole-hand", "slow", "two-or-three", true)]
    [InlineData("fine-pinch", "usual", "one", false)]
    [InlineData("fine-pinch", "cannot", "four-or-more", false)]
    [InlineData("press-with-palm-or-fist", "usual", "four-or-more", false)]
    public void Folding_takes_fingers_and_steps(string grasp, string dexterity, string steps, bool folds) =>
        Assert.Equal(folds, Hands(Cases.Able.Choose("grasp", grasp).Choose("dexterity", dexterity).Choose("steps", steps)).Folds);

    [Theory]
    [InlineData("fine-pinch", true)]
    [InlineData("whole-hand", true)]
    [InlineData("press-with-palm-or-fist", false)]
    [InlineData("press-with-forearm", false)]
    [InlineData("none", false)]
    public void A_rail_is_held_by_a_hand_that_can_close(string grasp, bool holds)
    {
        var hands = Hands(Cases.Able.Choose("grasp", grasp));

        Assert.Equal(holds, hands.Holds);
        Assert.Equal(holds ? Held.Text : Held.Helped!.Text, hands.Fit(Held).Text);
        Assert.Equal(holds ? Held.Text : Held.Helped!.Text, hands.Fit(Held, TrialCases.Plan("by-hand")).Text);
    }

    [Theory]
    [InlineData("never", true)]
    [InlineData("sometimes", false)]
    [InlineData("always", false)]
    public void Somebody_is_alone_where_there_is_never_a_carer(string helper, bool alone) => Assert.Equal(alone, Hands(Cases.Able.Choose("helper", helper)).Alone);

    /// <summary>A hand that takes up paper and gets to the skin pats, whatever the skin; one that does not reach, or takes up nothing, does not.</summary>
    [Theory]
    [InlineData("grasp", "fine-pinch", true)]
    [InlineData("grasp", "none", false)]
    [InlineData("skin", "surgical-wound", true)]
    [InlineData("skin", "sore-or-broken", true)]
    [InlineData("reach-behind", "not-past-the-hip", false)]
    public void A_hand_that_reaches_and_takes_up_paper_pats(string question, string option, bool pats)
    {
        var known = Cases.Able.Choose("reach-front", "not-past-mid-thigh").Choose(question, option);
        var hands = Hands(known);

        Assert.Equal(pats, hands.Pats(Posture.Seated));
        Assert.Equal(pats ? Patted.Text : Patted.Helped!.Text, hands.Fit(Patted).Text);
        Assert.Equal(pats ? Patted.Text : Patted.Helped!.Text, hands.Fit(Patted, TrialCases.Plan("spray-wash")).Text);
        Assert.Equal(Patted.Text, hands.Fit(Patted, TrialCases.Plan("spray-wash", "tongs")).Text);
        Assert.Same(Other, hands.Fit(Other));
        Assert.Same(Other, hands.Fit(Other, TrialCases.Plan("spray-wash")));
    }

    /// <summary>A wash that another person has to pat dry is worth at most what patting by another person leaves of independence; air dries, but where the skin must not have it.</summary>
    [Theory]
    [InlineData("seat-wash", "waist-or-above", "sound", false)]
    [InlineData("seat-wash", "not-past-the-hip", "sound", true)]
    [InlineData("seat-wash-dry", "not-past-the-hip", "sound", false)]
    [InlineData("seat-wash-dry", "not-past-the-hip", "sore-or-broken", true)]
    [InlineData("seat-wash-dry", "waist-or-above", "sore-or-broken", false)]
    public void What_another_person_has_to_pat_costs_independence(string aid, string reach, string skin, bool costs)
    {
        var hands = Hands(Cases.Able.Choose("reach-front", "not-past-mid-thigh").Choose("reach-behind", reach).Choose("skin", skin));
        var plan = TrialCases.Plan(aid, approach: null);
        double own = hands.Appraiser.Values(plan, hands.Appraiser.Middle)[(int)Criterion.Independence], patted = Cases.Knowledge.Evidence.Value(EvidenceIds.IndependencePatted);

        Assert.True(own > patted);
        Assert.Equal(costs ? patted : own, hands.Values(plan, hands.Appraiser.Middle)[(int)Criterion.Independence]);
    }

    /// <summary>A rule to whose hazard nobody with these answers is exposed is not looked at plan by plan.</summary>
    [Fact]
    public void Only_rules_to_which_the_person_is_exposed_may_rule_out()
    {
        string[] able = [.. Hands(Cases.Able).MayRuleOut.Select(r => r.Rule.Id)], wound = [.. Hands(Cases.Able.Choose("skin", "surgical-wound")).MayRuleOut.Select(r => r.Rule.Id)];

        Assert.NotEmpty(able);
        Assert.Empty(able.Except(wound));
        Assert.NotEmpty(wound.Except(able));
        Assert.All(Hands(Cases.Able).MayRuleOut, r => Assert.NotEqual(false, r.Exposed?.Applies));
    }

    /// <summary>A rule says itself what it looks at, so that nothing is computed for one that does not.</summary>
    [Fact]
    public void A_rule_depends_on_hand_and_reach_where_one_of_its_features_does()
    {
        string[] reach = ["no-way", "cannot-hold", "hand-short", "hand-seen-short", "aid-short", "length-unsure", "hand-unsure"];
        string[] hand = ["step-needs-two-hands", "step-needs-a-grasp", "step-too-strong", "step-too-hard-to-repeat", "step-too-fine", "near-the-limit-of-strength"];
        Assert.All(Cases.Hazards.RulesOut.Concat(Cases.Hazards.Cautions), r =>
        {
            string[] words = (r.Rule.Brings ?? string.Empty).Split(' ', '(', ')');
            Assert.Equal(words.Any(w => reach.Contains(w) || w.StartsWith("forbidden-by-", StringComparison.Ordinal)), r.DependsOnReach);
            Assert.Equal(words.Any(hand.Contains), r.DependsOnHand);
            Assert.Equal(string.IsNullOrEmpty(r.Rule.Brings), r.OfThePerson);
        });
    }

    private static HandTasks Hands(Answers known) => Advisor.Hands(Advisor.Appraise(known, 4).Appraiser);

    private static Rule WithHands(AskedOfHands hands) => Cases.Knowledge.Rules.All.First(r => r.Hands == hands && r.Helped is not null);
}
