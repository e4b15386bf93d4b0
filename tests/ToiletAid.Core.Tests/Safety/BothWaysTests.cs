using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Safety;

/// <summary>Each rule fires on somebody and does not on somebody who differs in one answer, so that no rule can be lost or always said unseen.</summary>
public sealed class BothWaysTests
{
    public static TheoryData<string> Rules => [.. Table.Select(r => r.Rule)];

    private static readonly RulePerson[] Table =
    [
        new("new-numbness", "Able", "red-flags=new-numbness-between-the-legs", "red-flags=none"),
        new("unexplained-bleeding", "Able", "red-flags=unexplained-bleeding", "red-flags=none"),
        new("new-severe-pain", "Able", "red-flags=new-severe-pain", "red-flags=none"),
        new("dysreflexia-now", "Able", "red-flags=pounding-headache-and-sweating-with-bowel-care-in-cord-injury", "red-flags=none"),
        new("no-way-to-the-skin", "Stiff", "lean=not-at-all", "lean=forward"),
        new("hip-flexion-limit", "Able", "precautions=hip-flexion-limit", "precautions=none"),
        new("no-twisting-or-bending", "Able", "precautions=no-twisting-or-bending", "precautions=none"),
        new("sternal", "Able", "precautions=sternal", "precautions=none"),
        new("shoulder-surgery", "Able", "precautions=shoulder-surgery", "precautions=none"),
        new("no-weight-through-the-hand", "Stands", "precautions=no-weight-through-the-hand", "precautions=none"),
        new("dizzy-when-leaning", "Able", "precautions=dizzy-when-leaning", "precautions=none"),
        new("cannot-hold-the-posture", "Able", "lean=not-at-all", "lean=both"),
        new("posture-not-in-this-place", "Able", "place=commode", "place=own-toilet"),
        new("needs-two-hands", "Able", "hands-free=one", "hands-free=two"),
        new("no-usable-grasp", "Able", "grasp=none", "grasp=fine-pinch"),
        new("too-fine", "Able", "dexterity=cannot", "dexterity=usual"),
        new("no-water", "Able", "water=none", "water=basin-in-reach"),
        new("no-socket", "Able", "socket=no", "socket=yes"),
        new("no-fixture-change", "Able", "fixtures=no", "fixtures=yes"),
        new("allergy", "Able", "precautions=allergy-latex", "precautions=none"),
        new("too-many-steps", "Able", "steps=one", "steps=four-or-more"),
        new("no-helper", "Able", "helper=never", "helper=always"),
        new("broken-skin-rubbing", "Able", "skin=pressure-injury", "skin=sound"),
        new("signs-not-known", "Able", "red-flags=?", "red-flags=none"),
        new("precautions-not-known", "Able", "precautions=?", "precautions=none"),
        new("dysreflexia-risk", "Able", "precautions=dysreflexia-risk", "precautions=none"),
        new("skin-tear-hard-tip", "Able", "feeling=none", "feeling=usual"),
        new("skin-cannot-be-felt", "Able", "feeling=reduced", "feeling=usual"),
        new("scald", "Able", "feeling=reduced", "feeling=usual"),
        new("warm-water", "Able", "feeling=usual", "feeling=reduced"),
        new("warm-water-old-skin", "Able", "age=80years", "age=45years"),
        new("wound-advice", "Able", "skin=surgical-wound", "skin=sound"),
        new("fragile-skin", "Able", "skin=fragile", "skin=sound"),
        new("bleeds-easily", "Able", "bleeding=yes", "bleeding=no"),
        new("sore-when-wiped", "Able", "sore-when-wiped=yes", "sore-when-wiped=no"),
        new("tremor-and-hard-tip", "Able", "tremor=marked", "tremor=none"),
        new("infection", "Able", "infection=yes", "infection=no"),
        new("front-to-back", "Able", "sex=female", "sex=male"),
        new("drain-paper-only", "Able", "drain=septic-or-easily-blocked", "drain=mains"),
        new("raised-seat-stability", "Able", "precautions=hip-flexion-limit", "precautions=none"),
        new("licensed-installer", "Able", "place=own-toilet", "place=commode"),
        new("backflow", "Able", "place=own-toilet", "place=commode"),
        new("electric-installer", "Able", "place=own-toilet", "place=commode"),
        new("surgical-precaution", "Able", "precautions=sternal", "precautions=none"),
        new("needs-prompting", "Able", "steps=two-or-three", "steps=four-or-more"),
        new("helper-prepares-paper", "One hand", "steps=one", "steps=four-or-more"),
        new("low-sight", "Able", "sight=low", "sight=enough"),
        new("second-way-away", "Able", "carry=daily", "carry=never"),
        new("wide-head-deep-soil", "Able", "deep=yes", "deep=no"),
        new("length-not-sure", "Able", "reach-behind=not-past-the-hip", "reach-behind=waist-or-above"),
        new("stay-with-helper", "Able", "helper=always", "helper=never"),
        new("too-short", "Able", "precautions=hip-flexion-limit", "precautions=none"),
        new("hand-does-not-reach", "In bed", "reach-front=?", "reach-front=past-the-groin"),
        new("too-weak", "Weak", "grip=0N", "grip=60N"),
        new("wet-skin", "Able", "grasp=press-with-forearm", "grasp=fine-pinch"),
        new("bin-not-flush", "Stiff", "helper=always", "helper=never"),
        new("lean-and-fall", "Old", "tremor=marked", "tremor=none"),
        new("outside-the-survey", "Stiff", "mass=200kg", "mass=80kg"),
        new("new-retention-or-incontinence", "Able", "red-flags=new-retention-or-incontinence", "red-flags=none"),
        new("new-trouble-in-both-legs", "Able", "red-flags=new-trouble-in-both-legs", "red-flags=none"),
        new("new-sexual-numbness", "Able", "red-flags=new-sexual-numbness", "red-flags=none"),
        new("black-stool", "Able", "red-flags=black-or-tarry-stool", "red-flags=none"),
        new("new-severe-belly-pain", "Able", "red-flags=new-severe-belly-pain", "red-flags=none"),
        new("infected-wound", "Able", "red-flags=fever-or-foul-hot-swelling", "red-flags=none"),
        new("stoma", "Able", "conditions=stoma", "conditions=none"),
        new("wipes-allergy", "Able", "precautions=allergy-wipes", "precautions=none"),
        new("hard-tip-after-radiotherapy", "Able", "skin=radiotherapy", "skin=sound"),
        new("brittle-spine", "Able", "precautions=brittle-bones", "precautions=none"),
        new("hip-extension-limit", "Upright", "precautions=hip-extension-limit", "precautions=none"),
        new("no-weight-on-a-leg", "Stands", "precautions=no-weight-on-a-leg", "precautions=none"),
        new("no-strong-grip", "Able", "precautions=no-strong-grip", "precautions=none"),
        new("seen-not-to-reach", "Able", "reach-behind=outer-buttock", "reach-behind=waist-or-above"),
        new("too-hard-to-repeat", "Weak", "grip=20N", "grip=400N"),
        new("cannot-fold", "Able", "dexterity=cannot", "dexterity=usual"),
        new("nobody-folds-ahead", "Alone", "dexterity=cannot", "dexterity=usual"),
        new("posture-not-known", "Able", "posture=?", "posture=seated"),
        new("irradiated-skin", "Able", "skin=radiotherapy", "skin=sound"),
        new("low-white-cells", "Able", "conditions=low-white-cells", "conditions=none"),
        new("catheter", "Able", "conditions=catheter", "conditions=none"),
        new("prolapse", "Able", "conditions=prolapse", "conditions=none"),
        new("folds", "Able", "conditions=swelling-or-skin-folds", "conditions=none"),
        new("prosthesis", "Able", "conditions=artificial-limb", "conditions=none"),
        new("heat-of-seat-and-air", "Able", "feeling=none", "feeling=usual"),
        new("air-on-broken-skin", "Able", "skin=pressure-injury", "skin=sound"),
        new("wipes-and-rash", "Able", "precautions=none", "precautions=allergy-wipes"),
        new("lean-needs-balance", "Able", "posture=seated-leaning-forward", "posture=side-lying"),
        new("mass-limit", "Able", "mass=200kg", "mass=80kg"),
        new("hand-not-sure", "Able", "reach-behind=?", "reach-behind=waist-or-above"),
        new("helper-folds", "Able", "dexterity=cannot", "dexterity=usual"),
        new("strength-near-limit", "Weak", "grip=60N", "grip=400N"),
    ];

    [Theory]
    [Trait("Speed", "Slow")]
    [MemberData(nameof(Rules))]
    public void A_rule_fires_on_one_and_not_on_another_who_differs_in_one_answer(string rule)
    {
        var row = Table.Single(r => r.Rule == rule);
        var (fires, doesNot) = row.Both;

        Assert.StartsWith(row.Question + "=", row.DoesNot, StringComparison.Ordinal);
        Assert.Contains(rule, fires);
        Assert.DoesNotContain(rule, doesNot);
    }

    [Fact]
    public void Every_rule_is_shown_both_ways()
    {
        var without = Cases.Knowledge.Rules.All.Select(r => r.Id).Except(Table.Select(r => r.Rule)).ToHashSet(StringComparer.Ordinal);

        Assert.True(without.Count == 0, "No row for " + string.Join(", ", without) + ". These would do:\n"
            + string.Join('\n', without.Count == 0 ? [] : RulePerson.Suggest(without).GroupBy(r => r.Rule).SelectMany(g => g.Take(8)).Select(r => r.ToString())));
    }
}
