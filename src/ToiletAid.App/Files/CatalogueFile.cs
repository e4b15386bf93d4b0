using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;

namespace ToiletAid.App.Files;

/// <summary>Kinds of aid, built in or of a clinic, as in the file.</summary>
internal sealed record CatalogueFile(int Format, ImmutableArray<Aid> Aids, ImmutableArray<AddOn> AddOns, PricesFile? Prices = null);
