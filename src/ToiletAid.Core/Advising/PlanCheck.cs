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
    /// <summary>Looks at a plan.</summary>
    /// <param name="knowledge">What is known beforehand.</param>
    /// <param name="hands">Rules and what the hand can do.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="most">Reasons after which the rest is not looked at.</param>
    internal static PlanCheck Of(KnowledgeBase knowledge, HandTasks hands, Plan plan, int most = int.MaxValue)
    {
        var settled = hands.Settled(plan);
        var demands = hands.Appraiser.Demands(plan, settled.Reach);
        var context = new RuleContext(knowledge, hands.Appraiser.Known, plan, demands);
        var withGrip = hands.WithGrip(plan);
        List<Finding>? reasons = null;
        List<RuleCheck>? unclear = null;
        var rules = hands.MayRuleOut.AsSpan();
        for (int i = 0; i < rules.Length && (reasons?.Count ?? 0) < most; i++)
        {
            var (rule, exposed) = rules[i];
            var kept = !rule.DependsOnGrip ? (rule.OfTools ? settled.OfTools : settled.Outcomes) : rule.OfTools ? withGrip : null;
            var outcome = kept?[i] ?? rule.Check(context, exposed);
            kept?[i] = outcome;
            if (outcome.Applies == true)
            {
                (reasons ??= []).Add(new(rule.Rule, outcome.Slots));
                settled.IsRefused |= !rule.DependsOnGrip;
            }
            else if (outcome.Applies is null)
            {
                (unclear ??= []).Add(rule);
            }
        }

        return new(demands, reasons is null ? [] : [.. reasons], unclear is null ? [] : [.. unclear]);
    }
}
