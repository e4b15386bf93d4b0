using System.Collections.Immutable;
using System.Globalization;
using Humanizer;
using ToiletAid.App.Documents;
using ToiletAid.App.Wording;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Teaching;

/// <summary>What the design of kinds means, feature by feature, read off their attributes, so that no sentence can disagree with a number.</summary>
/// <param name="evidence">Limits from which a number is called much or little.</param>
internal sealed class KindFeatures(EvidenceTable evidence)
{
    /// <summary>Up to this share of its length in the bag a kind is said to fold (decision); what is longer may still fold, since a grip has a length too.</summary>
    private const double Folds = 0.9;

    /// <summary>Shares from which an aid is easily cleaned, and from which it takes a little work (decision).</summary>
    private const double EasilyCleaned = 0.8;
    private const double LittleWork = 0.7;

    /// <summary>Shares of soil touched up to which the hand stays clean, and up to which it mostly does (decision).</summary>
    private const double StaysClean = 0.1;
    private const double MostlyClean = 0.5;

    /// <summary>Weight of a kilogram, N (standard gravity, CGPM 1901).</summary>
    private const double NewtonsOfAKilogram = 9.80665;

    /// <summary>Grasps, the least demanding first.</summary>
    private static readonly ImmutableArray<Grasp> LeastFirst = [Grasp.PressWithForearm, Grasp.PressWithPalmOrFist, Grasp.WholeHand, Grasp.FinePinch];

    /// <summary>The features of these kinds, in one order.</summary>
    internal ImmutableArray<SideBySideRow> Of(IReadOnlyCollection<Aid> kinds)
    {
        SideBySideRow Row(string feature, string meaning, Func<Aid, string> says) => new(feature, meaning, [.. kinds.Select(says)]);
        return
        [
            Row("Length", "A long one gets there when the arm does not. A short one is easier to steer.", Length),
            Row("Curve", "A curve goes round the body. A straight one needs more length.", Curve),
            Row("Head", "A narrow head gets into the cleft. A soft one is kind to the skin.", Head),
            Row("Cover of the head", "A head that paper covers stays clean and feels less hard.", Cover),
            Row("Putting paper in", "This can be the hardest part for stiff fingers.", Load),
            Row("Letting go", "Who lets go with a push or a press need not touch used paper.", LetGo),
            Row("Strength and grip", "The hand must do this each time, also when it is tired.", Strength),
            Row("Taking it along", "A small one fits in a bag. A light one tires the hand less.", Carry),
            Row("Washing it", "What is hard to wash is soon put away.", Wash),
            Row("Where and how it is used", "The more ways, the more people and places it fits.", Use),
            Row("Wet or dry", "Water is kind to sore skin. Wet skin must be dried.", Wet),
            Row("Water and power", "What is fitted to the toilet stays there and takes a trained fitter.", Services),
            Row("Steps and sight", "Few steps are soon learned. Some parts go by eye.", Mind),
            Row("Other forms", "Articles of one kind differ. What is said above is of the usual form.", Forms),
        ];
    }

    private static string Forms(Aid aid) => aid.Variants.IsEmpty ? "comes in one form." : $"also comes {aid.Variants.Select(v => v.Has).Humanize("or")}.";

    private static string Length(Aid aid) => aid switch
    {
        { Method: MethodKind.Helper } => "needs no reach.",
        { Reach: ReachKind.None } => "stays under the seat, so no reach is needed.",
        { Length: null } => "adds no length to the arm.",
        { Length: { } l, JetReach: { } jet } => $"is about {Centimetres(l.Value)} long, from {Whole(l.Low)} to {Whole(l.High)}. Its water flies {Centimetres(jet.Value)} more.",
        { Length: { } l } => $"is about {Centimetres(l.Value)} long from grip to head, from {Whole(l.Low)} to {Whole(l.High)}.",
    };

    private static string Curve(Aid aid) =>
        aid.Length is null ? "has no handle." : aid.Shape == AidShape.Curved ? "is curved." : "is straight.";

    private string Head(Aid aid) => aid.Tip switch
    {
        Tip.Water => "touches the skin with water only.",
        Tip.Fingers => "puts fingers to the skin.",
        _ => $"has a {(aid.Tip == Tip.Soft ? "soft" : "hard")} head, {(aid.TipWidth is { } w ? $"{Centimetres(w.Value)} wide. That is {(w.Value > evidence.Value(EvidenceIds.CleaningTooWide) ? "wide" : "narrow")} for a cleft" : "of no stated width")}.",
    };

