using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Water;

namespace ToiletAid.App.Files;

/// <summary>Burn times, as in the file.</summary>
internal sealed record BurnsFile(Basis Basis, string Source, ImmutableArray<BurnRow> Rows);
