namespace ToiletAid.Core.Safety;

/// <summary>The condition of a rule.</summary>
/// <param name="Id">Id of the rule.</param>
/// <param name="Check">The condition.</param>
public sealed record RuleCheck(string Id, Func<RuleContext, RuleOutcome> Check);
