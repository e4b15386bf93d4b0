namespace ToiletAid.Core.Ranking;

/// <summary>Everything that is counted over a stretch of draws.</summary>
internal sealed class RankTally
{
    private readonly CriterionValues _values;
    private readonly WeightSample _weights;
    private readonly double[] _sums;
    private readonly double[] _room;
    private readonly PairCounts _pairs;

    /// <summary>Makes an empty tally.</summary>
    /// <param name="values">Values of the alternatives.</param>
    /// <param name="weights">Sampled weights.</param>
    public RankTally(CriterionValues values, WeightSample weights)
    {
        _values = values;
        _weights = weights;
        _sums = new double[values.Stride];
        _room = new double[values.Criteria];
        _pairs = new(values.Alternatives);
        Ranks = new(values.Alternatives, values.Alternatives);
        Wins = new long[values.Alternatives * values.Alternatives];
        FirstWeights = new double[values.Alternatives * values.Criteria];
        FirstByValueDraw = values.Draws < weights.Count ? new double[values.Alternatives * values.Draws] : [];
    }

    /// <summary>How often each alternative had each rank.</summary>
    public TieCounts Ranks { get; }

    /// <summary>How often the row's alternative was strictly better than the column's.</summary>
    public long[] Wins { get; }

    /// <summary>Sum of the weights with which the alternative came first, tied draws by their part; by alternative and criterion.</summary>
    public double[] FirstWeights { get; }

    /// <summary>First ranks by alternative and value draw, ties by their part; empty when no value draw was used twice.</summary>
    public double[] FirstByValueDraw { get; }

    /// <summary>Counts the draws from one number up to before another.</summary>
    public void Count(int from, int to)
    {
        for (int draw = from, valueDraw = from % _values.Draws; draw < to; draw++)
        {
            var weights = _weights.At(draw, _room);
            _values.WeightedSums(valueDraw, weights, _sums);
            int first = _pairs.Count(_sums);
            if (first >= 0)
            {
                AddFirst(first, weights, valueDraw, 1);
            }
            else
            {
                CountTied(weights, valueDraw);
            }

            if (_pairs.IsFull)
            {
                _pairs.MoveTo(Wins, Ranks.Of(1));
            }

            valueDraw = valueDraw + 1 == _values.Draws ? 0 : valueDraw + 1;
        }

        _pairs.MoveTo(Wins, Ranks.Of(1));
    }

    public void Add(RankTally other)
    {
        Ranks.Add(other.Ranks);
        for (int i = 0; i < Wins.Length; i++)
        {
            Wins[i] += other.Wins[i];
        }

        for (int i = 0; i < FirstWeights.Length; i++)
        {
            FirstWeights[i] += other.FirstWeights[i];
        }

        for (int i = 0; i < FirstByValueDraw.Length; i++)
        {
            FirstByValueDraw[i] += other.FirstByValueDraw[i];
        }
    }

    public void Clear()
    {
        Ranks.Clear();
        Wins.AsSpan().Clear();
        FirstWeights.AsSpan().Clear();
        FirstByValueDraw.AsSpan().Clear();
    }

    private void CountTied(ReadOnlySpan<double> weights, int valueDraw)
    {
        int alternatives = _values.Alternatives;
        var above = _pairs.Above;
        for (int i = 0; i < alternatives; i++)
        {
            int tied = _pairs.Tied(i);
            Ranks.Of(tied)[(i * alternatives) + above[i]]++;
            if (above[i] == 0)
            {
                AddFirst(i, weights, valueDraw, 1.0 / tied);
            }
        }
    }

    private void AddFirst(int alternative, ReadOnlySpan<double> weights, int valueDraw, double part)
    {
        var sums = FirstWeights.AsSpan(alternative * weights.Length, weights.Length);
        for (int criterion = 0; criterion < weights.Length; criterion++)
        {
            sums[criterion] += part * weights[criterion];
        }

        if (FirstByValueDraw.Length > 0)
        {
            FirstByValueDraw[(alternative * _values.Draws) + valueDraw] += part;
        }
    }
}
