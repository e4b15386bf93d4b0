namespace ToiletAid.Core.Ids;

/// <summary>Ids of one sort that code names. Whatever is named stands in the table, so that it can be held against the data when these are loaded.</summary>
/// <typeparam name="T">What is kept of each.</typeparam>
internal sealed class IdTable<T>
{
    private readonly List<T> _all = [];

    /// <summary>All of them, in the order in which code names them.</summary>
    internal IReadOnlyList<T> All => _all;

    /// <summary>Names one; gives it back.</summary>
    internal T Add(T named)
    {
        _all.Add(named);
        return named;
    }
}
