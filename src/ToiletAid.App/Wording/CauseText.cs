using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.App.Wording;

/// <summary>Why one plan stands above another, as causes: what the person cannot do with the other, what reaches, what the skin is spared.</summary>
/// <remarks>A cause is told only where the two plans really differ in what it names.</remarks>
/// <param name="known">Answers as given.</param>
public sealed class CauseText(Answers known)
{
    /// <summary>Share of comfortable strength from which the number itself is worth telling (decision).</summary>
    private const double TellingShare = 0.3;

    /// <summary>The cause behind one criterion, as a sentence without a full stop; null where none can be named.</summary>
    /// <param name="criterion">The criterion that speaks for <paramref name="better"/>.</param>
    /// <param name="better">The plan above.</param>
    /// <param name="other">The plan below.</param>
    public string? Of(Criterion criterion, RankedPlan better, RankedPlan other)
    {
        ArgumentNullException.ThrowIfNull(better);
        ArgumentNullException.ThrowIfNull(other);
        string name = PlanText.The(other.Plan);
        if (other.Plan.Aid.Method == MethodKind.Helper)
        {
            // Beside another person's hands nothing else about the plan is the point.
            return better.Plan.Aid.Method == MethodKind.Helper ? null : "Nobody else has to do the cleaning";
        }

        if (better.Plan.Aid.Method == MethodKind.Helper && criterion is not (Criterion.Reach or Criterion.Handling or Criterion.Learning))
        {
            // Somebody else cleans because of what the person cannot do; how well their hands wipe is no cause.
            return null;
        }

        return criterion switch
        {
            Criterion.Reach => Reach(better, other, name),
            Criterion.Handling => Handling(better, other, name),
            Criterion.Cleaning => Cleaning(better.Plan, other.Plan, name),
            Criterion.Skin => Skin(better.Plan, other.Plan, name),
            Criterion.Contact => Contact(better.Plan, other.Plan, name),
            Criterion.Learning => Learning(better.Plan, other.Plan, name),
            Criterion.Carrying => Carrying(better.Plan, other.Plan, name),
            Criterion.Upkeep => Upkeep(better, other, name),
            Criterion.Independence => Independence(better, other, name),
            _ => null,
        };
    }

    private static string? Reach(RankedPlan better, RankedPlan other, string name)
    {
        string of = SlotText.OfHundred(other.Demands.ReachShare);
        return of == SlotText.OfHundred(better.Demands.ReachShare) || better.Demands.ReachShare < other.Demands.ReachShare
            ? null
            : $"{Capital(name)} would be long enough for only {of} of 100 people like this";
    }

    private static string? Handling(RankedPlan better, RankedPlan other, string name)
    {
        if (other.Demands.Hardest is not { } hardest || !double.IsFinite(hardest.ShareOfAcceptable))
        {
            return null;
        }

        double mine = better.Demands.Hardest?.ShareOfAcceptable ?? 0;
        string operation = SlotText.Operation(Words.Of(hardest.Kind)).ToLowerInvariant();
        return hardest.ShareOfAcceptable > TellingShare && hardest.ShareOfAcceptable > 1.2 * mine
            ? $"With {name}, {operation} takes {SlotText.OfHundred(hardest.ShareOfAcceptable)} percent of what this hand can comfortably give"
            : hardest.ShareOfAcceptable > mine && better.Plan.Aid.Method != MethodKind.Helper ? $"It is easier on the hand than {name}"
            : null;
    }

    private string? Cleaning(Plan better, Plan other, string name) =>
        better.Washing is not null && other.Washing is null ? $"Water cleans better here than {name}"
        : Deep && other.Aid.TipWidth is { } wide && better.Aid.TipWidth is { } narrow && narrow.Value < wide.Value
            ? $"Soil stays deep, and its head is narrower than that of {name}"
        : better.Companion is not null && other.Companion is null ? $"It cleans in two stages, and {name} in one"
        : better.Aid.Coverage.Value > other.Aid.Coverage.Value ? $"It covers more skin at once than {name}"
        : null;

