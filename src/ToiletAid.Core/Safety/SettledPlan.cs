using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Safety;

/// <summary>What is the same of a plan whatever the grip.</summary>
/// <param name="Reach">What it asks of the reach.</param>
/// <param name="Outcomes">What each rule says that depends neither on the grip nor on tools alone.</param>
internal sealed record SettledPlan(PlanDemands Reach, RuleOutcomes Outcomes);
