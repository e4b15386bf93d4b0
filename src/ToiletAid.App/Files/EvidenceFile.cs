using System.Collections.Immutable;
using ToiletAid.Core.Evidence;

namespace ToiletAid.App.Files;

/// <summary>Numbers with their origin, as in the file.</summary>
internal sealed record EvidenceFile(ImmutableSortedDictionary<string, Sourced> Numbers);
