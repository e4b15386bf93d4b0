using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Hand;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Quantities;

namespace ToiletAid.Core.Safety;

/// <summary>Conditions under which a plan is offered with a warning.</summary>
internal static class Cautions
{
    internal static readonly ImmutableArray<RuleCheck> All =
    [
        new("signs-not-known", c => RuleOutcome.If(!c.Known.Knows("red-flags"))),
        new("precautions-not-known", c => RuleOutcome.If(!c.Known.Knows("precautions"))),
        new("dysreflexia-risk", c => c.Has("precautions", "dysreflexia-risk")),
        new("skin-tear-hard-tip", c => c.Plan.Methods.Any(m => m.Tip == Tip.Hard) ? PoorFeeling(c) : RuleOutcome.No),
        new("scald", Scald),
        new("wound-advice", c => c.Is("skin", "sore-or-broken", "pressure-injury", "surgical-wound")),
        new("infection", c => c.Is("infection", "yes")),
        new("electric-installer", c => RuleOutcome.If(c.Plan.Methods.Any(m => m.Water is { NeedsSocket: true }))),
        new("lean-and-fall", c => RuleOutcome.If(RulesOut.Leans(c.Plan) || PoseLeans(c))),
        new("surgical-precaution", SurgicalPrecaution),
        new("skin-cannot-be-felt", PoorFeeling),
        new("warm-water", WarmWater),
        new("fragile-skin", c => c.Plan.Methods.Any(m => m.Method == MethodKind.Wipe) ? c.Is("skin", "fragile") : RuleOutcome.No),
        new("wet-skin", c => RuleOutcome.If(c.Plan.Last.Method == MethodKind.Wash)),
        new("bleeds-easily", c => c.Plan.Methods.Any(m => m.Method == MethodKind.Wipe || m.Tip == Tip.Hard) ? c.Is("bleeding", "yes") : RuleOutcome.No),
        new("tremor-and-hard-tip", c => c.Plan.Methods.Any(m => m.Tip == Tip.Hard) ? c.Is("tremor", "marked") : RuleOutcome.No),
        new("front-to-back", c => c.Plan.Methods.Any(m => m.Method is MethodKind.Wipe or MethodKind.Helper) ? c.Is("sex", "female") : RuleOutcome.No),
        new("bin-not-flush", c => RuleOutcome.If(c.Plan.Methods.Any(m => m.NeedsBin))),
        new("raised-seat-stability", c => RuleOutcome.If(c.Plan.AddOns.Any(a => a.RoomGained is not null))),
        new("licensed-installer", c => RuleOutcome.If(c.Plan.ChangesFixtures)),
        new("backflow", c => RuleOutcome.If(c.Plan.Methods.Any(m => m is { Water.Plumbed: true, Reach: ReachKind.Jet }))),
        new("needs-prompting", NeedsPrompting),
        new("helper-prepares-paper", HelperPreparesPaper),
        new("wide-head-deep-soil", WideHead),
        new("length-not-sure", LengthNotSure),
        new("strength-near-limit", StrengthNearLimit),
        new("sore-when-wiped", c => c.Plan.Aid.Method == MethodKind.Wipe ? c.Is("sore-when-wiped", "yes") : RuleOutcome.No),
        new("drain-paper-only", c => c.Plan.Methods.Any(m => m.Paper is not null || m.NeedsBin) ? c.Is("drain", "septic-or-easily-blocked") : RuleOutcome.No),
        new("low-sight", c => c.Plan.Methods.Any(m => m.NeedsSight.Value >= c.Value("learning.sight-matters")) ? c.Is("sight", "low", "none") : RuleOutcome.No),
        new("second-way-away", SecondWayAway),
        new("outside-the-survey", c => RuleOutcome.If(c.Demands is { Need: not null, OutsideSurvey: true })),
        new("stay-with-helper", c => RuleOutcome.If(c.Plan.Aid.Method == MethodKind.Helper)),
    ];

    /// <summary>The red flags that stop everything, by option of the question.</summary>
    internal static readonly ImmutableArray<(string Option, string Rule)> Stops =
    [
        ("new-numbness-between-the-legs-with-new-bladder-or-bowel-trouble", "new-numbness"),
        ("pounding-headache-and-sweating-with-bowel-care-in-cord-injury", "dysreflexia-now"),
        ("unexplained-bleeding", "unexplained-bleeding"),
        ("new-severe-pain", "new-severe-pain"),
    ];

    private static RuleOutcome PoorFeeling(RuleContext c) => c.Is("feeling", "reduced", "none");

