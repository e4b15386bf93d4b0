using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Advising;

/// <summary>What comes out for one person.</summary>
public sealed record Advice
{
    /// <summary>How often a first place like this one held in simulated visits once everything was asked, 0 to 1; 0 without one.</summary>
    public double Held { get; init; }

    /// <summary>Red flags; when there is one, nothing is ranked.</summary>
    public required ImmutableArray<Finding> Stops { get; init; }

    /// <summary>The best plan of each method, best first.</summary>
    public required ImmutableArray<RankedPlan> Ranked { get; init; }

    /// <summary>Methods of which no plan can be offered.</summary>
    public required ImmutableArray<RuledOutAid> RuledOut { get; init; }

    /// <summary>Mean of the weights that the priorities allow, in the order of the criteria; they add up to 1. Expected values rest on it.</summary>
    public required ImmutableArray<double> Weights { get; init; }

    /// <summary>True when the person stated an order of priorities.</summary>
    public required bool PrioritiesStated { get; init; }

    /// <summary>Warnings that hold for every plan alike, most serious first. They stand with each plan too.</summary>
    public ImmutableArray<Finding> ForEveryPlan { get => field.IsDefault ? [] : field; init; }

    /// <summary>False while it is not known whether there is a red flag: then nothing is sure.</summary>
    public bool SignsKnown => !ForEveryPlan.Any(f => f.Rule.Id == RuleIds.SignsNotKnown);

    /// <summary>Whether an aid is needed at all.</summary>
    public AidNeed Need =>
        Ranked.IsEmpty ? AidNeed.NothingOffered
        : Ranked[0] is { Plan.Aid.Reach: ReachKind.BareHand } first ? (IsSure(first) ? AidNeed.No : AidNeed.TryHandFirst)
        : Ranked.Any(p => p.Plan.Aid.Reach == ReachKind.BareHand) ? AidNeed.Better
        : AidNeed.Yes;

    /// <summary>What can be arranged where nothing can be offered, the simplest first; each once.</summary>
    public IEnumerable<string> ToArrange => Ranked.IsEmpty && Stops.IsEmpty
        ? RuledOut.SelectMany(r => r.Reasons).Where(f => f.Rule.Arrange is not null).OrderBy(f => f.Rule.Severity).Select(f => f.Rule.Arrange!).Distinct(StringComparer.Ordinal)
        : [];

    /// <summary>Reach of the person; null when a red flag stopped everything.</summary>
    public ReachReport? Reach { get; init; }

    /// <summary>How much the first place depends on a grip that was not measured; null when it was, or where <see cref="AdviceSettings.AsksGrip"/> is false.</summary>
    public GripDependence? Grip { get; init; }

    private static bool IsSure(RankedPlan plan) => plan.Plan.Companion is null && !plan.Cautions.Any(c => c.Rule.Id == RuleIds.HandNotSure || c.Rule.Id == RuleIds.StrengthNearLimit);
}
