using System.Collections.Immutable;
using ToiletAid.Core.Evidence;

namespace ToiletAid.App.Files;

/// <summary>Numbers of paper, water and cost, as in the file.</summary>
internal sealed record SuppliesFile(ImmutableSortedDictionary<string, Sourced> Numbers, StoolFile Stool, BurnsFile Burns);
