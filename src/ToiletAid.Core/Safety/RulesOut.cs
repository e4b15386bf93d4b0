using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Hand;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Quantities;

namespace ToiletAid.Core.Safety;

/// <summary>Conditions under which a plan is not offered, the plainest reason first.</summary>
internal static class RulesOut
{
    private static readonly ImmutableArray<string> Allergens = ["silicone", "latex", "nickel"];

    /// <summary>Rules on precautions, each with the reason that the reach computation gives for it.</summary>
    private static readonly ImmutableArray<(string Rule, string Reason)> Precautions =
    [
        ("hip-flexion-limit", "hip-flexion-limit"),
        ("no-twisting-or-bending", "no-twisting-or-bending"),
        ("sternal", "sternal"),
        ("shoulder-surgery", "shoulder-surgery"),
        ("no-weight-through-the-hand", "no-weight-through-hand"),
    ];

    internal static readonly ImmutableArray<RuleCheck> All =
    [
        new("no-helper", c => c.Plan.Methods.Any(m => m.Method == MethodKind.Helper) ? c.Is("helper", "never") : RuleOutcome.No),
        new("posture-not-in-this-place", PostureNotInThisPlace),
        new("allergy", Allergy),
        new("no-water", c => c.Plan.Methods.Any(m => m.Water is { Plumbed: false }) ? c.Is("water", "none") : RuleOutcome.No),
        new("no-socket", c => c.Plan.Methods.Any(m => m.Water is { NeedsSocket: true }) ? c.Is("socket", "no") | NotOwnToilet(c) : RuleOutcome.No),
        new("no-fixture-change", c => c.Plan.ChangesFixtures ? c.Is("fixtures", "no") | NotOwnToilet(c) : RuleOutcome.No),
        new("broken-skin-rubbing", BrokenSkinRubbing),
        .. Precautions.Select(p => new RuleCheck(p.Rule, c => Forbidden(c, p.Reason), HangsOnReach: true)),
        new("dizzy-when-leaning", c => Leans(c.Plan) ? c.Has("precautions", "dizzy-when-leaning") : RuleOutcome.No),
        new("cannot-hold-the-posture", CannotHold, HangsOnReach: true),
        new("no-way-to-the-skin", NoWay, HangsOnReach: true),
        new("hand-does-not-reach", HandDoesNotReach, HangsOnReach: true),
        new("too-short", TooShort, HangsOnReach: true),
        new("needs-two-hands", c => Obstacle(c, HandlingObstacle.NeedsTwoHands, "hands-free"), HangsOnHand: true),
        new("no-usable-grasp", c => Obstacle(c, HandlingObstacle.NoUsableGrasp, "grasp"), HangsOnHand: true),
        new("too-weak", c => Obstacle(c, HandlingObstacle.TooWeak, "grasp"), HangsOnHand: true),
        new("too-fine", c => Obstacle(c, HandlingObstacle.NeedsFineHandling, "dexterity"), HangsOnHand: true),
        new("too-many-steps", TooManySteps),
    ];

    /// <summary>True when the plan takes a lean that can cost balance.</summary>
    internal static bool Leans(Plan plan) =>
        plan.Posture is Posture.SeatedLeaningForward or Posture.HalfStanding || (plan.Approach == Approach.Side && plan.Posture is not (Posture.SideLying or Posture.Reclined));

    internal static double Follows(RuleContext c, string choice) => PersonView.StepsFollowed(c.Knowledge.Evidence, choice);

    private static Slot Way(Plan plan) => new("approach", 0, Dimension.Number, plan.Approach is { } approach ? Words.Of(approach) : null);

    private static RuleOutcome NotOwnToilet(RuleContext c) =>
        c.Known.Choice("place") is null ? RuleOutcome.No : !c.Is("place", "own-toilet");

    private static RuleOutcome PostureNotInThisPlace(RuleContext c)
    {
        if (c.Plan.Methods.Any(m => !m.Postures.Contains(c.Plan.Posture)))
        {
            return RuleOutcome.Yes;
        }

        // A seat that washes stays on one toilet; a commode or a bed has none.
        return c.Plan.Methods.Any(m => m is { Reach: ReachKind.None, Method: not MethodKind.Helper }) && c.Known.Choice("place") is not null
            ? c.Is("place", "commode", "bed", "shared-or-public-toilet")
            : RuleOutcome.No;
    }

