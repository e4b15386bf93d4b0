using System.Collections.Frozen;
using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Hand;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Quantities;

namespace ToiletAid.Core.Safety;

/// <summary>Every feature of plans that the hazard table may name. Each looks at the plan as a whole: what follows the cleaning counts like the cleaning.</summary>
internal static class PlanFeatures
{
    private static readonly ImmutableArray<(string Material, OptionId Allergy)> Allergens =
        [("silicone", OptionIds.PrecautionAllergySilicone), ("latex", OptionIds.PrecautionAllergyLatex), ("nickel", OptionIds.PrecautionAllergyNickel)];

    /// <summary>Reasons of the reach computation that are precautions, each with the feature's name after "forbidden-by-".</summary>
    private static readonly ImmutableArray<(string Name, string Reason)> Precautions =
    [
        ("hip-flexion-limit", "hip-flexion-limit"),
        ("no-twisting-or-bending", "no-twisting-or-bending"),
        ("sternal", "sternal"),
        ("shoulder-surgery", "shoulder-surgery"),
        ("no-weight-through-the-hand", "no-weight-through-hand"),
    ];

    private static readonly FrozenDictionary<string, PlanFeature> ByName = All().ToFrozenDictionary(f => f.Name, StringComparer.Ordinal);

    /// <summary>Names of all features.</summary>
    internal static IEnumerable<string> Names => ByName.Keys;

    /// <summary>The feature called so, or null.</summary>
    internal static PlanFeature? Find(string name) => ByName.GetValueOrDefault(name);

    /// <summary>True when posture or approach take a lean that can cost balance.</summary>
    internal static bool Leans(Plan plan) =>
        plan.Posture is Posture.SeatedLeaningForward or Posture.HalfStanding || (plan.Approach == Approach.Side && plan.Posture is not (Posture.SideLying or Posture.Reclined));

    /// <summary>True when the pose that was found leans or turns far enough to cost balance, though the posture need not.</summary>
    internal static bool PoseLeans(RuleContext c) =>
        c.Plan.Posture is not (Posture.SideLying or Posture.Reclined)
        && c.Plan.Approach is not null
        && c.Demands.Need?.Pose is { } pose
        && (pose.Lean >= c.Value(EvidenceIds.BalanceLeanCaution)
            || Math.Abs(pose.Bend) >= c.Value(EvidenceIds.BalanceBendCaution)
            || Math.Abs(pose.Twist) >= c.Value(EvidenceIds.BalanceTwistCaution));

    private static IEnumerable<PlanFeature> All() =>
        [.. OfAid().Select(OfTools), .. OfPosture(), .. OfReach(), .. OfHandAndMind().Select(OfTools)];

    private static PlanFeature OfTools(PlanFeature feature) => feature with { OfTools = true };

    private static IEnumerable<PlanFeature> OfAid() =>
    [
        // What touches the skin, and how.
        Whole("wipes", p => p.Methods.Any(m => m.Method == MethodKind.Wipe)),
        Whole("strokes", p => p.Aid.Method == MethodKind.Wipe),
        Whole("hard-tip", p => p.Methods.Any(m => m.Tip == Tip.Hard)),
        Whole("moist-wipes", p => p.Methods.Any(IsMoistWipe)),
        Whole("washes-by-hand", p => p.Methods.Any(m => m.Reach == ReachKind.Jet)),
        Whole("helper-cleans", p => p.Methods.Any(m => m.Method == MethodKind.Helper)),
        Whole("leaves-water", p => p.Last.Method == MethodKind.Wash),
        Whole("warm-air", p => p.Methods.Any(m => m.Method == MethodKind.WashAndDry)),
        new("water-as-warm-as-chosen", WaterAsWarmAsChosen) { Slots = ["limit", "example", "burn"] },
        new("allergen", Allergen) { Slots = ["material"] },

        // What it needs around it.
        Whole("carried-water", p => p.Methods.Any(m => m.Water is { Plumbed: false })),
        Whole("mains-power", p => p.Methods.Any(m => m.Water is { NeedsSocket: true })),
        Whole("mounted", p => p.ChangesFixtures),
        Whole("plumbed-hose", p => p.Methods.Any(m => m is { Water.Plumbed: true, Reach: ReachKind.Jet })),
        Whole("seat-aid", p => p.Methods.Any(m => m is { Reach: ReachKind.None, Method: not MethodKind.Helper })),
        Whole("stays-put", p => p.Methods.Any(m => m is { Reach: ReachKind.None, Method: not MethodKind.Helper } or { ChangesFixtures: true })),
        Whole("needs-bin", p => p.Methods.Any(m => m.NeedsBin)),
        Whole("paper-or-bin", p => p.Methods.Any(m => m.Paper is not null || m.NeedsBin)),
        Whole("raised-seat", p => p.AddOns.Any(a => a.RoomGained is not null)),
        Whole("rail", p => p.AddOns.Any(a => a is { Steadies: true, ChangesFixtures: true })),
        Whole("footstool", p => p.AddOns.Any(a => a is { Steadies: true, ChangesFixtures: false })),
        Whole("folds-at-the-toilet", FoldsAtTheToilet),
        Whole("prepared-paper", p => p.AddOns.Any(a => a.PreparesPaper)),
    ];