    private static string Cover(Aid aid) => aid switch
    {
        { Tip: Tip.Water } => "has no head to cover.",
        { Tip: Tip.Fingers } => $"{(aid.Paper is null ? "has a wipe" : "has paper")} between fingers and skin.",
        { Paper.Hold: PaperHold.Wrap } => "has paper all round its head.",
        { Paper.Hold: PaperHold.Tuck } => "has paper over its head, but not behind it.",
        { Paper: not null } => "holds a pad in front of its tip. The edges of the tip may stay bare.",
        _ => "takes no paper that covers its head.",
    };

    private static string Load(Aid aid)
    {
        if (aid.Method == MethodKind.Helper || Step(aid, OperationKind.Load) is not { } load)
        {
            return aid.Method == MethodKind.Helper ? "leaves the paper to the helper." : "takes no paper.";
        }

        string how = aid.Paper?.Hold switch
        {
            null => "takes a wipe in place of paper",
            PaperHold.Wrap => "takes paper wound round",
            PaperHold.Tuck => "takes paper with both ends tucked in",
            _ => "takes a folded pad of paper",
        };
        return $"{how}. That needs {(load.Hands == 2 ? "both hands" : "one hand")} and {Fine(load.Fine)} fine finger work.";
    }

    private static string LetGo(Aid aid)
    {
        string touched = aid.SoilTouched.Value <= StaysClean ? "The hand stays clean." : aid.SoilTouched.Value <= MostlyClean ? "The hand mostly stays clean." : "The hand touches used paper.";
        if (aid.Method == MethodKind.Helper || Step(aid, OperationKind.Release) is not { } release)
        {
            return aid.Method == MethodKind.Helper ? "leaves that to the helper." : $"has nothing to let go. {touched}";
        }

        string how = release.Act switch
        {
            HandAct.PushAgainstThigh => $"lets go when it is pushed on the thigh. The push is {Force(release)}.",
            HandAct.PressLever => $"lets go when a lever is pressed. The press is {Force(release)}.",
            HandAct.Squeeze => $"lets go when the handle is squeezed. The squeeze is {Force(release)}.",
            HandAct.PinchAndTuck => "has the paper taken off with the fingers.",
            HandAct.WipeByHand => "just drops what it holds.",
            _ => "lets go when the hand opens.",
        };
        return $"{how} {touched}";
    }

    private static string Strength(Aid aid)
    {
        if (aid.Operations.IsEmpty)
        {
            return "asks nothing of the hand.";
        }

        var hardest = aid.Operations.MaxBy(o => o.Force.Value)!;
        var least = aid.Operations.Select(o => LeastFirst.First(o.Grasps.Contains)).MaxBy(g => LeastFirst.IndexOf(g));
        string grip = least switch
        {
            Grasp.PressWithForearm => "can be worked with the forearm.",
            Grasp.PressWithPalmOrFist => "can be worked with palm or fist.",
            Grasp.WholeHand => "takes a grip with the whole hand.",
            _ => "takes a fine pinch.",
        };
        string cuff = aid.AddOns.Contains("hand-cuff") ? " A strap can do the holding." : string.Empty;
        return $"{grip} Its hardest part, {Doing(aid, hardest)}, takes {Force(hardest)}.{cuff}";
    }

    private static string Carry(Aid aid)
    {
        if (aid.FoldedLength is not { } folded)
        {
            return aid.Reach == ReachKind.BareHand ? "is always at hand." : aid.Method == MethodKind.Helper ? "must be there each time." : "stays at the toilet.";
        }

        string weight = aid.Mass.Value > 0 ? $" and weighs {Math.Round(aid.Mass.Value * 1000).ToString(CultureInfo.InvariantCulture)} grams" : string.Empty;
        return aid.Length is { } l && folded.Value < Folds * l.Value
            ? $"folds or comes apart to {Centimetres(folded.Value)}{weight}."
            : $"is {Centimetres(folded.Value)} long in the bag{weight}.";
    }

    private static string Wash(Aid aid)
    {
        if (Step(aid, OperationKind.Wash) is not { } wash)
        {
            return aid.Tip == Tip.Fingers ? "needs clean hands, and nothing else." : "is wiped down with the toilet.";
        }

        string ease = aid.EasyToClean.Value >= EasilyCleaned ? "is soon washed" : aid.EasyToClean.Value >= LittleWork ? "takes a little work to wash" : "takes some work to wash";
        return $"{ease}, in about {Math.Round(wash.Duration.Value).ToString(CultureInfo.InvariantCulture)} seconds.";
    }