    private static RuleOutcome Allergy(RuleContext c)
    {
        foreach (string material in Allergens)
        {
            if (c.Plan.Touches(material))
            {
                var outcome = c.Has("precautions", "allergy-" + material);
                if (outcome.Applies != false)
                {
                    return outcome.With(new Slot("material", 0, Dimension.Number, material));
                }
            }
        }

        return RuleOutcome.No;
    }

    private static RuleOutcome BrokenSkinRubbing(RuleContext c)
    {
        bool rubs = c.Plan.Aid.Method == MethodKind.Wipe && c.Plan.Aid.Rubbing.Value > c.Value("skin.rubbing-limit");
        return rubs ? c.Is("skin", "sore-or-broken", "pressure-injury", "surgical-wound") : RuleOutcome.No;
    }

    private static RuleOutcome Forbidden(RuleContext c, string reason) =>
        RuleOutcome.If(c.Demands.Need is { Allowed: false } need && need.ForbiddenBecause == reason);

    private static RuleOutcome CannotHold(RuleContext c) =>
        RuleOutcome.If(c.Demands.Need is { Allowed: false } need && !Precautions.Any(p => p.Reason == need.ForbiddenBecause))
        | (c.Plan.Approach == Approach.Side && c.Plan.Posture is (Posture.Seated or Posture.SeatedLeaningForward) ? c.Is("lean", "forward", "not-at-all") : RuleOutcome.No);

    private static RuleOutcome NoWay(RuleContext c) =>
        RuleOutcome.If(c.Demands.Need is { Allowed: true } need && need.SharePossible < c.Value("reach.least-share")).With(Way(c.Plan));

    private static bool Short(RuleContext c) =>
        c.Demands.Need is { Allowed: true } need && need.SharePossible >= c.Value("reach.least-share") && c.Demands.ReachShare < c.Value("reach.least-share");

    private static RuleOutcome HandDoesNotReach(RuleContext c) =>
        RuleOutcome.If(c.Demands.ByBareHand && Short(c)).With(
            Way(c.Plan), new Slot("needed", c.Demands.Need?.MissingForBareHand ?? 0, Dimension.Length));

    private static RuleOutcome TooShort(RuleContext c) =>
        RuleOutcome.If(!c.Demands.ByBareHand && Short(c)).With(
            Way(c.Plan),
            new Slot("length", c.Demands.GivenLength, Dimension.Length),
            new Slot("needed", c.Demands.Need?.MedianLength ?? 0, Dimension.Length),
            new Slot("share", c.Demands.ReachShare, Dimension.Number));

    private static RuleOutcome Obstacle(RuleContext c, HandlingObstacle obstacle, string question)
    {
        var failing = Failing(c.Demands.Handling, obstacle) ?? Failing(c.Demands.CompanionHandling, obstacle);
        if (failing is null)
        {
            return RuleOutcome.No;
        }

        // Assumed strength or grasp rules nothing out; it only lowers the value.
        return c.Known.Knows(question)
            ? RuleOutcome.Yes.With(
                new Slot("operation", 0, Dimension.Number, Words.Of(failing.Kind)),
                new Slot("force", failing.DemandNewtons, Dimension.Force))
            : RuleOutcome.Unclear(question);
    }

    private static OperationHandling? Failing(HandlingAssessment? handling, HandlingObstacle obstacle)
    {
        foreach (var operation in handling?.Operations ?? [])
        {
            if (operation.Obstacle == obstacle)
            {
                return operation;
            }
        }

        return null;
    }

    private static RuleOutcome TooManySteps(RuleContext c)
    {
        if (c.Known.Choice("steps") is not { } choice)
        {
            return c.Plan.Steps > 1 ? RuleOutcome.Unclear("steps") : RuleOutcome.No;
        }

        double follows = Follows(c, choice);
        double prompted = follows + c.Value("learning.prompt-most");
        return c.Plan.Steps <= follows
            ? RuleOutcome.No
            : (c.Is("helper", "never") | RuleOutcome.If(c.Plan.Steps > prompted)).With(
                new Slot("steps", c.Plan.Steps, Dimension.Number), new Slot("follows", follows, Dimension.Number));
    }
}
