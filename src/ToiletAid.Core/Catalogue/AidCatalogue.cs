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

    /// <summary>The kind that an id belongs to: of an article its kind, of anything else itself.</summary>
    /// <param name="id">Id of a kind or an article.</param>
    public string KindOf(string id) => Aids.FirstOrDefault(a => a.Id == id)?.KindId ?? id;

    /// <summary>This catalogue with one article alone in place of its kind and of all articles of that kind.</summary>
    /// <param name="article">The article, under the id of its kind or its own.</param>
    internal AidCatalogue WithOnly(Aid article)
    {
        int at = Aids.IndexOf(Aids.First(a => a.KindId == article.KindId));
        return this with { Aids = [.. Aids.Select((a, i) => i == at ? article : a).Where((a, i) => i == at || a.KindId != article.KindId)] };
    }

    private static ImmutableArray<T> Merge<T>(ImmutableArray<T> below, ImmutableArray<T> above, Func<T, string> id)
        where T : class
    {
        var byId = above.ToDictionary(id, StringComparer.Ordinal);
        var known = below.Select(id).ToHashSet(StringComparer.Ordinal);
        return [.. below.Select(item => byId.GetValueOrDefault(id(item)) ?? item), .. above.Where(item => !known.Contains(id(item)))];
    }
}