    private static string? Skin(Plan better, Plan other, string name) =>
        other.Methods.Any(m => m.Tip == Tip.Hard) && better.Methods.All(m => m.Tip != Tip.Hard) ? $"Nothing hard touches the skin; the tip of {name} is hard"
        : better.Aid.Method == MethodKind.Wash && other.Aid.Method != MethodKind.Wash ? $"Water spares the skin the rubbing that comes with {name}"
        : better.Methods.Max(m => m.Rubbing.Value) < other.Methods.Max(m => m.Rubbing.Value) ? $"It rubs the skin less than {name}"
        : null;

    private static string? Contact(Plan better, Plan other, string name) =>
        better.Methods.Max(m => m.SoilTouched.Value) < other.Methods.Max(m => m.SoilTouched.Value) ? $"It keeps the hands cleaner than {name}"
        : better.Methods.Min(m => m.EasyToClean.Value) > other.Methods.Min(m => m.EasyToClean.Value) ? $"It is easier to clean than {name}"
        : null;

    private static string? Learning(Plan better, Plan other, string name) =>
        better.Aid.Method == MethodKind.Helper ? (other.Steps > 1 ? $"The person has no steps to follow; with {name} there are {other.Steps}" : null)
        : better.Steps < other.Steps ? $"It takes {"step".Counting(better.Steps)}, against {other.Steps} for {name}"
        : better.Methods.Max(m => m.NeedsSight.Value) < other.Methods.Max(m => m.NeedsSight.Value) ? $"It relies less on sight than {name}"
        : null;

    private static string? Carrying(Plan better, Plan other, string name)
    {
        // The hand and a person have nothing to carry, and so no length.
        bool nothing = better.Methods.All(m => m.Mass.Value == 0 && m.FoldedLength is null && m.Reach != ReachKind.None);
        if (nothing)
        {
            return $"There is nothing to carry; with {name} there is";
        }

        if (other.Methods.Any(m => m is { FoldedLength: null, Reach: ReachKind.None, Method: MethodKind.Wash }) && better.Methods.All(m => m.FoldedLength is not null))
        {
            return $"It can be carried; {name} stays at the toilet";
        }

        if (Longest(better) is { } mine && Longest(other) is { } theirs && SlotText.Centimetres(mine) is var length && length != SlotText.Centimetres(theirs) && mine < theirs)
        {
            return $"It folds to {length}, against {SlotText.Whole(theirs)} for {name}";
        }

        return better.Methods.Max(m => m.Noticeable.Value) < other.Methods.Max(m => m.Noticeable.Value) ? $"It draws less notice than {name}"
            : better.Methods.Max(m => m.Noise.Value) < other.Methods.Max(m => m.Noise.Value) ? $"It is quieter than {name}"
            : null;
    }

    private static string? Upkeep(RankedPlan better, RankedPlan other, string name) =>
        other.Plan.Methods.Any(m => m.ChangesFixtures) && better.Plan.Methods.All(m => !m.ChangesFixtures) ? $"Nothing needs fitting; {name} does"
        : better.Setup.MonthlyCost.Total < other.Setup.MonthlyCost.Total ? $"It costs less to run than {name}"
        : null;

    private static string? Independence(RankedPlan better, RankedPlan other, string name) =>
        better.Plan.Methods.Any(m => m.Method == MethodKind.Helper) ? null
        : Says(other, RuleIds.NeedsPrompting) && !Says(better, RuleIds.NeedsPrompting) ? $"Nobody has to prompt; with {name} somebody does"
        : Says(other, RuleIds.HelperFolds) && !Says(better, RuleIds.HelperFolds) ? $"Nobody has to fold the paper; with {name} somebody does"
        : null;

    private static bool Says(RankedPlan plan, RuleId caution) => plan.Cautions.Any(c => c.Rule.Id == caution);

    private bool Deep => known.Is(OptionIds.DeepYes);

    private static double? Longest(Plan plan) => plan.Methods.All(m => m.FoldedLength is not null) ? plan.Methods.Max(m => m.FoldedLength!.Value) : null;

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
