using System.Collections.Immutable;

namespace ToiletAidTui.Keys;

/// <summary>Keys that a reader, a terminal or a browser keeps for itself.</summary>
/// <param name="Who">Whose keys they are.</param>
/// <param name="Keys">The keys, as <see cref="KeyMap"/> names them.</param>
/// <param name="Source">What more is to be said, and where it is from, as sentences.</param>
internal sealed record TakenRow(string Who, ImmutableArray<string> Keys, string Source);
