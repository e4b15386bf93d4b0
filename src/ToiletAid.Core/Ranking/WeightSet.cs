using ToiletAid.Core.Randomness;

namespace ToiletAid.Core.Ranking;

/// <summary>All weights that agree with a stated order: not negative, adding up to 1, never larger for a less important criterion.</summary>
/// <remarks>
/// <para>Laid out in places 0 to n - 1. Places come in steps: criteria with equal weights share one step, every other place is a step of
/// its own. When the places are filled in one particular way, the set is a simplex whose corners give the same weight 1/S to the
/// first S places and nothing to the rest, S being the end of a step. Where the order inside a range of places was left open, the set is
/// the union of such simplexes over all ways to fill the range; they are mirror images, so all have the same volume and overlap only
/// in their faces.</para>
/// <para>Hence a uniform draw: fill the open ranges at random, then mix the corners with uniform proportions (exponential deviates divided by
/// their sum), because an even spread on one simplex is carried into an even spread on another by the linear map of their corners.</para>
/// </remarks>
public sealed class WeightSet
{
    private readonly int[] _criterionAt;
    private readonly int[] _stepEnds;
    private readonly List<Range> _open = [];
    private readonly double[] _centroid;

    /// <summary>Makes the set of an order.</summary>
    /// <param name="order">What the person said.</param>
    public WeightSet(PriorityOrder order)
    {
        ArgumentNullException.ThrowIfNull(order);
        Order = order;
        _criterionAt = [.. order.Places.SelectMany(place => place), .. order.Unmentioned];
        List<int> ends = [];
        int start = 0;
        foreach (var place in order.Places)
        {
            AddPlaces(start, place.Length, order.Ties == TieMeaning.EqualWeights, ends);
            start += place.Length;
        }

        AddPlaces(start, order.Unmentioned.Length, equal: false, ends);
        _stepEnds = [.. ends];
        _centroid = MeanOfCorners();
    }

    /// <summary>The order that the weights agree with.</summary>
    public PriorityOrder Order { get; }

    /// <summary>Number of criteria.</summary>
    public int Criteria => Order.Criteria;

    /// <summary>Exact mean of the set, by criterion; adds up to 1.</summary>
    /// <remarks>For a complete order these are the rank-order-centroid weights of Barron and Barrett (1996).</remarks>
    public ReadOnlySpan<double> Centroid => _centroid;

    /// <summary>Number of steps of the order; the set has one dimension less.</summary>
    internal int Steps => _stepEnds.Length;

    /// <summary>The criterion in a place, places inside an open range in ascending number of the criterion.</summary>
    internal int CriterionAt(int place) => _criterionAt[place];

    /// <summary>True when another set differs only in which criterion stands where.</summary>
    internal bool HasShapeOf(WeightSet other) => _stepEnds.AsSpan().SequenceEqual(other._stepEnds) && _open.SequenceEqual(other._open);

    /// <summary>The corners of the set, one weight vector by criterion each; every allowed weight vector is a mix of them.</summary>
    /// <remarks>2^k - 1 points for k criteria whose order was left open, so 255 at most with eight criteria. Where the first place of all is open, those that
    /// share the weight out are mixes of the others and no corners; extremes and mixes are the same with them.</remarks>
    public IEnumerable<double[]> ExtremePoints()
    {
        int from = 0;
        foreach (int end in _stepEnds)
        {
            var open = _open.Find(range => range.Start.Value <= from && from < range.End.Value);
            if (open.Equals(default))
            {
                yield return EqualOn(_criterionAt.AsSpan(0, end));
            }
            else if (open.Start.Value == from)
            {
                int[] choice = _criterionAt[open];
                for (ulong chosen = 1; chosen < 1UL << choice.Length; chosen++)
                {
                    yield return EqualOn([.. _criterionAt[..from], .. choice.Where((_, i) => (chosen >> i & 1) != 0)]);
                }
            }

            from = end;
        }
    }

    /// <summary>The least weighted sum over all weights of the set.</summary>
    /// <param name="values">One number for each criterion.</param>
    /// <returns>Minimum of the sum of weight times value; it is taken at a corner.</returns>
    /// <exception cref="ArgumentException">The number of values is not the number of criteria.</exception>
    public double Least(ReadOnlySpan<double> values)
    {
        if (values.Length != Criteria)
        {
            throw new ArgumentException($"{values.Length} values for {Criteria} criteria", nameof(values));
        }

        double[] placed = new double[values.Length];
        for (int place = 0; place < placed.Length; place++)
        {
            placed[place] = values[_criterionAt[place]];
        }

        // Of the corners that take some of an open range, the worst for each count takes the smallest values.
        foreach (var range in _open)
        {
            placed.AsSpan(range).Sort();
        }

        double least = double.PositiveInfinity, sum = 0;
        int from = 0;
        foreach (int end in _stepEnds)
        {
            for (int place = from; place < end; place++)
            {
                sum += placed[place];
            }

            least = Math.Min(least, sum / end);
            from = end;
        }

        return least;
    }

