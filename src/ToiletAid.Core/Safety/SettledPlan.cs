using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Safety;

/// <summary>What is the same of a plan whatever the grip.</summary>
/// <param name="Reach">What it asks of the reach.</param>
/// <param name="Outcomes">What each rule says that does not depend on the grip, in the order of <see cref="HandTasks.MayRuleOut"/>; null where it was not asked.</param>
/// <param name="OfTools">The same of rules that look at nothing but what is used in it, shared with every plan in which that is used.</param>
internal sealed record SettledPlan(PlanDemands Reach, RuleOutcome?[] Outcomes, RuleOutcome?[] OfTools)
{
    /// <summary>True where a rule that does not depend on the grip was seen to rule it out.</summary>
    internal bool IsRefused { get; set; }
}
