using System.Collections.Immutable;
using CsCheck;
using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Tests.Ranking;

/// <summary>What must not change a result, not even in its last bit.</summary>
public sealed class SameBitsTests
{
    private static readonly PriorityOrder Order = PriorityOrder.Of(8, [[2], [0, 5], [7]]);

    [Fact]
    public void A_second_run_gives_the_same_bits()
    {
        AssertSame(Run(), Run());
        static AcceptabilityResult Run() =>
            Acceptability.Of(RankingGen.Random(13, 8, 128, seed: 2), WeightSample.Draw(Order, 9_604, seed: 2));
    }

    [Fact]
    public void Threads_and_the_order_of_their_work_change_nothing()
    {
        var values = RankingGen.Random(13, 8, 128, seed: 3);
        var weights = WeightSample.Draw(Order, 9_604, seed: 3);
        var alone = Acceptability.Of(values, weights);
        foreach (int threads in new[] { 1, 2, 3, 8 })
        {
            AssertSame(alone, Acceptability.Of(
                values, weights, (count, body) => Parallel.For(0, count, new() { MaxDegreeOfParallelism = threads }, body)));
        }

        AssertSame(alone, Acceptability.Of(values, weights, (count, body) =>
        {
            for (int i = count - 1; i >= 0; i--)
            {
                body(i);
            }
        }));
    }

    [Fact]
    public void Listing_the_alternatives_in_another_order_permutes_the_result() =>
        Gen.Select(RankingGen.Case(7, 4), Gen.ULong).SelectMany((given, seed) =>
            Gen.Shuffle(Enumerable.Range(0, given.Values.Alternatives).ToArray()).Select(shuffled => (given, seed, shuffled))).Sample(made =>
        {
            var ((order, values), seed, shuffled) = made;
            var weights = WeightSample.Draw(order, 40, seed);
            AssertSame(Acceptability.Of(values, weights), Acceptability.Of(Pick(values, shuffled), weights), shuffled);
        });

    [Fact]
    public void A_dominated_alternative_more_changes_nothing_for_the_others() =>
        Gen.Select(RankingGen.Case(6, 4), Gen.ULong, Gen.Int[0, 5], Gen.Double[0.001, 0.5]).Sample((given, seed, which, worse) =>
        {
            var (order, values) = given;
            int alternatives = values.Alternatives, better = which % alternatives;
            var more = Pick(values, [.. Enumerable.Range(0, alternatives), better]);
            for (int criterion = 0; criterion < values.Criteria; criterion++)
            {
                more[0, alternatives, criterion] -= worse;
            }

            var weights = WeightSample.Draw(order, 40, seed);
            AcceptabilityResult before = Acceptability.Of(values, weights), after = Acceptability.Of(more, weights);
            Assert.Equal(0, after.FirstRankShare(alternatives));
            Assert.Equal(1, after.PairwiseWinningShare(better, alternatives));
            for (int i = 0; i < alternatives; i++)
            {
                Assert.Equal(before.ExpectedValues[i], after.ExpectedValues[i]);
                Assert.Equal(before.FirstRankShare(i), after.FirstRankShare(i));
                for (int k = 0; k < alternatives; k++)
                {
                    Assert.Equal(before.PairwiseWinningShare(i, k), after.PairwiseWinningShare(i, k));
                }
            }
        });

    /// <summary>Counts that were seen once with this program. Whole numbers, because the last bit of a logarithm is the platform's.</summary>
    [Fact]
    public void A_fixed_case_gives_the_counts_it_always_gave()
    {
        double[] shares = FirstRank.Shares(RankingGen.Random(13, 8, 128, seed: 2), WeightSample.Draw(Order, 9_604, seed: 2));
        Assert.Equal("748 690 665 836 678 1019 574 936 666 770 635 860 527", string.Join(' ', shares.Select(share => Math.Round(share * 9_604))));
    }

    private static CriterionValues Pick(CriterionValues values, int[] which)
    {
        CriterionValues picked = new(which.Length, values.Criteria, values.Draws);
        for (int draw = 0; draw < values.Draws; draw++)
        {
            for (int i = 0; i < which.Length; i++)
            {
                for (int criterion = 0; criterion < values.Criteria; criterion++)
                {
                    picked[draw, i, criterion] = values[draw, which[i], criterion];
                }
            }
        }

        return picked;
    }

    private static void AssertSame(AcceptabilityResult expected, AcceptabilityResult actual, int[]? shuffled = null)
    {
        shuffled ??= [.. Enumerable.Range(0, expected.Alternatives)];
        for (int i = 0; i < shuffled.Length; i++)
        {
            Assert.Equal(Numbers(expected, shuffled[i]), Numbers(actual, i));
            for (int k = 0; k < shuffled.Length; k++)
            {
                Assert.Equal(expected.PairwiseWinningShare(shuffled[i], shuffled[k]), actual.PairwiseWinningShare(i, k));
            }
        }
    }

    private static double[] Numbers(AcceptabilityResult result, int i) =>
    [
        .. Enumerable.Range(0, result.Alternatives).Select(rank => result.RankShare(i, rank)),
        .. result.CentralWeights[i] ?? ImmutableArray<double>.Empty,
        result.ConfidenceFactors[i] ?? -1,
        result.ExpectedValues[i],
        result.FirstRankHalfWidths[i],
    ];
}
