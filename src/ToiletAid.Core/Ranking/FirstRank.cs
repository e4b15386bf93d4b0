using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ToiletAid.Core.Ranking;

/// <summary>Only who comes first and how often: the cheap question for searches that rank many times.</summary>
public static class FirstRank
{
    /// <summary>Draws after which it is looked whether the leader can still be overtaken.</summary>
    private const int Stretch = 256;

    /// <summary>Share of the draws in which each alternative comes first.</summary>
    /// <param name="values">Values of the alternatives.</param>
    /// <param name="weights">Sampled weights; weight draw d meets value draw d modulo the number of value draws.</param>
    /// <returns>One share for each alternative, adding up to 1; the same bits as <see cref="AcceptabilityResult.FirstRankShare"/>.</returns>
    /// <exception cref="ArgumentException">Values and weights have different numbers of criteria.</exception>
    public static double[] Shares(CriterionValues values, WeightSample weights)
    {
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(weights);
        values.RequireCriteria(weights.Criteria);
        TieCounts counts = new(values.Alternatives, ranks: 1);
        CountDraws(values, weights, counts, 0, weights.Count);
        return Shares(counts, values.Alternatives, weights.Count);
    }

    /// <summary>The alternative that comes first more often than every other, without more draws than it takes to tell; null where several do as often.</summary>
    /// <param name="values">Values of the alternatives.</param>
    /// <param name="weights">Sampled weights, as in <see cref="Shares(CriterionValues, WeightSample)"/>.</param>
    internal static int? Leader(CriterionValues values, WeightSample weights)
    {
        values.RequireCriteria(weights.Criteria);
        TieCounts counts = new(values.Alternatives, ranks: 1);
        long[] alone = counts.Of(1);
        for (int done = 0; done < weights.Count;)
        {
            int to = Math.Min(done + Stretch, weights.Count);
            CountDraws(values, weights, counts, done, to);
            done = to;

            // Whoever is behind may have a part of every draw that was tied and all of those that are left.
            long open = weights.Count - alone.Sum();
            int leader = alone.IndexOf(alone.Max());
            if (alone.Select((count, i) => i == leader || alone[leader] > count + open).All(behind => behind))
            {
                return leader;
            }
        }

        double[] shares = Shares(counts, values.Alternatives, weights.Count);
        int first = shares.IndexOf(shares.Max());
        return shares.Count(s => s == shares[first]) == 1 ? first : null;
    }

    /// <summary>Share of the value draws in which each alternative comes first with one fixed weight vector.</summary>
    /// <param name="values">Values of the alternatives.</param>
    /// <param name="weights">One weight for each criterion.</param>
    /// <returns>One share for each alternative, adding up to 1.</returns>
    /// <exception cref="ArgumentException">Values and weights have different numbers of criteria.</exception>
    public static double[] SharesAt(CriterionValues values, ReadOnlySpan<double> weights)
    {
        ArgumentNullException.ThrowIfNull(values);
        values.RequireCriteria(weights.Length);
        TieCounts counts = new(values.Alternatives, ranks: 1);
        double[] sums = new double[values.Stride];
        for (int draw = 0; draw < values.Draws; draw++)
        {
            values.WeightedSums(draw, weights, sums);
            Count(sums, counts, values.Alternatives);
        }

        return Shares(counts, values.Alternatives, values.Draws);
    }

    private static void CountDraws(CriterionValues values, WeightSample weights, TieCounts counts, int from, int to)
    {
        double[] sums = new double[values.Stride], room = new double[values.Criteria];
        int valueDraw = from % values.Draws;
        for (int draw = from; draw < to; draw++)
        {
            values.WeightedSums(valueDraw, weights.At(draw, room), sums);
            Count(sums, counts, values.Alternatives);
            valueDraw = valueDraw + 1 == values.Draws ? 0 : valueDraw + 1;
        }
    }

    /// <summary>Counts the first, or all who share the first rank.</summary>
    private static void Count(Span<double> sums, TieCounts counts, int alternatives)
    {
        for (int beyond = alternatives; beyond < sums.Length; beyond++)
        {
            sums[beyond] = double.NegativeInfinity;
        }

        ref double sum = ref MemoryMarshal.GetReference(sums);
        Vector128<double> low = Vector128.LoadUnsafe(ref sum), high = Vector128.LoadUnsafe(ref sum, 2);
        for (nuint at = CriterionValues.Lanes; at < (nuint)sums.Length; at += CriterionValues.Lanes)
        {
            low = Vector128.MaxNative(low, Vector128.LoadUnsafe(ref sum, at));
            high = Vector128.MaxNative(high, Vector128.LoadUnsafe(ref sum, at + 2));
        }

        var best = Vector128.MaxNative(low, high);
        best = Vector128.MaxNative(best, Vector128.Shuffle(best, Vector128.Create(1L, 0)));
        int tied = 0, first = 0;
        for (nuint at = 0; at < (nuint)sums.Length; at += CriterionValues.Lanes)
        {
            uint equal = Vector128.Equals(Vector128.LoadUnsafe(ref sum, at), best).ExtractMostSignificantBits()
                | (Vector128.Equals(Vector128.LoadUnsafe(ref sum, at + 2), best).ExtractMostSignificantBits() << 2);
            first = equal != 0 ? (int)at + BitOperations.TrailingZeroCount(equal) : first;
            tied += BitOperations.PopCount(equal);
        }

        long[] counted = counts.Of(tied);
        if (tied == 1)
        {
            counted[first]++;
            return;
        }

        for (int i = 0; i < counted.Length; i++)
        {
            counted[i] += sums[i] == best[0] ? 1 : 0;
        }
    }

    private static double[] Shares(TieCounts counts, int alternatives, int draws)
    {
        double[] shares = new double[alternatives];
        for (int i = 0; i < alternatives; i++)
        {
            shares[i] = counts.Share(i, 0, draws);
        }

        return shares;
    }
}
