using System.Collections.Immutable;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Advising;

/// <summary>What comes out for one person.</summary>
public sealed record Advice
{
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

    /// <summary>Reach of the person; null when a red flag stopped everything.</summary>
    public ReachReport? Reach { get; init; }

    /// <summary>How much the first place depends on a grip that was not measured; null when it was, or where <see cref="AdviceSettings.AsksGrip"/> is false.</summary>
    public GripDependence? Grip { get; init; }
}
