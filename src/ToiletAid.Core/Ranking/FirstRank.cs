using System.Numerics;
using System.Runtime.Intrinsics;

namespace ToiletAid.Core.Ranking;

/// <summary>Only who comes first and how often: the cheap question for searches that rank many times.</summary>
public static class FirstRank
{
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
        double[] sums = new double[values.Stride];
        for (int draw = 0, valueDraw = 0; draw < weights.Count; draw++)
        {
            values.WeightedSums(valueDraw, weights[draw], sums);
            Count(sums, counts, values.Alternatives);
            valueDraw = valueDraw + 1 == values.Draws ? 0 : valueDraw + 1;
        }

        return Shares(counts, values.Alternatives, weights.Count);
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

    /// <summary>Counts the first, or all who share the first rank.</summary>
    private static void Count(Span<double> sums, TieCounts counts, int alternatives)
    {
        sums[alternatives..].Fill(double.NegativeInfinity);
        var best = Vector256.Create<double>(sums);
        for (int lane = CriterionValues.Lanes; lane < sums.Length; lane += CriterionValues.Lanes)
        {
            best = Vector256.MaxNative(best, Vector256.Create<double>(sums[lane..]));
        }

        best = Vector256.MaxNative(best, Vector256.Shuffle(best, Vector256.Create(2L, 3, 0, 1)));
        best = Vector256.MaxNative(best, Vector256.Shuffle(best, Vector256.Create(1L, 0, 3, 2)));
        int tied = 0, first = 0;
        for (int lane = 0; lane < sums.Length; lane += CriterionValues.Lanes)
        {
            uint equal = Vector256.Equals(Vector256.Create<double>(sums[lane..]), best).ExtractMostSignificantBits();
            first = equal != 0 ? lane + BitOperations.TrailingZeroCount(equal) : first;
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
