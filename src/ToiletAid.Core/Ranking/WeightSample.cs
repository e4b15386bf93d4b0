using ToiletAid.Core.Randomness;

namespace ToiletAid.Core.Ranking;

/// <summary>Weights drawn evenly from everything that a stated order allows; made once for an order and used for many rankings.</summary>
public sealed class WeightSample
{
    private readonly double[] _weights;

    private WeightSample(WeightSet set, double[] weights, int count)
    {
        Set = set;
        _weights = weights;
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
            return _weights.AsSpan(draw * Criteria, Criteria);
        }
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

        return new(set, weights, count);
    }

    /// <summary>The sample that <see cref="Draw"/> gives for another order of the same shape with this one's seed and stream, to the bit, without
    /// drawing: only which criterion stands where differs.</summary>
    /// <param name="order">An order with as many criteria in each place.</param>
    /// <exception cref="ArgumentException">The order has another shape.</exception>
    internal WeightSample For(PriorityOrder order)
    {
        WeightSet set = new(order);
        if (!Set.HasShapeOf(set))
        {
            throw new ArgumentException("the order has another shape", nameof(order));
        }

        int criteria = Criteria;
        int[] from = new int[criteria];
        for (int place = 0; place < criteria; place++)
        {
            from[set.CriterionAt(place)] = Set.CriterionAt(place);
        }

        double[] weights = GC.AllocateUninitializedArray<double>(Count * criteria);
        for (int start = 0; start < weights.Length; start += criteria)
        {
            var mine = _weights.AsSpan(start, criteria);
            var theirs = weights.AsSpan(start, criteria);
            for (int criterion = 0; criterion < theirs.Length; criterion++)
            {
                theirs[criterion] = mine[from[criterion]];
            }
        }

        return new(set, weights, Count);
    }

    /// <summary>The first draws only, without copying: a coarser sample for inner loops.</summary>
    /// <param name="count">1 to <see cref="Count"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is out of range.</exception>
    public WeightSample First(int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, Count);
        return new(Set, _weights, count);
    }
}
