using System.Collections.Immutable;

namespace ToiletAid.Core.Panels;

/// <summary>How one rater ranked the cases.</summary>
/// <param name="Name">What the rater is called, such as the name of the file.</param>
/// <param name="Places">For each case the place of each kind, from 1, equals allowed; null for a kind that does not suit.</param>
public sealed record Rater(string Name, ImmutableArray<ImmutableArray<int?>> Places);
