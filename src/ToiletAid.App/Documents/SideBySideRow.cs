using System.Collections.Immutable;

namespace ToiletAid.App.Documents;

/// <summary>One feature of several things.</summary>
/// <param name="Feature">What it is called.</param>
/// <param name="Meaning">What it means, a sentence or two.</param>
/// <param name="Says">What holds for each, in the order of the things, as a sentence without its subject, such as "is curved."</param>
public sealed record SideBySideRow(string Feature, string Meaning, ImmutableArray<string> Says);
