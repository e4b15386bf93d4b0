using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Reach;
using ToiletAid.Core.Safety;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Safety;

/// <summary>Each feature of plans that the hazard table may name, on plans that have it and on plans that nearly have it.</summary>
/// <remarks>Plans are written as aid, <c>&gt;</c> what follows it, <c>+</c> add-ons, <c>@</c> posture and <c>/</c> approach; without them seated and from behind.</remarks>
public sealed class PlanFeatureTests
{
    [Theory]
    [InlineData("wipes", "by-hand long-clamp short-soft paddle-lock tongs loop-wrap wipe-moist spray-wash>by-hand", "spray-wash seat-wash-dry helper-wipe")]
    [InlineData("strokes", "by-hand long-clamp wipe-moist by-hand>wipe-moist", "spray-wash>by-hand seat-wash helper-wipe")]
    [InlineData("hard-tip", "long-clamp paddle-lock tongs loop-wrap spray-wash>tongs", "by-hand short-soft spray-wash spray-wash>short-soft")]
    [InlineData("moist-wipes", "wipe-moist by-hand>wipe-moist", "by-hand helper-wipe spray-wash")]
    [InlineData("washes-by-hand", "squeeze-wash spray-wash hose-wash spray-wash>by-hand", "seat-wash seat-wash-dry by-hand")]
    [InlineData("helper-cleans", "helper-wipe", "by-hand seat-wash spray-wash>by-hand")]
    [InlineData("leaves-water", "squeeze-wash spray-wash hose-wash seat-wash", "spray-wash>by-hand seat-wash-dry by-hand")]
    [InlineData("warm-air", "seat-wash-dry", "seat-wash spray-wash by-hand")]
    [InlineData("water-as-warm-as-chosen", "squeeze-wash spray-wash spray-wash>by-hand", "hose-wash seat-wash seat-wash-dry by-hand")]
    [InlineData("carried-water", "squeeze-wash spray-wash spray-wash>by-hand", "hose-wash seat-wash seat-wash-dry by-hand")]
    [InlineData("mains-power", "seat-wash-dry", "seat-wash spray-wash by-hand")]
    [InlineData("mounted", "hose-wash seat-wash seat-wash-dry hose-wash>by-hand by-hand+fixed-rail by-hand+fixed-rail+skin-mirror", "by-hand by-hand+footstool spray-wash")]
    [InlineData("plumbed-hose", "hose-wash hose-wash>by-hand", "seat-wash seat-wash-dry spray-wash by-hand")]
    [InlineData("seat-aid", "seat-wash seat-wash-dry seat-wash>by-hand", "helper-wipe hose-wash by-hand")]
    [InlineData("stays-put", "seat-wash seat-wash-dry hose-wash hose-wash>by-hand seat-wash>by-hand", "helper-wipe spray-wash by-hand")]
    [InlineData("needs-bin", "wipe-moist helper-wipe by-hand>wipe-moist", "by-hand spray-wash")]
    [InlineData("paper-or-bin", "by-hand wipe-moist helper-wipe spray-wash>by-hand", "spray-wash seat-wash-dry")]
    [InlineData("raised-seat", "by-hand+raised-seat-with-cut-out by-hand+raised-seat-with-cut-out+skin-mirror", "by-hand by-hand+footstool by-hand+fixed-rail")]
    [InlineData("rail", "by-hand+fixed-rail by-hand+fixed-rail+skin-mirror", "by-hand by-hand+footstool by-hand+skin-mirror")]
    [InlineData("footstool", "by-hand+footstool by-hand+footstool+skin-mirror", "by-hand by-hand+fixed-rail by-hand+skin-mirror")]
    [InlineData("prepared-paper", "by-hand+prepared-paper by-hand+prepared-paper+skin-mirror", "by-hand by-hand+footstool")]
    [InlineData("folds-at-the-toilet", "long-clamp tongs short-soft short-soft+prepared-paper spray-wash>tongs long-clamp+skin-mirror", "by-hand paddle-lock loop-wrap tongs+prepared-paper long-clamp+prepared-paper+skin-mirror helper-wipe spray-wash>by-hand")]
    [InlineData("on-a-seat", "by-hand by-hand@seated-leaning-forward", "by-hand@half-standing by-hand@standing by-hand@side-lying by-hand@reclined")]
    [InlineData("stands", "by-hand@standing", "by-hand by-hand@half-standing by-hand@side-lying")]
    [InlineData("half-stands", "by-hand@half-standing", "by-hand by-hand@standing by-hand@seated-leaning-forward")]
    [InlineData("posture-unsuited", "spray-wash@standing spray-wash>by-hand@standing seat-wash@seated-leaning-forward", "by-hand@standing spray-wash@reclined seat-wash helper-wipe@reclined")]
    [InlineData("leans", "by-hand@seated-leaning-forward by-hand@half-standing by-hand/side by-hand@standing/side", "by-hand by-hand/front by-hand@standing by-hand@side-lying/side by-hand@reclined/side")]
    [InlineData("squeezes-hard", "squeeze-wash hose-wash tongs paddle-lock hose-wash>by-hand spray-wash>tongs", "by-hand loop-wrap long-clamp short-soft seat-wash helper-wipe")]
    [InlineData("loaded-by-eye", "long-clamp short-soft loop-wrap spray-wash spray-wash>by-hand", "by-hand tongs wipe-moist seat-wash-dry helper-wipe")]
    [InlineData("wide-head", "short-soft", "by-hand long-clamp tongs spray-wash spray-wash>short-soft")]
    public void A_feature_is_seen_on_plans_that_have_it_and_on_no_others(string feature, string has, string hasNot)
    {
        string[] Holding(string plans, bool? applies) => [.. plans.Split(' ').Where(p => Of(feature, Read(p)).Applies == applies)];

        Assert.Equal(has.Split(' '), Holding(has, true));
        Assert.Equal(hasNot.Split(' '), Holding(hasNot, false));
    }