    private static string Use(Aid aid)
    {
        string[] ways = [.. ((string?[])[Any(aid, Posture.Seated, Posture.SeatedLeaningForward) ? "sitting" : null, Any(aid, Posture.HalfStanding, Posture.Standing) ? "standing" : null, Any(aid, Posture.SideLying, Posture.Reclined) ? "lying" : null]).OfType<string>()];
        string sides = aid.Approaches.IsEmpty ? string.Empty : ", " + aid.Approaches.Select(PlanText.Way).Humanize("and");
        string then = aid.Companions.IsEmpty ? string.Empty : aid.Water is null ? " A moist wipe can follow." : " Paper or a wiping aid can follow.";
        return $"works {ways.Humanize("and")}{sides}.{then}";
    }

    private static string Wet(Aid aid) => aid switch
    {
        { Method: MethodKind.WashAndDry } => "washes and then dries.",
        { Method: MethodKind.Wash } => "washes and leaves the skin wet.",
        { Method: MethodKind.Helper, Paper: not null } => "is done with paper.",
        { Paper: null } => "wipes moist.",
        _ => "wipes dry.",
    };

    private static string Services(Aid aid)
    {
        string bin = aid.NeedsBin ? " A bin with a lid must stand near." : string.Empty;
        if (aid.Water is not { } water)
        {
            return $"needs no water and no power.{bin}";
        }

        string from = water.Reservoir is { } r ? $"is filled with {Math.Round(r.Value * 1e6).ToString(CultureInfo.InvariantCulture)} millilitres of water" : "is joined to the water pipe";
        string power = water.NeedsSocket ? " It needs a safe socket." : string.Empty;
        string fitted = aid.ChangesFixtures ? " It must be fitted." : string.Empty;
        string warm = !water.CanBeWarm ? " The water is cold." : water.LimitsTemperature ? " It keeps the water from getting too hot." : " How warm the water is must be checked.";
        return $"{from}.{power}{fitted}{warm}{bin}";
    }

    private string Mind(Aid aid) => aid.Steps == 0
        ? "leaves every step to the helper."
        : $"has {"step".ToQuantity(aid.Steps)} to keep in mind. {(aid.NeedsSight.Value >= evidence.Value(EvidenceIds.LearningSightMatters) ? "It goes partly by eye." : "It goes by touch.")}";

    /// <summary>What a hand does in a step, as a noun.</summary>
    internal static string Doing(Aid aid, Operation step) => step.Kind switch
    {
        OperationKind.Fill => "filling it",
        OperationKind.Load => aid.Paper is null ? "taking a wipe" : "putting paper in",
        OperationKind.Hold => step.Act == HandAct.Squeeze ? "keeping it closed" : "holding it",
        OperationKind.Clean => step.Act switch
        {
            HandAct.Squeeze => "squeezing it",
            HandAct.PressLever => "pressing it",
            _ => "wiping with it",
        },
        OperationKind.Release => "letting go",
        _ => "washing it",
    };

    /// <summary>A force in newtons, and as a weight that everybody has lifted.</summary>
    internal static string Force(Operation step)
    {
        string kilograms = Math.Round(step.Force.Value / NewtonsOfAKilogram, 1).ToString("0.#", CultureInfo.InvariantCulture);
        return $"{"newton".ToQuantity((int)Math.Round(step.Force.Value))}, as heavy as {kilograms} {(kilograms == "1" ? "kilogram" : "kilograms")}";
    }

    internal static string Fine(FineHandling fine) => fine switch
    {
        FineHandling.None => "no",
        FineHandling.Some => "some",
        _ => "much",
    };

    private static string Centimetres(double metres) => $"{Whole(metres)} centimetres";

    private static string Whole(double metres) => Math.Round(metres * 100, 1).ToString("0.#", CultureInfo.InvariantCulture);

    private static bool Any(Aid aid, params ReadOnlySpan<Posture> postures)
    {
        foreach (var posture in postures)
        {
            if (aid.Postures.Contains(posture))
            {
                return true;
            }
        }

        return false;
    }

    private static Operation? Step(Aid aid, OperationKind kind) => aid.Operations.FirstOrDefault(o => o.Kind == kind) is { } step
        ? step with { Act = step.Act ?? HandActs.Usual(kind, step.Grasps, step.AgainstTheBody, aid.Reach) }
        : null;
}
