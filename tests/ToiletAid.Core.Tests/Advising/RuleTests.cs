using System.Collections.Immutable;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Safety;
using ToiletAid.Core.Tests.Trials;

namespace ToiletAid.Core.Tests.Advising;

public sealed class RuleTests
{
    [Theory]
    [InlineData("new-numbness-between-the-legs", "new-numbness")]
    [InlineData("new-retention-or-incontinence", "new-retention-or-incontinence")]
    [InlineData("new-trouble-in-both-legs", "new-trouble-in-both-legs")]
    [InlineData("new-sexual-numbness", "new-sexual-numbness")]
    [InlineData("black-or-tarry-stool", "black-stool")]
    [InlineData("new-severe-belly-pain", "new-severe-belly-pain")]
    [InlineData("fever-or-foul-hot-swelling", "infected-wound")]
    [InlineData("unexplained-bleeding", "unexplained-bleeding")]
    [InlineData("new-severe-pain", "new-severe-pain")]
    [InlineData("pounding-headache-and-sweating-with-bowel-care-in-cord-injury", "dysreflexia-now")]
    public void A_red_flag_stops_the_ranking(string flag, string rule)
    {
        var advice = Cases.Able.Mark("red-flags", flag).Advice();

        Assert.Equal([rule], advice.Stops.Select(s => s.Rule.Id));
        Assert.Empty(advice.Ranked);
        Assert.Empty(Cases.Able.Advice().Stops);
    }

    [Theory]
    [InlineData("sternal")]
    [InlineData("shoulder-surgery")]
    public void Reaching_behind_is_ruled_out_after_surgery_and_not_just_marked_down(string precaution)
    {
        var advice = Cases.Able.Mark("precautions", precaution).Advice();

        Assert.DoesNotContain(Approach.Behind, advice.Ranked.Where(r => r.Plan.Approach is not null).Select(r => r.Plan.Approach!.Value));
        Assert.All(advice.Ranked, r => Assert.Contains("surgical-precaution", r.Cautions.Select(c => c.Rule.Id)));
        Assert.Contains(Approach.Behind, Cases.Able.Advice().Ranked.Select(r => r.Plan.Approach).OfType<Approach>());
    }

    [Theory]
    [InlineData("hip-flexion-limit")]
    [InlineData("no-twisting-or-bending")]
    [InlineData("dizzy-when-leaning")]
    public void A_lean_is_ruled_out_where_it_would_harm(string precaution)
    {
        var leaning = Cases.Able.Choose("posture", "seated-leaning-forward").Mark("precautions", precaution).Advice();

        Assert.DoesNotContain(Posture.SeatedLeaningForward, leaning.Ranked.Where(r => r.Plan.Approach is not null).Select(r => r.Plan.Posture));
    }

    [Fact]
    public void A_raised_seat_comes_with_a_hip_flexion_limit()
    {
        var advice = Cases.Able.Mark("precautions", "hip-flexion-limit").Advice();

        Assert.True(advice.Place("by-hand").Plan.Has("raised-seat-with-cut-out"));
        Assert.Contains("raised-seat-stability", advice.CautionsOf("by-hand"));
        Assert.False(Cases.Able.Advice().Place("by-hand").Plan.Has("raised-seat-with-cut-out"));
    }

    [Theory]
    [InlineData("silicone", "short-soft")]
    [InlineData("silicone", "long-clamp", false)]
    public void An_allergy_rules_out_what_touches_the_skin_with_it(string material, string aid, bool ruledOut = true) =>
        Assert.Equal(ruledOut ? "allergy" : null, Cases.Able.Mark("precautions", "allergy-" + material).Advice().WhyNot(aid));

    [Fact]
    public void A_latex_allergy_takes_the_elastic_away()
    {
        var weakHand = Cases.Able.Choose("hands-free", "one").Choose("dexterity", "slow");

        Assert.DoesNotContain(true, weakHand.Mark("precautions", "allergy-latex").Advice().Ranked.Select(r => r.Plan.Has("prepared-paper")));
        Assert.Contains(true, weakHand.Advice().Ranked.Select(r => r.Plan.Has("prepared-paper")));
    }