    // What such features say is asked once for all plans that use the same.
    [Fact]
    public void Features_that_look_at_tools_alone_say_the_same_whatever_posture_and_way()
    {
        string[] tools =
        [
            "by-hand", "long-clamp", "short-soft", "paddle-lock", "tongs", "loop-wrap", "wipe-moist", "helper-wipe", "squeeze-wash", "spray-wash", "hose-wash", "seat-wash", "seat-wash-dry",
            "spray-wash>by-hand", "spray-wash>tongs", "hose-wash>by-hand", "by-hand+fixed-rail", "by-hand+raised-seat-with-cut-out", "by-hand+footstool", "tongs+prepared-paper",
        ];
        Answers[] people = [Cases.Able, Cases.Able.Choose("feeling", "none"), Cases.Able.Choose("tremor", "marked")];
        string[] names = [.. PlanFeatures.Names.Where(n => PlanFeatures.Find(n)!.OfTools)];
        Assert.InRange(names.Length, 20, 60);
        foreach (string name in names)
        {
            foreach (var (tool, person) in tools.SelectMany(t => people.Select(p => (t, p))))
            {
                string[] said =
                [
                    .. from posture in Enum.GetValues<Posture>()
                       from approach in Enum.GetValues<Approach>()
                       let plan = Read(tool) with { Posture = posture, Approach = approach }
                       let outcome = Of(name, plan, person, new() { ReachShare = 0.3 + (0.1 * (int)approach), Need = Need(plan) with { Approach = approach, SharePossible = 1.0 / (2 + (int)posture) } })
                       select $"{name} of {tool}: {outcome.Applies} {string.Join(' ', outcome.Needs)} {string.Join(' ', outcome.Slots)}",
                ];
                Assert.Single(said.Distinct());
            }
        }
    }

    /// <summary>38 °C where heat is felt, 37 where it is not (<c>supplies.json</c>, water).</summary>
    [Theory]
    [InlineData("feeling", "usual", 38)]
    [InlineData("feeling", "none", 37)]
    public void Water_that_is_as_warm_as_chosen_tells_its_limit_and_how_soon_it_burns(string question, string option, int celsius)
    {
        var outcome = Of("water-as-warm-as-chosen", Read("spray-wash"), Cases.Able.Choose(question, option));

        Assert.Equal(["limit", "example", "burn"], outcome.Slots.Select(s => s.Name));
        Assert.Equal(celsius, outcome.Slots[0].Si);
        Assert.Equal(Cases.Knowledge.Evidence.Value(EvidenceIds.ScaldExample), outcome.Slots[1].Si);
        Assert.Equal(Cases.Knowledge.Water.Burns.At(outcome.Slots[1].Si).Seconds, outcome.Slots[2].Si);
    }

    [Theory]
    [InlineData("short-soft", "allergy-silicone", true)]
    [InlineData("short-soft", "allergy-latex", false)]
    [InlineData("tongs+prepared-paper", "allergy-latex", true)]
    [InlineData("tongs+prepared-paper", "allergy-silicone", false)]
    [InlineData("tongs", "allergy-latex", false)]
    public void An_allergy_counts_for_what_touches_the_skin(string plan, string allergy, bool applies)
    {
        var outcome = Of("allergen", Read(plan), Cases.Able.Mark("precautions", allergy));

        Assert.Equal(applies, outcome.Applies);
        Assert.Equal(applies ? [("material", allergy["allergy-".Length..])] : [], outcome.Slots.Select(s => (s.Name, s.Word!)));
        Assert.Equal("precautions", string.Join(' ', Of("allergen", Read("short-soft"), Answers.None).Needs));
    }

