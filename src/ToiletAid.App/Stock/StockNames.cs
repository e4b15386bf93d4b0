using System.Collections.Immutable;

namespace ToiletAid.App.Stock;

/// <summary>Ids that a file may name: those built in and its own.</summary>
/// <param name="Aids">Aids.</param>
/// <param name="AddOns">Add-ons.</param>
/// <param name="Kinds">Aids that are built in.</param>
internal sealed record StockNames(ImmutableArray<string> Aids, ImmutableArray<string> AddOns, ImmutableArray<string> Kinds);
