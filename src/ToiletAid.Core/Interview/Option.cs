namespace ToiletAid.Core.Interview;

/// <summary>One answer that can be chosen.</summary>
/// <param name="Id">Stable id, kebab-case.</param>
/// <param name="Label">How it is read.</param>
/// <param name="Share">How often it is expected among people who are assessed, 0 to 1; an estimate, used only while the answer is not known.</param>
public sealed record Option(string Id, string Label, double Share = 0);
