using System.Collections.Immutable;

namespace ToiletAid.Core.Interview;

/// <summary>One answer that can be chosen.</summary>
/// <param name="Id">Stable id, kebab-case.</param>
/// <param name="Label">How it is read, 30 characters at most, so that it is whole on a narrow screen and a braille display.</param>
/// <param name="Share">How often it is expected among people who are assessed, 0 to 1; an estimate, used only while the answer is not known.</param>
/// <param name="Meaning">The same in full where the label is short for something longer; listed in questions on safety, read out in help elsewhere.</param>
/// <param name="Was">Ids under which earlier versions kept it, which are still read.</param>
public sealed record Option(string Id, string Label, double Share = 0, string? Meaning = null, ImmutableArray<string>? Was = null);