    /// <summary>A share of one in two is the least that is offered, and four in five is sure (<c>evidence.json</c>).</summary>
    [Theory]
    [InlineData("no-way", true, 1, 0.49, 1, false, false)]
    [InlineData("no-way", false, 1, 0.5, 1, false, false)]
    [InlineData("hand-seen-short", true, 0.49, 1, 1, true, true)]
    [InlineData("hand-seen-short", false, 0.5, 1, 1, true, true)]
    [InlineData("hand-seen-short", false, 0.49, 1, 1, true, false)]
    [InlineData("hand-seen-short", false, 0.49, 0.49, 1, true, true)]
    [InlineData("hand-short", true, 0.49, 1, 1, true, false)]
    [InlineData("hand-short", false, 0.5, 1, 1, true, false)]
    [InlineData("hand-short", false, 0.49, 1, 1, true, true)]
    [InlineData("hand-short", false, 0.49, 1, 1, false, false)]
    [InlineData("aid-short", true, 0.49, 1, 1, false, false)]
    [InlineData("aid-short", false, 0.5, 1, 1, false, false)]
    [InlineData("aid-short", false, 0.49, 1, 1, true, false)]
    [InlineData("length-unsure", true, 0.79, 1, 1, false, false)]
    [InlineData("length-unsure", false, 0.8, 1, 1, false, false)]
    [InlineData("length-unsure", false, 0.79, 1, 1, true, false)]
    [InlineData("hand-unsure", true, 0.79, 1, 1, true, false)]
    [InlineData("hand-unsure", false, 0.8, 1, 1, true, false)]
    [InlineData("hand-unsure", false, 0.79, 1, 1, false, false)]
    public void Reach_counts_by_its_shares(string feature, bool applies, double reach, double possible, double length, bool byBareHand, bool seenShort)
    {
        var plan = Read("tongs");
        var demands = new PlanDemands { Need = Need(plan) with { SharePossible = possible, MedianLength = 0.3 }, ReachShare = reach, GivenLength = length, ByBareHand = byBareHand, SeenShort = seenShort };
        var outcome = Of(feature, plan, Cases.Able, demands);

        Assert.Equal(applies, outcome.Applies);
        Assert.Equal(applies ? PlanFeatures.Find(feature)!.Slots : [], outcome.Slots.Select(s => s.Name));
        Assert.All(outcome.Slots.Where(s => s.Name == "approach"), s => Assert.Equal("behind", s.Word));
        Assert.All(outcome.Slots.Where(s => s.Name == "share"), s => Assert.Equal(reach, s.Si));
        Assert.All(outcome.Slots.Where(s => s.Name == "needed" && feature == "aid-short"), s => Assert.Equal(0.3, s.Si));
        Assert.All(outcome.Slots.Where(s => s.Name == "length"), s => Assert.Equal(length, s.Si));
        Assert.False(Of(feature, plan, Cases.Able, demands with { Need = null }).Applies);
    }

    [Theory]
    [InlineData("hip-flexion-limit", "hip-flexion-limit")]
    [InlineData("no-twisting-or-bending", "no-twisting-or-bending")]
    [InlineData("sternal", "sternal")]
    [InlineData("shoulder-surgery", "shoulder-surgery")]
    [InlineData("no-weight-through-the-hand", "no-weight-through-hand")]
    public void A_way_that_a_precaution_forbids_is_forbidden_by_that_one(string precaution, string reason)
    {
        var plan = Read("by-hand");
        var need = Need(plan) with { Allowed = false, ForbiddenBecause = reason };

        Assert.True(Of("forbidden-by-" + precaution, plan, Cases.Able, new() { Need = need }).Applies);
        Assert.False(Of("forbidden-by-" + precaution, plan, Cases.Able, new() { Need = need with { ForbiddenBecause = "posture" } }).Applies);
        Assert.False(Of("forbidden-by-" + precaution, plan, Cases.Able, new() { Need = need with { Allowed = true } }).Applies);
        Assert.False(Of("cannot-hold", plan, Cases.Able, new() { Need = need }).Applies);
        Assert.True(Of("cannot-hold", plan, Cases.Able, new() { Need = need with { ForbiddenBecause = "posture" } }).Applies);
    }

    [Theory]
    [InlineData("by-hand/side", "both", false)]
    [InlineData("by-hand/side", "to-a-side", false)]
    [InlineData("by-hand/side", "forward", true)]
    [InlineData("by-hand/side", "not-at-all", true)]
    [InlineData("by-hand/side", null, null)]
    [InlineData("by-hand", "forward", false)]
    [InlineData("by-hand@standing/side", "forward", false)]
    public void From_the_side_a_seated_person_must_lean_to_a_side(string plan, string? lean, bool? applies) =>
        Assert.Equal(applies, Of("cannot-hold", Read(plan), lean is null ? Answers.None : Cases.Able.Choose("lean", lean)).Applies);

