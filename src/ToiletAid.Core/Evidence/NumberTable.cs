using System.Collections.Frozen;

namespace ToiletAid.Core.Evidence;

/// <summary>Numbers with their origin, by id, from which a computation takes all of its own when it is made: what is missing fails at the start.</summary>
public sealed class NumberTable
{
    private readonly FrozenDictionary<string, Sourced> _items;

    /// <summary>Makes a table.</summary>
    /// <param name="items">Entries by id.</param>
    public NumberTable(IEnumerable<KeyValuePair<string, Sourced>> items) =>
        _items = items.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Every id of the table.</summary>
    public IReadOnlyCollection<string> Ids => _items.Keys;

    /// <summary>The entry called <paramref name="id"/>.</summary>
    /// <exception cref="KeyNotFoundException">No such entry.</exception>
    public Sourced this[string id] =>
        _items.TryGetValue(id, out var item) ? item : throw new KeyNotFoundException($"no number '{id}'");

    /// <summary>True when there is an entry called <paramref name="id"/>.</summary>
    internal bool Has(string id) => _items.ContainsKey(id);

    /// <summary>The most plausible value of the entry called <paramref name="id"/>, SI.</summary>
    /// <exception cref="KeyNotFoundException">No such entry.</exception>
    public double Value(string id) => this[id].Value;
}
