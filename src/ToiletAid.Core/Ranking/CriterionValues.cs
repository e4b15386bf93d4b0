using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ToiletAid.Core.Ranking;

/// <summary>How good each alternative is on each criterion, in one or more draws of what is uncertain; more is better.</summary>
/// <remarks>Fewer draws of values than of weights are enough: weight draw d meets value draw d modulo <see cref="Draws"/>.</remarks>
public sealed class CriterionValues
{
    /// <summary>Alternatives that are computed side by side; each keeps its own sum, so the bits do not depend on it.</summary>
    internal const int Lanes = 4;

    /// <summary>Most alternatives: their ranks are counted in bytes.</summary>
    internal const int MostAlternatives = 255;

    private readonly double[] _values;

    /// <summary>Makes a table of zeros.</summary>
    /// <param name="alternatives">Number of alternatives, 1 to 255.</param>
    /// <param name="criteria">Number of criteria, 1 or more.</param>
    /// <param name="draws">Number of value draws, 1 or more; 1 when nothing is uncertain.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is below 1, or there are too many alternatives.</exception>
    public CriterionValues(int alternatives, int criteria, int draws = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(alternatives, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(alternatives, MostAlternatives);
        ArgumentOutOfRangeException.ThrowIfLessThan(criteria, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 1);
        Alternatives = alternatives;
        Criteria = criteria;
        Draws = draws;
        Stride = (alternatives + Lanes - 1) / Lanes * Lanes;
        _values = new double[checked(draws * criteria * Stride)];
    }

    /// <summary>Number of alternatives.</summary>
    public int Alternatives { get; }

    /// <summary>Number of criteria.</summary>
    public int Criteria { get; }

    /// <summary>Number of value draws.</summary>
    public int Draws { get; }

    /// <summary>Numbers kept for one criterion: the alternatives, filled up to a whole number of lanes.</summary>
    internal int Stride { get; }

    /// <summary>The value of an alternative on a criterion in a draw.</summary>
    /// <exception cref="ArgumentOutOfRangeException">An index is out of range, or the value is not finite.</exception>
    public double this[int draw, int alternative, int criterion]
    {
        get => _values[At(draw, alternative, criterion)];
        set
        {
            _values[At(draw, alternative, criterion)] = Finite(value);
        }
    }

    /// <summary>Sets all values of an alternative in a draw.</summary>
    /// <param name="draw">0 to <see cref="Draws"/> - 1.</param>
    /// <param name="alternative">Its number, from 0.</param>
    /// <param name="byCriterion">One value for each criterion.</param>
    /// <exception cref="ArgumentOutOfRangeException">An index is out of range, or a value is not finite.</exception>
    internal void Set(int draw, int alternative, ReadOnlySpan<double> byCriterion)
    {
        RequireCriteria(byCriterion.Length);
        int at = At(draw, alternative, 0);
        foreach (double value in byCriterion)
        {
            _values[at] = Finite(value);
            at += Stride;
        }
    }

    /// <summary>Takes the values from a flat list.</summary>
    /// <param name="alternatives">Number of alternatives, 1 to 255.</param>
    /// <param name="criteria">Number of criteria, 1 or more.</param>
    /// <param name="draws">Number of value draws, 1 or more.</param>
    /// <param name="flat">Draw after draw; in a draw alternative after alternative; in an alternative criterion after criterion.</param>
    /// <exception cref="ArgumentException">The list has another length, or a value is not finite.</exception>
    public static CriterionValues Of(int alternatives, int criteria, int draws, ReadOnlySpan<double> flat)
    {
        CriterionValues values = new(alternatives, criteria, draws);
        if (flat.Length != (long)alternatives * criteria * draws)
        {
            throw new ArgumentException($"{flat.Length} values instead of {(long)alternatives * criteria * draws}", nameof(flat));
        }

        for (int next = 0, draw = 0; draw < draws; draw++)
        {
            var block = values._values.AsSpan(draw * criteria * values.Stride, criteria * values.Stride);
            for (int alternative = 0; alternative < alternatives; alternative++)
            {
                for (int at = alternative; at < block.Length; at += values.Stride)
                {
                    block[at] = Finite(flat[next++]);
                }
            }
        }

        return values;
    }

    /// <summary>Share of the draws in which an alternative is worth anything on any criterion, 0 to 1.</summary>
    /// <param name="alternative">Its number, from 0.</param>
    public double WorthShare(int alternative)
    {
        int worth = 0;
        for (int draw = 0; draw < Draws; draw++)
        {
            worth += IsWorth(draw, alternative) ? 1 : 0;
        }

        return (double)worth / Draws;
    }

    /// <summary>Means of two alternatives on each criterion over the draws in which both are worth anything; over all draws where there is none.</summary>
    /// <param name="one">Number of the one, from 0.</param>
    /// <param name="other">Number of the other.</param>
    public (double[] One, double[] Other) MeansWhereBoth(int one, int other)
    {
        int[] draws = [.. Enumerable.Range(0, Draws).Where(d => IsWorth(d, one) && IsWorth(d, other))];
        draws = draws.Length > 0 ? draws : [.. Enumerable.Range(0, Draws)];
        return (Mean(one), Mean(other));

        double[] Mean(int alternative)
        {
            double[] means = new double[Criteria];
            for (int criterion = 0; criterion < Criteria; criterion++)
            {
                foreach (int draw in draws)
                {
                    means[criterion] += this[draw, alternative, criterion];
                }

                means[criterion] /= draws.Length;
            }

            return means;
        }
    }

    private bool IsWorth(int draw, int alternative)
    {
        for (int criterion = 0; criterion < Criteria; criterion++)
        {
            if (this[draw, alternative, criterion] != 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Mean over the draws of each alternative's value on each criterion.</summary>
    /// <returns>Alternative after alternative; in an alternative criterion after criterion.</returns>
    public double[] Means()
    {
        double[] sums = new double[Criteria * Stride];
        for (int from = 0; from < _values.Length; from += sums.Length)
        {
            for (int i = 0; i < sums.Length; i += Lanes)
            {
                (Vector256.Create(sums, i) + Vector256.Create(_values, from + i)).CopyTo(sums, i);
            }
        }

        double[] means = new double[Alternatives * Criteria];
        for (int alternative = 0; alternative < Alternatives; alternative++)
        {
            for (int criterion = 0; criterion < Criteria; criterion++)
            {
                means[(alternative * Criteria) + criterion] = sums[(criterion * Stride) + alternative] / Draws;
            }
        }

        return means;
    }

    /// <summary>The weighted sum of every alternative in one draw.</summary>
    /// <param name="draw">0 to <see cref="Draws"/> - 1.</param>
    /// <param name="weights">One weight for each criterion.</param>
    /// <param name="sums">Receives <see cref="Stride"/> numbers; those beyond the alternatives mean nothing.</param>
    /// <remarks>An alternative's sum runs over the criteria in ascending number, whatever the width of the machine's vectors.</remarks>
    internal void WeightedSums(int draw, ReadOnlySpan<double> weights, Span<double> sums)
    {
        RequireCriteria(weights.Length);
        ref double block = ref MemoryMarshal.GetReference(_values.AsSpan(draw * Criteria * Stride, Criteria * Stride));
        ref double sum = ref MemoryMarshal.GetReference(sums[..Stride]);
        nuint stride = (nuint)Stride, lane = 0;
        for (; lane + (2 * Lanes) <= stride; lane += 2 * Lanes)
        {
            // Eight side by side: with four, the processor waits for one sum before it can add to it again.
            var (a, b) = (Vector128<double>.Zero, Vector128<double>.Zero);
            var (c, d) = (Vector128<double>.Zero, Vector128<double>.Zero);
            nuint at = lane;
            foreach (double weight in weights)
            {
                var one = Vector128.Create(weight);
                a += one * Vector128.LoadUnsafe(ref block, at);
                b += one * Vector128.LoadUnsafe(ref block, at + 2);
                c += one * Vector128.LoadUnsafe(ref block, at + 4);
                d += one * Vector128.LoadUnsafe(ref block, at + 6);
                at += stride;
            }

            a.StoreUnsafe(ref sum, lane);
            b.StoreUnsafe(ref sum, lane + 2);
            c.StoreUnsafe(ref sum, lane + 4);
            d.StoreUnsafe(ref sum, lane + 6);
        }

        for (; lane < stride; lane += Lanes)
        {
            var (low, high) = (Vector128<double>.Zero, Vector128<double>.Zero);
            nuint at = lane;
            foreach (double weight in weights)
            {
                var one = Vector128.Create(weight);
                low += one * Vector128.LoadUnsafe(ref block, at);
                high += one * Vector128.LoadUnsafe(ref block, at + 2);
                at += stride;
            }

            low.StoreUnsafe(ref sum, lane);
            high.StoreUnsafe(ref sum, lane + 2);
        }
    }

    /// <summary>Refuses weights that belong to another number of criteria.</summary>
    internal void RequireCriteria(int criteria)
    {
        if (criteria != Criteria)
        {
            throw new ArgumentException($"weights of {criteria} criteria for values of {Criteria}", nameof(criteria));
        }
    }

    private static double Finite(double value) =>
        double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, "a criterion value is a finite number");

    private int At(int draw, int alternative, int criterion)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)draw, (uint)Draws, nameof(draw));
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)alternative, (uint)Alternatives, nameof(alternative));
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)criterion, (uint)Criteria, nameof(criterion));
        return (((draw * Criteria) + criterion) * Stride) + alternative;
    }
}