    [Theory]
    [InlineData("water", "none", "squeeze-wash", "no-water")]
    [InlineData("socket", "no", "seat-wash-dry", "no-socket")]
    [InlineData("fixtures", "no", "seat-wash", "no-fixture-change")]
    [InlineData("fixtures", "no", "hose-wash", "no-fixture-change")]
    [InlineData("helper", "never", "helper-wipe", "no-helper")]
    [InlineData("place", "commode", "seat-wash-dry", "posture-not-in-this-place")]
    [InlineData("skin", "pressure-injury", "long-clamp", "broken-skin-rubbing")]
    [InlineData("skin", "surgical-wound", "by-hand", "broken-skin-rubbing")]
    [InlineData("steps", "one", "paddle-lock", "too-many-steps")]
    public void A_plan_is_ruled_out_with_its_reason_and_offered_without_it(string question, string option, string aid, string rule)
    {
        Assert.Equal(rule, Cases.Able.Choose(question, option).Advice().WhyNot(aid));
        Assert.Null(Cases.Able.Advice().WhyNot(aid));
    }

    [Fact]
    public void A_service_that_is_not_known_rules_nothing_out_but_is_asked_for()
    {
        var advice = Cases.Able.With(QuestionIds.Socket, new(new AnswerValue.NotKnown(), null)).Advice();

        Assert.Null(advice.WhyNot("seat-wash-dry"));
        Assert.Contains(QuestionIds.Socket, advice.Place("seat-wash-dry").Unsettled);
    }

    [Theory]
    [InlineData("none")]
    [InlineData("press-with-forearm")]
    public void A_hand_without_the_grasp_is_not_given_the_aid(string grasp) =>
        Assert.Equal("no-usable-grasp", Cases.Able.Choose("grasp", grasp).Choose("reach-behind", "outer-buttock").Advice().WhyNot("tongs"));

    [Theory]
    [InlineData("feeling", "none", "long-clamp", "skin-tear-hard-tip")]
    [InlineData("feeling", "reduced", "squeeze-wash", "scald")]
    [InlineData("skin", "fragile", "by-hand", "fragile-skin")]
    [InlineData("bleeding", "yes", "by-hand", "bleeds-easily")]
    [InlineData("sore-when-wiped", "yes", "by-hand", "sore-when-wiped")]
    [InlineData("feeling", "none", "seat-wash-dry", "heat-of-seat-and-air")]
    [InlineData("skin", "pressure-injury", "seat-wash-dry", "air-on-broken-skin")]
    [InlineData("infection", "yes", "long-clamp", "infection")]
    [InlineData("sex", "female", "by-hand", "front-to-back")]
    [InlineData("tremor", "marked", "long-clamp", "tremor-and-hard-tip")]
    [InlineData("drain", "septic-or-easily-blocked", "by-hand", "drain-paper-only")]
    [InlineData("sight", "low", "short-soft", "low-sight")]
    [InlineData("carry", "daily", "seat-wash-dry", "second-way-away")]
    [InlineData("deep", "yes", "short-soft", "wide-head-deep-soil")]
    public void A_caution_stands_where_the_risk_is_and_not_elsewhere(string question, string option, string aid, string rule)
    {
        Assert.Contains(rule, new Core.Advising.Advisor(Cases.AsUsual, Cases.Quick).Advise(Cases.Able.Choose(question, option)).CautionsOf(aid));
        Assert.DoesNotContain(rule, Cases.Able.Advice().CautionsOf(aid));
    }

    [Theory]
    [InlineData("seat-wash-dry", "electric-installer")]
    [InlineData("seat-wash", "licensed-installer")]
    [InlineData("hose-wash", "backflow")]
    [InlineData("squeeze-wash", "warm-water")]
    [InlineData("wipe-moist", "bin-not-flush")]
    [InlineData("helper-wipe", "stay-with-helper")]
    public void A_caution_of_the_method_always_stands_with_it(string aid, string rule)
    {
        Assert.Contains(rule, Cases.Able.Advice().CautionsOf(aid));
        Assert.DoesNotContain(rule, Cases.Able.Advice().CautionsOf("by-hand"));
    }

    /// <summary>Somebody whose trunk neither bends to a side nor turns is told no lean, and so is warned of none.</summary>
    [Theory]
    [InlineData(5, 5, "", Approach.Behind, false)]
    [InlineData(14, 5, "", Approach.Behind, false)]
    [InlineData(25, 5, "", Approach.Behind, true)]
    public void A_lean_aside_or_a_turn_is_warned_of_as_a_lean_forward_is(double bend, double turn, string precaution, Approach approach, bool warned)
    {
        var measured = ImmutableSortedDictionary<string, double>.Empty.Add("side-bend", bend).Add("trunk-rotation", turn);
        var person = Cases.Able.With(QuestionIds.Joints, new(new AnswerValue.Parts(measured, "deg"), HowObtained.Measured));
        var plan = (precaution.Length == 0 ? person : person.Mark("precautions", precaution)).Advice().Ranked.First(r => r.Plan.Posture == Posture.Seated && r.Plan.Approach == approach);

        Assert.True(plan.Demands.Need!.Pose.Lean < 20 * Math.PI / 180, $"{plan.Demands.Need.Pose}");
        Assert.True(warned == plan.Cautions.Any(c => c.Rule.Id is "lean-and-fall" or "lean-needs-balance"), $"{plan.Plan.Aid.Id} {plan.Demands.Need!.Pose}");
    }

