using System.Collections.Immutable;

namespace ToiletAid.Core.Catalogue;

/// <summary>Kinds of aid and add-ons that plans are made of.</summary>
/// <param name="Aids">Aids and methods.</param>
/// <param name="AddOns">Add-ons.</param>
public sealed record AidCatalogue(ImmutableArray<Aid> Aids, ImmutableArray<AddOn> AddOns)
{
    /// <summary>This catalogue with a clinic's own stock laid over it: what has the same id is replaced in its place, the rest is added at the end.</summary>
    /// <param name="stock">The clinic's own.</param>
    public AidCatalogue Under(AidCatalogue stock) => new(
        Merge(Aids, stock.Aids, a => a.Id),
        Merge(AddOns, stock.AddOns, a => a.Id));

    private static ImmutableArray<T> Merge<T>(ImmutableArray<T> below, ImmutableArray<T> above, Func<T, string> id)
        where T : class
    {
        var byId = above.ToDictionary(id, StringComparer.Ordinal);
        var known = below.Select(id).ToHashSet(StringComparer.Ordinal);
        return [.. below.Select(item => byId.GetValueOrDefault(id(item)) ?? item), .. above.Where(item => !known.Contains(id(item)))];
    }
}
