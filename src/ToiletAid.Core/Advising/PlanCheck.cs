using System.Collections.Immutable;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Safety;

namespace ToiletAid.Core.Advising;

/// <summary>What the rules say of a plan.</summary>
/// <param name="Demands">What the plan asks for.</param>
/// <param name="Reasons">What rules it out; empty when nothing does.</param>
/// <param name="Unclear">Rules that cannot tell yet.</param>
internal sealed record PlanCheck(PlanDemands Demands, ImmutableArray<Finding> Reasons, ImmutableArray<RuleCheck> Unclear)
{
    internal static PlanCheck Of(KnowledgeBase knowledge, HazardTable hazards, Appraiser appraiser, Plan plan)
    {
        var demands = appraiser.Demands(plan);
        var context = new RuleContext(knowledge, appraiser.Known, plan, demands);
        var reasons = ImmutableArray.CreateBuilder<Finding>();
        var unclear = ImmutableArray.CreateBuilder<RuleCheck>();
        foreach (var rule in hazards.RulesOut)
        {
            var outcome = rule.Check(context);
            if (outcome.Applies == true)
            {
                reasons.Add(new(rule.Rule, outcome.Slots));
            }
            else if (outcome.Applies is null)
            {
                unclear.Add(rule);
            }
        }

        return new(demands, reasons.ToImmutable(), unclear.ToImmutable());
    }
}