    private static IEnumerable<PlanFeature> OfPosture() =>
    [
        // Posture and way.
        Whole("on-a-seat", p => p.Posture is Posture.Seated or Posture.SeatedLeaningForward),
        Whole("stands", p => p.Posture == Posture.Standing),
        Whole("half-stands", p => p.Posture == Posture.HalfStanding),
        Whole("posture-unsuited", p => p.Methods.Any(m => !m.Postures.Contains(p.Posture))),
        Whole("leans", Leans),
        new("fall-likely", c => RuleOutcome.If(FallRisk.Points(c) >= c.Value(EvidenceIds.FallsLikely))),
        new("fall-possible", c => RuleOutcome.If(FallRisk.Points(c) is > 0 and var points && points < c.Value(EvidenceIds.FallsLikely))),
        .. Precautions.Select(p => new PlanFeature("forbidden-by-" + p.Name, c => RuleOutcome.If(c.Demands.Need is { Allowed: false } need && need.ForbiddenBecause == p.Reason)) { DependsOnReach = true }),
        new("cannot-hold", CannotHold) { DependsOnReach = true },
        new("operated-side-cleans", c => RuleOutcome.If(!CleaningSide.IsSpared(c.Known))),
    ];

    private static IEnumerable<PlanFeature> OfReach() =>
    [
        // Reach.
        new("no-way", c => If(c.Demands.Need is { Allowed: true } need && need.SharePossible < c.Value(EvidenceIds.ReachLeastShare), c, c => [Way(c.Plan)])) { Slots = ["approach"], DependsOnReach = true },
        new("hand-seen-short", c => If(c.Demands.ByBareHand && c.Demands.SeenShort && Short(c), c, c => [Way(c.Plan)])) { Slots = ["approach"], DependsOnReach = true },
        new("hand-short", HandShort) { Slots = ["approach", "needed"], DependsOnReach = true },
        new("aid-short", AidShort) { Slots = ["approach", "length", "needed", "share"], DependsOnReach = true },
        new("length-unsure", c => Unsure(c, byHand: false)) { Slots = ["share"], DependsOnReach = true },
        new("hand-unsure", c => Unsure(c, byHand: true)) { Slots = ["share"], DependsOnReach = true },
        new("outside-the-survey", c => RuleOutcome.If(c.Demands is { Need: not null, OutsideSurvey: true })),
    ];

    private static IEnumerable<PlanFeature> OfHandAndMind() =>
    [
        // What the hand must do.
        Step("step-needs-two-hands", (c, o) => o.Obstacle == HandlingObstacle.NeedsTwoHands, _ => QuestionIds.HandsFree),
        Step("step-needs-a-grasp", (c, o) => o.Obstacle == HandlingObstacle.NoUsableGrasp, _ => QuestionIds.Grasp),
        Step("step-too-strong", (c, o) => o.Obstacle == HandlingObstacle.TooWeak && o.DemandNewtons > o.CapacityNewtons, Strength),
        Step("step-too-hard-to-repeat", (c, o) => o.Obstacle == HandlingObstacle.TooWeak && o.DemandNewtons <= o.CapacityNewtons, Strength),
        Step("step-too-fine", (c, o) => o.Obstacle == HandlingObstacle.NeedsFineHandling, _ => QuestionIds.Dexterity),
        new("squeezes-hard", SqueezesHard),
        new("near-the-limit-of-strength", NearTheLimit) { Slots = ["operation", "share"], DependsOnHand = true },
        new("cannot-fold", c => FoldingAhead.HandCannot(c.Known)),

        // What must be remembered and seen.
        new("steps-beyond-prompting", StepsBeyondPrompting) { Slots = ["steps", "follows", "prompting"] },
        new("steps-beyond-followed", c => StepsBeyond(c, c.Plan.Steps)) { Slots = ["steps", "follows"] },
        new("folding-beyond-followed", c => !c.Plan.AddOns.Any(a => a.PreparesPaper) ? RuleOutcome.No : StepsBeyond(c, c.Value(EvidenceIds.LearningPrepareSteps))) { Slots = ["steps", "follows"] },
        new("loaded-by-eye", c => RuleOutcome.If(c.Plan.Methods.Any(m => m.NeedsSight.Value >= c.Value(EvidenceIds.LearningSightMatters)))),
        new("wide-head", c => RuleOutcome.If(c.Plan.Aid.TipWidth is { } width && width.Value > c.Value(EvidenceIds.CleaningTooWide))),
    ];