    [Theory]
    [InlineData("one", true)]
    [InlineData("two-or-three", false)]
    [InlineData("four-or-more", false)]
    public void Paper_is_folded_ahead_by_a_helper_for_somebody_who_follows_one_step(string steps, bool helper)
    {
        var person = Cases.Able.Choose("hands-free", "one").Choose("dexterity", "slow").Choose("steps", steps);

        Assert.Equal(helper, Applies(Cases.Hazards.Cautions, "helper-prepares-paper", person, TrialCases.Plan("by-hand", addOns: "prepared-paper")));

        // What a helper folds is help that has to be arranged, so it is chosen where the person folds it alone.
        Assert.Equal(!helper, person.Advice().Place("by-hand").Plan.Has("prepared-paper"));
    }

    [Fact]
    public void Dysreflexia_risk_is_the_first_caution_of_every_plan() => Assert.All(
        Cases.Able.Mark("precautions", "dysreflexia-risk").Advice().Ranked, r => Assert.Equal("dysreflexia-risk", r.Cautions[0].Rule.Id));

    [Fact]
    public void A_mirror_comes_with_poor_feeling()
    {
        Assert.True(Cases.Able.Choose("feeling", "none").Advice().Place("by-hand").Plan.Has("skin-mirror"));
        Assert.False(Cases.Able.Advice().Place("by-hand").Plan.Has("skin-mirror"));
    }

    /// <summary>A clinic's own stock may let any kind follow any other, so what a companion needs is looked at as well.</summary>
    [Theory]
    [InlineData("water", "none", "squeeze-wash", "no-water")]
    [InlineData("socket", "no", "seat-wash-dry", "no-socket")]
    [InlineData("fixtures", "no", "seat-wash", "no-fixture-change")]
    [InlineData("helper", "never", "helper-wipe", "no-helper")]
    [InlineData("place", "commode", "seat-wash", "posture-not-in-this-place")]
    public void A_companion_is_ruled_out_for_the_same_reasons(string question, string option, string companion, string rule)
    {
        Assert.True(Applies(Cases.Hazards.RulesOut, rule, Cases.Able.Choose(question, option), TrialCases.Plan("by-hand", companion)));
        Assert.False(Applies(Cases.Hazards.RulesOut, rule, Cases.Able, TrialCases.Plan("by-hand", companion)));
    }

    [Theory]
    [InlineData("seat-wash-dry", "electric-installer")]
    [InlineData("hose-wash", "backflow")]
    [InlineData("squeeze-wash", "wet-skin")]
    [InlineData("seat-wash", "second-way-away")]
    public void A_companion_brings_its_own_cautions(string companion, string rule)
    {
        Assert.True(Applies(Cases.Hazards.Cautions, rule, Cases.Able.Choose("carry", "daily"), TrialCases.Plan("by-hand", companion)));
        Assert.False(Applies(Cases.Hazards.Cautions, rule, Cases.Able.Choose("carry", "daily"), TrialCases.Plan("by-hand", "wipe-moist")));
    }

    /// <summary>Nobody knows whether this skin feels heat, so the water is as warm as for skin that does not.</summary>
    [Fact]
    public void Warm_water_is_warned_of_also_where_the_feeling_is_not_known()
    {
        var unknown = Cases.Able.With(QuestionIds.Feeling, new(new AnswerValue.NotKnown(), null)).Advice().Place("squeeze-wash");

        Assert.Equal(Cases.Knowledge.Water.LimitCelsius(burnsSooner: true), unknown.Cautions.Single(c => c.Rule.Id == "warm-water").Slots.Single(s => s.Name == "limit").Si);
        Assert.Contains(QuestionIds.Feeling, unknown.Unsettled);
        Assert.DoesNotContain("warm-water", Cases.Able.Choose("feeling", "none").Advice().CautionsOf("squeeze-wash"));
    }

    private static bool Applies(ImmutableArray<RuleCheck> rules, string rule, Answers known, Plan plan) =>
        rules.Single(r => r.Id == rule).Check(new(Cases.Knowledge, known, plan, new PlanDemands())).Applies == true;
}
