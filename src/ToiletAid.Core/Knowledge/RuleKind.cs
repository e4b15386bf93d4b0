namespace ToiletAid.Core.Knowledge;

/// <summary>What follows when a rule applies.</summary>
public enum RuleKind
{
    /// <summary>Nothing is ranked: this is for a doctor.</summary>
    Stop,

    /// <summary>The plan is not offered.</summary>
    RulesOut,

    /// <summary>The plan is offered with a warning.</summary>
    Caution,
}