    /// <summary>The greatest weighted sum over all weights of the set.</summary>
    /// <param name="values">One number for each criterion.</param>
    /// <returns>Maximum of the sum of weight times value; it is taken at a corner.</returns>
    /// <exception cref="ArgumentException">The number of values is not the number of criteria.</exception>
    public double Greatest(ReadOnlySpan<double> values)
    {
        double[] negated = values.ToArray();
        for (int i = 0; i < negated.Length; i++)
        {
            negated[i] = -negated[i];
        }

        return -Least(negated);
    }

    /// <summary>Draws one weight vector, every part of the set being as likely as its size.</summary>
    /// <param name="draws">Source of randomness; the same count of numbers is taken each time.</param>
    /// <param name="weights">Receives the weights by criterion.</param>
    /// <param name="scratch">At least <see cref="Steps"/> numbers of working space.</param>
    /// <param name="filling">Working space of one number for each criterion.</param>
    internal void Sample(ref RandomDraws draws, Span<double> weights, Span<double> scratch, Span<int> filling)
    {
        _criterionAt.CopyTo(filling);
        foreach (var range in _open)
        {
            Shuffle(ref draws, filling[range]);
        }

        int steps = _stepEnds.Length;
        double total = 0;
        for (int step = 0; step < steps; step++)
        {
            scratch[step] = draws.NextExponential();
            total += scratch[step];
        }

        double weight = 0;
        for (int step = steps - 1; step >= 0; step--)
        {
            weight += scratch[step] / (total * _stepEnds[step]);
            int from = step == 0 ? 0 : _stepEnds[step - 1];
            for (int place = from; place < _stepEnds[step]; place++)
            {
                weights[filling[place]] = weight;
            }
        }
    }

    /// <summary>Simplexes of equal size that make up the set, one for each way to fill the open ranges.</summary>
    internal IEnumerable<double[][]> Simplexes()
    {
        if (_open.Exists(range => range.Equals(0..Criteria)))
        {
            // Nothing is known: the corners that have all the weight on one criterion are enough.
            yield return [.. Enumerable.Range(0, Criteria).Select(criterion => EqualOn([criterion]))];
            yield break;
        }

        foreach (int[] filling in Fillings(0))
        {
            yield return [.. _stepEnds.Select(end => EqualOn(filling.AsSpan(0, end)))];
        }
    }

    private static void Shuffle(ref RandomDraws draws, Span<int> items)
    {
        for (int i = items.Length - 1; i > 0; i--)
        {
            int j = (int)(draws.NextUniform() * (i + 1));
            (items[i], items[j]) = (items[j], items[i]);
        }
    }

    private IEnumerable<int[]> Fillings(int openIndex)
    {
        if (openIndex == _open.Count)
        {
            yield return (int[])_criterionAt.Clone();
            yield break;
        }

        var range = _open[openIndex];
        foreach (int[] rest in Fillings(openIndex + 1))
        {
            foreach (int[] permuted in Permutations(rest[range]))
            {
                permuted.CopyTo(rest.AsSpan(range));
                yield return (int[])rest.Clone();
            }
        }
    }

    private static IEnumerable<int[]> Permutations(int[] items)
    {
        if (items.Length <= 1)
        {
            yield return items;
            yield break;
        }

        for (int first = 0; first < items.Length; first++)
        {
            foreach (int[] rest in Permutations([.. items[..first], .. items[(first + 1)..]]))
            {
                yield return [items[first], .. rest];
            }
        }
    }

    private void AddPlaces(int start, int count, bool equal, List<int> ends)
    {
        if (equal)
        {
            ends.Add(start + count);
            return;
        }

        ends.AddRange(Enumerable.Range(start + 1, count));
        if (count > 1)
        {
            _open.Add(start..(start + count));
        }
    }

    private double[] EqualOn(ReadOnlySpan<int> criteria)
    {
        double[] corner = new double[Criteria];
        foreach (int criterion in criteria)
        {
            corner[criterion] = 1.0 / criteria.Length;
        }

        return corner;
    }

    private double[] MeanOfCorners()
    {
        double[] byPlace = new double[Criteria];
        double weight = 0;
        for (int step = Steps - 1; step >= 0; step--)
        {
            weight += 1.0 / ((double)Steps * _stepEnds[step]);
            byPlace.AsSpan(step == 0 ? 0 : _stepEnds[step - 1], _stepEnds[step] - (step == 0 ? 0 : _stepEnds[step - 1])).Fill(weight);
        }

        foreach (var range in _open)
        {
            double sum = 0;
            foreach (double place in byPlace.AsSpan(range))
            {
                sum += place;
            }

            byPlace.AsSpan(range).Fill(sum / (range.End.Value - range.Start.Value));
        }

        double[] centroid = new double[Criteria];
        for (int place = 0; place < centroid.Length; place++)
        {
            centroid[_criterionAt[place]] = byPlace[place];
        }

        return centroid;
    }
}