    [Fact]
    public void Somebody_outside_the_survey_is_told_so_where_reach_was_computed()
    {
        var plan = Read("by-hand");

        Assert.True(Of("outside-the-survey", plan, Cases.Able, new() { Need = Need(plan), OutsideSurvey = true }).Applies);
        Assert.False(Of("outside-the-survey", plan, Cases.Able, new() { Need = Need(plan) }).Applies);
        Assert.False(Of("outside-the-survey", plan, Cases.Able, new() { OutsideSurvey = true }).Applies);
    }

    /// <summary>Tongs take four steps, a hand cuff one more. Without a helper any step too many is too many; with one, only those beyond prompting.</summary>
    [Theory]
    [InlineData("steps-beyond-followed", "tongs", "two-or-three", "never", true)]
    [InlineData("steps-beyond-followed", "tongs", "four-or-more", "never", false)]
    [InlineData("steps-beyond-followed", "seat-wash", "two-or-three", "never", false)]
    [InlineData("steps-beyond-followed", "by-hand", "one", "never", false)]
    [InlineData("steps-beyond-prompting", "tongs", "two-or-three", "never", true)]
    [InlineData("steps-beyond-prompting", "tongs", "two-or-three", "always", false)]
    [InlineData("steps-beyond-prompting", "seat-wash", "two-or-three", "never", false)]
    [InlineData("folding-beyond-followed", "tongs+prepared-paper", "one", "never", true)]
    [InlineData("folding-beyond-followed", "tongs", "one", "never", false)]
    public void Steps_count_against_those_that_are_followed(string feature, string plan, string steps, string helper, bool applies)
    {
        var outcome = Of(feature, Read(plan), Cases.Able.Choose("steps", steps).Choose("helper", helper));

        Assert.Equal(applies, outcome.Applies);
        Assert.True(!applies || PlanFeatures.Find(feature)!.Slots.SequenceEqual(outcome.Slots.Select(s => s.Name)));
        Assert.Equal("prompting", applies && feature == "steps-beyond-prompting" ? outcome.Slots[^1].Name : "prompting");
    }

    [Theory]
    [InlineData("tongs", null)]
    [InlineData("by-hand", false)]
    public void Nobody_knows_whether_more_than_one_step_is_followed_before_that_is_asked(string plan, bool? applies) =>
        Assert.Equal(applies, Of("steps-beyond-followed", Read(plan), Answers.None).Applies);

    [Theory]
    [InlineData("fine-pinch", "usual", false)]
    [InlineData("whole-hand", "slow", false)]
    [InlineData("fine-pinch", "cannot", true)]
    [InlineData("press-with-palm-or-fist", "usual", true)]
    [InlineData("none", "usual", true)]
    [InlineData("whole-hand", null, null)]
    [InlineData(null, "usual", null)]
    [InlineData(null, "cannot", true)]
    public void Folding_ahead_takes_fingers(string? grasp, string? dexterity, bool? cannot)
    {
        var known = grasp is null ? Answers.None : Answers.None.Choose("grasp", grasp);
        known = dexterity is null ? known : known.Choose("dexterity", dexterity);

        Assert.Equal(cannot, Of("cannot-fold", Read("tongs"), known).Applies);
    }

    /// <summary>Pegs that were timed tell of slow fingers, not of fingers that can do nothing.</summary>
    [Fact]
    public void Fingers_that_were_timed_are_no_open_question() =>
        Assert.False(Of("cannot-fold", Read("tongs"), Answers.None.Choose("grasp", "whole-hand").Choose("dexterity", 30, "s")).Applies);

    private static RuleOutcome Of(string feature, Plan plan, Answers? known = null, PlanDemands? demands = null) =>
        PlanFeatures.Find(feature)!.Of(new(Cases.Knowledge, known ?? Cases.Able, plan, demands ?? new()));

    private static ReachNeed Need(Plan plan) => new() { Posture = plan.Posture, Approach = Approach.Behind, Allowed = true, SharePossible = 1 };

    private static Plan Read(string text)
    {
        string[] way = text.Split('/'), where = way[0].Split('@'), adding = where[0].Split('+'), methods = adding[0].Split('>');
        Aid Aid(string id) => Cases.Knowledge.Catalogue.Aids.Single(a => a.Id == id);
        return new()
        {
            Aid = Aid(methods[0]),
            Companion = methods.Length > 1 ? Aid(methods[1]) : null,
            AddOns = [.. adding.Skip(1).Select(id => Cases.Knowledge.Catalogue.AddOns.Single(a => a.Id == id))],
            Posture = where.Length > 1 ? Words.Find<Posture>(where[1])!.Value : Posture.Seated,
            Approach = way.Length > 1 ? Words.Find<Approach>(way[1]) : Approach.Behind,
        };
    }
}
