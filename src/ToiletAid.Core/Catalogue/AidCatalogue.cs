using System.Collections.Immutable;

namespace ToiletAid.Core.Catalogue;

/// <summary>Kinds of aid and add-ons that plans are made of.</summary>
/// <param name="Aids">Aids and methods.</param>
/// <param name="AddOns">Add-ons.</param>
public sealed record AidCatalogue(ImmutableArray<Aid> Aids, ImmutableArray<AddOn> AddOns);
