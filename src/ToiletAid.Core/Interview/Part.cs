namespace ToiletAid.Core.Interview;

/// <summary>One of several numbers under one question.</summary>
/// <param name="Id">Stable id, kebab-case.</param>
/// <param name="Label">How it is read.</param>
/// <param name="Number">What numbers it takes.</param>
public sealed record Part(string Id, string Label, NumberSpec Number);