    private static PlanFeature Whole(string name, Func<Plan, bool> has) => new(name, c => RuleOutcome.If(has(c.Plan)));

    /// <summary>A pad for a tool is folded, unless it lies ready; the bare hand can bunch its paper, and a strip that is wrapped stays open.</summary>
    private static bool FoldsAtTheToilet(Plan plan) => plan.Methods.Any(m =>
        m is { Reach: ReachKind.Handle, Paper.Hold: PaperHold.Tuck } || (m is { Reach: ReachKind.Handle, Paper.Hold: PaperHold.Pad } && !plan.AddOns.Any(a => a.PreparesPaper)));

    private static bool IsMoistWipe(Aid aid) => aid is { NeedsBin: true, Method: MethodKind.Wipe };

    private static Slot Way(Plan plan) => new("approach", 0, Dimension.Number, plan.Approach is { } approach ? Words.Of(approach) : null);

    private static RuleOutcome WaterAsWarmAsChosen(RuleContext c)
    {
        if (!c.Plan.Methods.Any(m => m.Water is { CanBeWarm: true, LimitsTemperature: false }))
        {
            return RuleOutcome.No;
        }

        // Where nobody knows whether heat is felt, and for old skin, the limit is that of skin that does not feel it.
        double example = c.Value(EvidenceIds.ScaldExample);
        return RuleOutcome.Yes.With(
            new Slot("limit", c.Knowledge.Water.LimitCelsius(HeatSense.BurnsSooner(c.Known, c.Value(EvidenceIds.ScaldOld))), Dimension.Temperature),
            new Slot("example", example, Dimension.Temperature),
            new Slot("burn", c.Knowledge.Water.Burns.At(example).Seconds, Dimension.Time));
    }

    private static RuleOutcome Allergen(RuleContext c)
    {
        foreach (var (material, allergy) in Allergens)
        {
            if (c.Plan.Touches(material))
            {
                var outcome = c.Has(allergy);
                if (outcome.Applies != false)
                {
                    return outcome.With(new Slot("material", 0, Dimension.Number, material));
                }
            }
        }

        return RuleOutcome.No;
    }

    private static RuleOutcome CannotHold(RuleContext c) =>
        RuleOutcome.If(c.Demands.Need is { Allowed: false } need && !Precautions.Any(p => p.Reason == need.ForbiddenBecause))
        | (c.Plan.Approach == Approach.Side && c.Plan.Posture is (Posture.Seated or Posture.SeatedLeaningForward) ? LeansToNoSide(c) : RuleOutcome.No);

    private static RuleOutcome LeansToNoSide(RuleContext c) =>
        c.Known.Choice(QuestionIds.Lean) is { } lean ? RuleOutcome.If(lean is Lean.Forward or Lean.NotAtAll) : RuleOutcome.Unclear(QuestionIds.Lean);

    private static bool Short(RuleContext c) =>
        c.Demands.Need is { Allowed: true } need && need.SharePossible >= c.Value(EvidenceIds.ReachLeastShare) && c.Demands.ReachShare < c.Value(EvidenceIds.ReachLeastShare);

    private static RuleOutcome HandShort(RuleContext c) =>
        If(c.Demands is { ByBareHand: true, SeenShort: false } && Short(c), c, static c =>
            [Way(c.Plan), new Slot("needed", c.Demands.Need?.MissingForBareHand ?? 0, Dimension.Length)]);

    private static RuleOutcome AidShort(RuleContext c) =>
        If(!c.Demands.ByBareHand && Short(c), c, static c =>
        [
            Way(c.Plan),
            new Slot("length", c.Demands.GivenLength, Dimension.Length),
            new Slot("needed", c.Demands.Need?.MedianLength ?? 0, Dimension.Length),
            new Slot("share", c.Demands.ReachShare, Dimension.Number),
        ]);

