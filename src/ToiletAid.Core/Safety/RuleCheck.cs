namespace ToiletAid.Core.Safety;

/// <summary>The condition of a rule.</summary>
/// <param name="Id">Id of the rule.</param>
/// <param name="Check">The condition.</param>
/// <param name="HangsOnHand">True when it looks at what the hand does, which is drawn together with the values.</param>
/// <param name="HangsOnReach">True when it looks at how far the hand reaches.</param>
public sealed record RuleCheck(string Id, Func<RuleContext, RuleOutcome> Check, bool HangsOnHand = false, bool HangsOnReach = false);