    private static bool WarmByChoice(Plan plan) => plan.Methods.Any(m => m.Water is { CanBeWarm: true, LimitsTemperature: false });

    private static RuleOutcome Scald(RuleContext c) => WarmByChoice(c.Plan)
        ? PoorFeeling(c).With(
            new Slot("limit", c.Knowledge.Water.LimitCelsius(feelsHeatPoorly: true), Dimension.Temperature),
            new Slot("example", c.Value("scald.example"), Dimension.Temperature),
            new Slot("burn", c.Knowledge.Water.Burns.At(c.Value("scald.example")).Seconds, Dimension.Time))
        : RuleOutcome.No;

    /// <summary>It stands as well where nobody knows whether heat is felt, and then with the limit of skin that does not feel it: what may scald is never left without a warning.</summary>
    private static RuleOutcome WarmWater(RuleContext c)
    {
        bool? poor = PoorFeeling(c).Applies;
        return WarmByChoice(c.Plan) && poor != true
            ? RuleOutcome.Yes.With(new Slot("limit", c.Knowledge.Water.LimitCelsius(feelsHeatPoorly: poor is null), Dimension.Temperature))
            : RuleOutcome.No;
    }

    private static RuleOutcome SurgicalPrecaution(RuleContext c) =>
        c.Has("precautions", "hip-flexion-limit") | c.Has("precautions", "no-twisting-or-bending")
        | c.Has("precautions", "sternal") | c.Has("precautions", "shoulder-surgery");

    private static RuleOutcome NeedsPrompting(RuleContext c)
    {
        if (c.Known.Choice("steps") is not { } choice)
        {
            return c.Plan.Steps > 1 ? RuleOutcome.Unclear("steps") : RuleOutcome.No;
        }

        double follows = RulesOut.Follows(c, choice);
        return RuleOutcome.If(c.Plan.Steps > follows).With(
            new Slot("steps", c.Plan.Steps, Dimension.Number), new Slot("follows", follows, Dimension.Number));
    }

    /// <summary>What is folded ahead lies ready as one step of the clean, but folding it is a task of its own.</summary>
    private static RuleOutcome HelperPreparesPaper(RuleContext c)
    {
        double takes = c.Value("learning.prepare-steps");
        return !c.Plan.AddOns.Any(a => a.PreparesPaper) ? RuleOutcome.No
            : c.Known.Choice("steps") is not { } choice ? RuleOutcome.Unclear("steps")
            : RuleOutcome.If(takes > RulesOut.Follows(c, choice)).With(
                new Slot("steps", takes, Dimension.Number), new Slot("follows", RulesOut.Follows(c, choice), Dimension.Number));
    }

    private static RuleOutcome WideHead(RuleContext c) =>
        c.Plan.Aid.TipWidth is { } width && width.Value > c.Value("cleaning.too-wide") ? c.Is("deep", "yes") : RuleOutcome.No;

    private static RuleOutcome LengthNotSure(RuleContext c) =>
        RuleOutcome.If(c.Demands.Need is not null && c.Demands.ReachShare < c.Value("reach.sure-share"))
            .With(new Slot("share", c.Demands.ReachShare, Dimension.Number));

    private static RuleOutcome StrengthNearLimit(RuleContext c) =>
        c.Demands.Hardest is { Possible: true, Band: EffortBand.Caution or EffortBand.Poor } hardest
            ? RuleOutcome.Yes.With(
                new Slot("operation", 0, Dimension.Number, Words.Of(hardest.Kind)), new Slot("share", hardest.ShareOfAcceptable, Dimension.Number))
            : RuleOutcome.No;

    /// <summary>True when the pose that was found leans or turns far enough to cost balance, though the posture need not.</summary>
    private static bool PoseLeans(RuleContext c) =>
        c.Plan.Posture is not (Posture.SideLying or Posture.Reclined)
        && c.Plan.Approach is not null
        && c.Demands.Need?.Pose is { } pose
        && (pose.Lean >= c.Value("balance.lean-caution")
            || Math.Abs(pose.Bend) >= c.Value("balance.bend-caution")
            || Math.Abs(pose.Twist) >= c.Value("balance.twist-caution"));

    private static RuleOutcome SecondWayAway(RuleContext c) =>
        c.Plan.Methods.Any(m => m is { Reach: ReachKind.None, Method: not MethodKind.Helper } or { ChangesFixtures: true })
            ? c.Is("carry", "sometimes", "daily")
            : RuleOutcome.No;
}
