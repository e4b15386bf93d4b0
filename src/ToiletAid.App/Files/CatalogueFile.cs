using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;

namespace ToiletAid.App.Files;

/// <summary>Kinds of aid, built in or of a clinic, as in the file.</summary>
/// <param name="Format">How the file is to be read.</param>
/// <param name="Aids">The kinds.</param>
/// <param name="AddOns">What combines with them.</param>
/// <param name="Prices">Prices of what is used up, where a clinic sets them.</param>
/// <param name="Basis">What kind of knowledge the counts of hands, sheets and steps are; a clinic may leave it out.</param>
/// <param name="Source">Where they come from.</param>
internal sealed record CatalogueFile(int Format, ImmutableArray<Aid> Aids, ImmutableArray<AddOn> AddOns, PricesFile? Prices = null, Basis? Basis = null, string? Source = null);