    private static RuleOutcome Unsure(RuleContext c, bool byHand) =>
        If(c.Demands.Need is not null && c.Demands.ByBareHand == byHand && c.Demands.ReachShare < c.Value(EvidenceIds.ReachSureShare), c, static c =>
            [new Slot("share", c.Demands.ReachShare, Dimension.Number)]);

    /// <summary>It applies, with the numbers of the case, or not: those of a case that is none are never made.</summary>
    private static RuleOutcome If(bool applies, RuleContext c, Func<RuleContext, ImmutableArray<Slot>> slots) =>
        applies ? RuleOutcome.Yes.With(slots(c)) : RuleOutcome.No;

    private static PlanFeature Step(string name, Func<RuleContext, OperationHandling, bool> fails, Func<OperationHandling, QuestionId> question) =>
        new(name, c => Failing(c, fails, question)) { Slots = ["operation", "force", "capacity"], DependsOnHand = true };

    /// <summary>What is assumed of a hand rules nothing out; it only lowers the value.</summary>
    private static RuleOutcome Failing(RuleContext c, Func<RuleContext, OperationHandling, bool> fails, Func<OperationHandling, QuestionId> question)
    {
        var outcome = c.Demands.Handling is { } main ? Failing(c, main, RuleOutcome.No, fails, question) : RuleOutcome.No;
        return outcome.Applies == true || c.Demands.CompanionHandling is not { } companion ? outcome : Failing(c, companion, outcome, fails, question);
    }

    private static RuleOutcome Failing(
        RuleContext c, HandlingAssessment handling, RuleOutcome unclear, Func<RuleContext, OperationHandling, bool> fails, Func<OperationHandling, QuestionId> question)
    {
        foreach (var operation in handling.Operations)
        {
            if (!fails(c, operation))
            {
                continue;
            }

            if (c.Known.Knows(question(operation)))
            {
                return RuleOutcome.Yes.With(
                    new Slot("operation", 0, Dimension.Number, Words.Of(operation.Kind)),
                    new Slot("force", operation.DemandNewtons > operation.CapacityNewtons ? Math.Ceiling(operation.DemandNewtons) : operation.DemandNewtons, Dimension.Force),
                    new Slot("capacity", operation.DemandNewtons > operation.CapacityNewtons ? Math.Floor(operation.CapacityNewtons) : operation.CapacityNewtons, Dimension.Force));
            }

            unclear |= RuleOutcome.Unclear(question(operation));
        }

        return unclear;
    }

    /// <summary>The measurement that would settle how strong the hand is in the grasp that was used.</summary>
    private static QuestionId Strength(OperationHandling operation) => operation.GraspUsed == Grasp.FinePinch ? QuestionIds.Pinch : QuestionIds.Grip;

    private static RuleOutcome SqueezesHard(RuleContext c) => RuleOutcome.If(c.Plan.Methods.Any(m => m.Operations.Any(o =>
        o.Force.Value > c.Value(EvidenceIds.GripLight) && !o.AgainstTheBody && o.Grasps.All(g => g is Grasp.FinePinch or Grasp.WholeHand))));

    private static RuleOutcome NearTheLimit(RuleContext c) =>
        c.Demands.Hardest is { Possible: true, Band: EffortBand.Caution or EffortBand.Poor } hardest
            ? RuleOutcome.Yes.With(
                new Slot("operation", 0, Dimension.Number, Words.Of(hardest.Kind)), new Slot("share", hardest.ShareOfAcceptable, Dimension.Number))
            : RuleOutcome.No;

    private static RuleOutcome StepsBeyond(RuleContext c, double steps) =>
        c.Known.Choice(QuestionIds.Steps) is not { } choice ? (steps > 1 ? RuleOutcome.Unclear(QuestionIds.Steps) : RuleOutcome.No)
        : If(steps > Follows(c, choice), c, c => [new Slot("steps", steps, Dimension.Number), new Slot("follows", Follows(c, choice), Dimension.Number)]);

    private static RuleOutcome StepsBeyondPrompting(RuleContext c)
    {
        var beyond = StepsBeyond(c, c.Plan.Steps);
        var nobody = c.Is(OptionIds.HelperNever);
        return beyond.Applies != true ? beyond
            : (nobody | RuleOutcome.If(c.Plan.Steps > Follows(c, c.Known.Choice(QuestionIds.Steps)!) + c.Value(EvidenceIds.LearningPromptMost)))
                .With([.. beyond.Slots, new("prompting", 0, Dimension.Number, nobody.Applies == true ? "nobody" : "not-enough")]);
    }

    private static double Follows(RuleContext c, string choice) => PersonView.StepsFollowed(c.Knowledge.Evidence, choice);
}
