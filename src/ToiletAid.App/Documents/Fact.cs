namespace ToiletAid.App.Documents;

/// <summary>A label and what belongs to it.</summary>
/// <param name="Label">The label, without a colon.</param>
/// <param name="Value">What belongs to it; empty for a line to fill in by hand.</param>
public sealed record Fact(string Label, string Value);
