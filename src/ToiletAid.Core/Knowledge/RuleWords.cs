namespace ToiletAid.Core.Knowledge;

/// <summary>What a rule says where the person's own hands cannot do what it asks for.</summary>
/// <param name="Text">What is said; it says who or what does it instead.</param>
/// <param name="Brief">What to do, in at most twelve words.</param>
/// <param name="Person">What is said to the person, in plain words.</param>
/// <param name="Helper">What is said to a helper, where it is not the same as otherwise.</param>
public sealed record RuleWords(string Text, string Brief, string Person, string? Helper = null);
