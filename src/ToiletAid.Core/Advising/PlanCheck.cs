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
    private static readonly PlanDemands Unasked = new();

    /// <summary>Looks at a plan.</summary>
    /// <param name="knowledge">What is known beforehand.</param>
    /// <param name="hands">Rules and what the hand can do.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="most">Reasons after which the rest is not looked at. Where so many are known of plans with the same tools, the demands are not told either.</param>
    internal static PlanCheck Of(KnowledgeBase knowledge, HandTasks hands, Plan plan, int most = int.MaxValue)
    {
        RuleOutcomes ofTools = hands.OfTools(plan), ofToolsAndGrip = hands.OfToolsAndGrip(plan);
        if (ofTools.Applying + ofToolsAndGrip.Applying >= most)
        {
            return new(Unasked, AsKnown(hands, ofTools, ofToolsAndGrip), []);
        }

        var settled = hands.Settled(plan);
        var demands = hands.Appraiser.Demands(plan, settled.Reach);
        var context = new RuleContext(knowledge, hands.Appraiser.Known, plan, demands);
        List<Finding>? reasons = null;
        List<RuleCheck>? unclear = null;
        var rules = hands.MayRuleOut.AsSpan();
        for (int i = 0; i < rules.Length && (reasons?.Count ?? 0) < most; i++)
        {
            var (rule, exposed) = rules[i];
            var kept = rule.OfTools ? (rule.DependsOnGrip ? ofToolsAndGrip : ofTools) : rule.DependsOnGrip ? null : settled.Outcomes;
            var outcome = kept is null ? rule.Check(context, exposed) : kept.Of(i, rule, context, exposed);
            if (outcome.Applies == true)
            {
                (reasons ??= []).Add(new(rule.Rule, outcome.Slots));
            }
            else if (outcome.Applies is null)
            {
                (unclear ??= []).Add(rule);
            }
        }

        return new(demands, reasons is null ? [] : [.. reasons], unclear is null ? [] : [.. unclear]);
    }

    /// <summary>What other plans with the same tools were seen to be ruled out by.</summary>
    private static ImmutableArray<Finding> AsKnown(HandTasks hands, RuleOutcomes ofTools, RuleOutcomes ofToolsAndGrip)
    {
        var reasons = ImmutableArray.CreateBuilder<Finding>();
        for (int i = 0; i < hands.MayRuleOut.Length; i++)
        {
            if ((ofTools[i] ?? ofToolsAndGrip[i]) is { Applies: true } outcome)
            {
                reasons.Add(new(hands.MayRuleOut[i].Rule.Rule, outcome.Slots));
            }
        }

        return reasons.ToImmutable();
    }
}
