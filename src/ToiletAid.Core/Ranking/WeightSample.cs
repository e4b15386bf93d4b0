using ToiletAid.Core.Randomness;

namespace ToiletAid.Core.Ranking;

/// <summary>Weights drawn evenly from everything that a stated order allows; made once for an order and used for many rankings.</summary>
public sealed class WeightSample
{
    private readonly double[] _weights;

    // Where the weight of each criterion stands among those that were drawn; null where it stands in its own place.
    private readonly int[]? _from;

    private WeightSample(WeightSet set, double[] weights, int[]? from, int count)
    {
        Set = set;
        _weights = weights;
        _from = from;
        Count = count;
    }

    /// <summary>The set that the weights were drawn from.</summary>
    public WeightSet Set { get; }

    /// <summary>Number of weight vectors, 1 or more.</summary>
    public int Count { get; }

    /// <summary>Number of criteria.</summary>
    public int Criteria => Set.Criteria;

    /// <summary>The weight vector of a draw, by criterion; adds up to 1.</summary>
    /// <param name="draw">0 to <see cref="Count"/> - 1.</param>
    public ReadOnlySpan<double> this[int draw]
    {
        get
        {
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)draw, (uint)Count, nameof(draw));
            return At(draw, _from is null ? [] : new double[Criteria]);
        }
    }

    /// <summary>The same without making anything: for inner loops.</summary>
    /// <param name="draw">0 to <see cref="Count"/> - 1.</param>
    /// <param name="room">One number for each criterion, in which the weights are put where another order was drawn; they stand there until the next call.</param>
    internal ReadOnlySpan<double> At(int draw, Span<double> room)
    {
        var drawn = _weights.AsSpan(draw * Criteria, Criteria);
        if (_from is not { } from)
        {
            return drawn;
        }

        room = room[..from.Length];
        for (int criterion = 0; criterion < from.Length; criterion++)
        {
            room[criterion] = drawn[from[criterion]];
        }

        return room;
    }

    /// <summary>Draws weights.</summary>
    /// <param name="order">What the person said.</param>
    /// <param name="count">Number of weight vectors, 1 or more; see <see cref="SamplingError.DrawsFor"/>.</param>
    /// <param name="seed">Seed of the whole run.</param>
    /// <param name="stream">Number of the random stream, used by nothing else.</param>
    /// <returns>The same bits for the same arguments; a longer sample begins with the shorter one.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is below 1.</exception>
    public static WeightSample Draw(PriorityOrder order, int count, ulong seed, ulong stream = 0)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        WeightSet set = new(order);
        RandomDraws draws = new(seed, stream);
        int criteria = set.Criteria;
        double[] weights = new double[checked(count * criteria)], scratch = new double[set.Steps];
        int[] filling = new int[criteria];
        for (int draw = 0; draw < count; draw++)
        {
            set.Sample(ref draws, weights.AsSpan(draw * criteria, criteria), scratch, filling);
        }

        return new(set, weights, null, count);
    }

    /// <summary>The sample that <see cref="Draw"/> gives for another order of the same shape with this one's seed and stream, to the bit, without
    /// drawing or copying: only which criterion stands where differs.</summary>
    /// <param name="order">An order with as many criteria in each place.</param>
    /// <exception cref="ArgumentException">The order has another shape.</exception>
    internal WeightSample For(PriorityOrder order)
    {
        WeightSet set = new(order);
        if (!Set.HasShapeOf(set))
        {
            throw new ArgumentException("the order has another shape", nameof(order));
        }

        int[] from = new int[Criteria];
        for (int place = 0; place < from.Length; place++)
        {
            int mine = Set.CriterionAt(place);
            from[set.CriterionAt(place)] = _from is null ? mine : _from[mine];
        }

        return new(set, _weights, from, Count);
    }

    /// <summary>The first draws only, without copying: a coarser sample for inner loops.</summary>
    /// <param name="count">1 to <see cref="Count"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is out of range.</exception>
    public WeightSample First(int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, Count);
        return new(Set, _weights, _from, count);
    }
}
