using System.Collections.Immutable;

namespace ToiletAid.Core.Ranking;

/// <summary>What a person said about the order in which the criteria matter: the most important first, ties and silence allowed.</summary>
/// <remarks>Decision: a criterion that was not mentioned matters at most as much as every mentioned one, and nothing is assumed about
/// the order of the unmentioned ones among themselves. So an order that mentions nothing allows every set of weights, and an order that
/// mentions only one criterion says that this one comes first. Criteria in the same place are read as <see cref="Ties"/> says.</remarks>
public sealed class PriorityOrder : IEquatable<PriorityOrder>
{
    private PriorityOrder(int criteria, ImmutableArray<ImmutableArray<int>> places, ImmutableArray<int> unmentioned, TieMeaning ties)
    {
        Criteria = criteria;
        Places = places;
        Unmentioned = unmentioned;
        Ties = ties;
    }

    /// <summary>Number of criteria, 1 or more; they are numbered from 0.</summary>
    public int Criteria { get; }

    /// <summary>The mentioned criteria by place, most important first; inside a place in ascending number.</summary>
    public ImmutableArray<ImmutableArray<int>> Places { get; }

    /// <summary>Criteria that were not mentioned, in ascending number.</summary>
    public ImmutableArray<int> Unmentioned { get; }

    /// <summary>How criteria in the same place are read.</summary>
    public TieMeaning Ties { get; }

    /// <summary>Nothing was said: all weights are possible.</summary>
    /// <param name="criteria">Number of criteria, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="criteria"/> is below 1.</exception>
    public static PriorityOrder None(int criteria) => Of(criteria, []);

    /// <summary>A complete order without ties.</summary>
    /// <param name="mostImportantFirst">Every criterion number from 0 once.</param>
    /// <exception cref="ArgumentException">A number is missing, repeated or out of range.</exception>
    public static PriorityOrder Strict(params int[] mostImportantFirst) =>
        Of(mostImportantFirst.Length, mostImportantFirst.Select(c => new[] { c }));

    /// <summary>An order with ties and silence.</summary>
    /// <param name="criteria">Number of criteria, 1 or more.</param>
    /// <param name="places">Criterion numbers by place, most important first; no place empty, no number twice.</param>
    /// <param name="ties">How criteria in the same place are read.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="criteria"/> is below 1.</exception>
    /// <exception cref="ArgumentException">A place is empty, or a number is repeated or out of range.</exception>
    public static PriorityOrder Of(
        int criteria, IEnumerable<IReadOnlyCollection<int>> places, TieMeaning ties = TieMeaning.EqualWeights)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(criteria, 1);
        ArgumentNullException.ThrowIfNull(places);
        bool[] seen = new bool[criteria];
        var sorted = ImmutableArray.CreateBuilder<ImmutableArray<int>>();
        foreach (var place in places)
        {
            if (place.Count == 0)
            {
                throw new ArgumentException("a place in the order is empty", nameof(places));
            }

            foreach (int criterion in place)
            {
                if (criterion < 0 || criterion >= criteria || seen[criterion])
                {
                    throw new ArgumentException($"criterion {criterion} is repeated or not among the {criteria}", nameof(places));
                }

                seen[criterion] = true;
            }

            sorted.Add([.. place.Order()]);
        }

        return new(criteria, sorted.ToImmutable(), [.. Enumerable.Range(0, criteria).Where(c => !seen[c])], ties);
    }

    /// <inheritdoc/>
    public bool Equals(PriorityOrder? other) =>
        other is not null && Criteria == other.Criteria && Ties == other.Ties && Places.Length == other.Places.Length
        && Places.Zip(other.Places).All(pair => pair.First.AsSpan().SequenceEqual(pair.Second.AsSpan()));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as PriorityOrder);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        HashCode hash = default;
        hash.Add(Criteria);
        foreach (var place in Places)
        {
            hash.Add(place.Length);
            foreach (int criterion in place)
            {
                hash.Add(criterion);
            }
        }

        return hash.ToHashCode();
    }
}
