using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Safety;

namespace ToiletAid.Core.Advising;

/// <summary>A plan that nothing known rules out.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Demands">What it asks for.</param>
/// <param name="Unclear">Rules that would rule it out if an answer that is not known turned out badly.</param>
/// <param name="Otherwise">What rules the kind out as it usually is, where only a variant is possible; empty otherwise.</param>
internal sealed record Offer(Plan Plan, PlanDemands Demands, ImmutableArray<RuleCheck> Unclear, ImmutableArray<Finding> Otherwise)
{
    internal Offer(Plan plan, PlanDemands demands, ImmutableArray<RuleCheck> unclear)
        : this(plan, demands, unclear, [])
    {
    }

    /// <summary>Other articles of its kind that a plan is allowed with, the best first.</summary>
    internal ImmutableArray<Aid> AlsoFits { get; init; } = [];
}
