namespace ToiletAid.App.Documents;

/// <summary>A rule in plain words.</summary>
/// <param name="Id">Id of the rule.</param>
/// <param name="Person">What is said to the person.</param>
/// <param name="Helper">What is said to a helper, where it is not the same.</param>
public sealed record PlainRule(string Id, string Person, string? Helper = null);
