using CsCheck;
using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Tests.Ranking;

public sealed class AcceptabilityTests
{
    private const double Rounding = 1e-12;

    [Fact]
    public void With_two_criteria_a_rank_share_is_the_length_of_an_interval()
    {
        // (0.6, 0.2) against (0.1, 0.7): the first wins when 0.5 w > 0.5 (1 - w), so for w above 1/2; (0, 0.9) wins against the second
        // when 0.1 w < 0.2 (1 - w), so for w below 2/3. The third, best of all below w = 7/13 (0.6 w + 0.2 (1 - w) = 0.9 (1 - w)).
        var values = CriterionValues.Of(3, 2, 1, [0.6, 0.2, 0.1, 0.7, 0, 0.9]);
        var result = Acceptability.Of(values, WeightSample.Draw(PriorityOrder.None(2), 38_416, seed: 1));
        Assert.Equal(6 / 13.0, result.FirstRankShare(0), 0.01);
        Assert.Equal(0, result.FirstRankShare(1));
        Assert.Equal(7 / 13.0, result.FirstRankShare(2), 0.01);
        Assert.Equal(0.5, result.PairwiseWinningShare(0, 1), 0.01);
        Assert.Equal(2 / 3.0, result.PairwiseWinningShare(2, 1), 0.01);
        Assert.Null(result.CentralWeights[1]);
        Assert.Null(result.ConfidenceFactors[1]);
        Assert.Equal((1 + (7 / 13.0)) / 2, result.CentralWeights[0]!.Value[0], 0.01);
    }

    [Fact]
    public void A_stated_order_shortens_the_interval()
    {
        // The same, the first criterion at least as important: w from 1/2 to 1, of which 7/13 to 1 is 12/13.
        var values = CriterionValues.Of(2, 2, 1, [0.6, 0.2, 0, 0.9]);
        var result = Acceptability.Of(values, WeightSample.Draw(PriorityOrder.Strict(0, 1), 38_416, seed: 1));
        Assert.Equal(12 / 13.0, result.FirstRankShare(0), 0.006);
    }

    [Fact]
    public void Shares_add_up_to_one_for_every_alternative_and_every_rank() =>
        Gen.Select(RankingGen.Case(6, 4), Gen.ULong).Sample((given, seed) =>
        {
            var result = Acceptability.Of(given.Values, WeightSample.Draw(given.Order, 50, seed));
            for (int i = 0; i < result.Alternatives; i++)
            {
                Assert.Equal(1, Enumerable.Range(0, result.Alternatives).Sum(rank => result.RankShare(i, rank)), Rounding);
                Assert.Equal(1, Enumerable.Range(0, result.Alternatives).Sum(k => result.RankShare(k, i)), Rounding);
            }
        });

    [Fact]
    public void Counting_agrees_to_the_last_bit_with_the_plain_way() =>
        Gen.Select(Gen.Int[1, 35], RankingGen.Order(1, 5), Gen.Int[1, 7], Gen.ULong).SelectMany(
            (alternatives, order, draws, seed) => RankingGen.Values(alternatives * order.Criteria * draws).Select(
                flat => (alternatives, order, draws, seed, flat))).Sample(given =>
        {
            var (alternatives, order, draws, seed, flat) = given;
            var weights = WeightSample.Draw(order, 40, seed);
            var result = Acceptability.Of(CriterionValues.Of(alternatives, order.Criteria, draws, flat), weights);
            var plain = PlainAcceptability.Of(alternatives, draws, flat, weights);
            for (int i = 0; i < alternatives; i++)
            {
                for (int k = 0; k < alternatives; k++)
                {
                    Assert.Equal(plain.Ranks[i, k], result.RankShare(i, k), Rounding);
                    Assert.Equal(plain.Wins[i, k] / 40.0, result.PairwiseWinningShare(i, k));
                }

                Assert.Equal(plain.Ranks[i, 0] > 0, result.CentralWeights[i] is not null);
                for (int criterion = 0; criterion < order.Criteria && plain.Ranks[i, 0] > 0; criterion++)
                {
                    Assert.Equal(plain.FirstWeights[i, criterion], result.CentralWeights[i]!.Value[criterion], Rounding);
                }
            }
        });

    [Fact]
    public void Sums_that_differ_in_the_twelfth_decimal_place_are_told_apart_in_every_one_of_many_draws()
    {
        var values = CriterionValues.Of(3, 2, 1, [0.5, 0.5, 0.5 + 1e-12, 0.5 + 1e-12, 0.5, 0.5]);
        var result = Acceptability.Of(values, WeightSample.Draw(PriorityOrder.None(2), 2_000, seed: 1));
        Assert.Equal([0, 1, 0], [.. Enumerable.Range(0, 3).Select(result.FirstRankShare)]);
        Assert.Equal((1, 0, 0), (result.PairwiseWinningShare(1, 0), result.PairwiseWinningShare(0, 1), result.PairwiseWinningShare(0, 2)));
        Assert.Equal(0.5, result.RankShare(0, 1));
    }

    [Fact]
    public void An_alternative_is_worth_something_in_the_draws_in_which_any_criterion_is()
    {
        // Two alternatives on two criteria in four draws: the first is worth nothing in the last draw, the second in none but the first.
        var values = CriterionValues.Of(2, 2, 4, [0.4, 0, 0, 0.5, 0, 0.2, 0, 0, 0.1, 0.1, 0, 0, 0, 0, 0, 0]);
        Assert.Equal(0.75, values.WorthShare(0));
        Assert.Equal(0.25, values.WorthShare(1));
    }

    [Fact]
    public void More_alternatives_than_a_byte_counts_are_refused()
    {
        Assert.Equal(255, new CriterionValues(255, 1).Alternatives);
        Assert.Throws<ArgumentOutOfRangeException>(() => new CriterionValues(256, 1));
    }

    [Fact]
    public void The_short_way_to_first_rank_shares_gives_the_same_bits() =>
        Gen.Select(RankingGen.Case(9, 4), Gen.ULong).Sample((given, seed) =>
        {
            var weights = WeightSample.Draw(given.Order, 60, seed);
            double[] shares = FirstRank.Shares(given.Values, weights);
            var result = Acceptability.Of(given.Values, weights);
            Assert.Equal([.. Enumerable.Range(0, result.Alternatives).Select(result.FirstRankShare)], shares);
        });

    [Fact]
    public void Confidence_is_the_share_of_value_draws_in_which_the_central_weights_put_the_alternative_first()
    {
        var values = RankingGen.Random(3, 3, 50, seed: 4);
        var result = Acceptability.Of(values, WeightSample.Draw(PriorityOrder.Strict(2, 1, 0), 2_000, seed: 4));
        for (int i = 0; i < 3; i++)
        {
            double[] central = [.. result.CentralWeights[i]!.Value];
            int wins = Enumerable.Range(0, 50).Count(draw => Enumerable.Range(0, 3).All(k => k == i
                || Sum(values, draw, i, central) > Sum(values, draw, k, central)));
            Assert.Equal(wins / 50.0, result.ConfidenceFactors[i]);
        }
    }

    [Fact]
    public void Expected_values_are_the_mean_of_the_weighted_sums()
    {
        var order = PriorityOrder.Of(4, [[2], [0]]);
        var values = RankingGen.Random(3, 4, 64, seed: 5);
        var weights = WeightSample.Draw(order, 64_000, seed: 5);
        double[] expected = ExpectedValues.Of(values, weights.Set);
        for (int i = 0; i < 3; i++)
        {
            double mean = 0;
            for (int draw = 0; draw < weights.Count; draw++)
            {
                mean += Sum(values, draw % 64, i, weights[draw].ToArray()) / weights.Count;
            }

            Assert.Equal(expected[i], mean, 0.004);
        }
    }

    [Fact]
    public void Repeated_value_draws_widen_the_stated_error()
    {
        // One criterion: only the values decide, and the second alternative leads in 3 of the 10 value draws.
        double[] flat = [.. Enumerable.Range(0, 10).SelectMany(draw => new[] { 0.5, draw < 3 ? 1.0 : 0 })];
        var result = Acceptability.Of(CriterionValues.Of(2, 1, 10, flat), WeightSample.Draw(PriorityOrder.None(1), 1_000, seed: 1));
        Assert.Equal(0.3, result.FirstRankShare(1), Rounding);
        // By hand: the shares of the ten draws have variance 0.21 * 10 / 9; over ten of them 1.96 sqrt(0.21 / 9).
        Assert.Equal(1.96 * Math.Sqrt(0.21 / 9), result.FirstRankHalfWidths[1], Rounding);
        Assert.Equal(10, result.ValueDraws);
    }

    [Fact]
    public void Value_draws_that_are_used_more_often_count_more_in_the_stated_error()
    {
        // Seven draws over three value draws: used 3, 2 and 2 times, hits 3, 0 and 0, share 3/7. Offs 12/7, -6/7, -6/7; squares 216/49.
        var values = CriterionValues.Of(2, 1, 3, [1, 0, 0, 1, 0, 1]);
        var result = Acceptability.Of(values, WeightSample.Draw(PriorityOrder.None(1), 7, seed: 1));
        Assert.Equal(3 / 7.0, result.FirstRankShare(0), Rounding);
        Assert.Equal(1.96 * Math.Sqrt(216 / 49.0 * 3 / 2) / 7, result.FirstRankHalfWidths[0], Rounding);
    }

    [Fact]
    public void Value_draws_beyond_the_weight_draws_are_not_counted()
    {
        var values = CriterionValues.Of(2, 1, 4, [1, 0, 0, 1, 0, 1, 0, 1]);
        var result = Acceptability.Of(values, WeightSample.Draw(PriorityOrder.None(1), 2, seed: 1));
        Assert.Equal(0.5, result.FirstRankShare(0));
        Assert.Equal(2, result.ValueDraws);
        Assert.Equal(SamplingError.HalfWidth(0.5, 2), result.FirstRankHalfWidths[0], Rounding);
        Assert.Equal(0.25, result.ConfidenceFactors[0]);
    }

    [Fact]
    public void Stated_half_widths_cover_the_truth_about_95_times_in_100()
    {
        // Two alternatives, one with even noise on both of its criteria; the truth comes from a long run.
        var order = PriorityOrder.None(2);
        double truth = Share(draws: 400_000, valueDraws: 400_000, seed: 1).Share;
        int covered = Enumerable.Range(0, 400).Count(run =>
        {
            var (share, halfWidth) = Share(draws: 960, valueDraws: 64, seed: (ulong)run + 2);
            return Math.Abs(share - truth) <= halfWidth;
        });
        Assert.InRange(covered, 364, 394);

        (double Share, double HalfWidth) Share(int draws, int valueDraws, ulong seed)
        {
            var noise = RankingGen.Random(1, 2, valueDraws, seed);
            CriterionValues values = new(2, 2, valueDraws);
            for (int draw = 0; draw < valueDraws; draw++)
            {
                values[draw, 0, 0] = noise[draw, 0, 0];
                values[draw, 0, 1] = noise[draw, 0, 1];
                values[draw, 1, 0] = 0.6;
                values[draw, 1, 1] = 0.3;
            }

            var result = Acceptability.Of(values, WeightSample.Draw(order, draws, seed));
            return (result.FirstRankShare(0), result.FirstRankHalfWidths[0]);
        }
    }

    [Fact]
    public void Values_that_are_no_numbers_or_do_not_fit_are_refused()
    {
        CriterionValues values = new(2, 3);
        Assert.Throws<ArgumentOutOfRangeException>(() => values[0, 0, 0] = double.NaN);
        Assert.Throws<ArgumentOutOfRangeException>(() => values[0, 2, 0] = 1);
        Assert.Throws<ArgumentOutOfRangeException>(() => CriterionValues.Of(1, 1, 1, [double.PositiveInfinity]));
        Assert.Throws<ArgumentException>(() => CriterionValues.Of(2, 2, 1, [1, 2, 3]));
        var weights = WeightSample.Draw(PriorityOrder.None(2), 5, seed: 1);
        Assert.Throws<ArgumentException>(() => Acceptability.Of(values, weights));
        Assert.Throws<ArgumentException>(() => FirstRank.Shares(values, weights));
        Assert.Throws<ArgumentException>(() => ExpectedValues.Of(values, weights.Set));
    }

    private static double Sum(CriterionValues values, int draw, int alternative, double[] weights) =>
        weights.Select((weight, criterion) => weight * values[draw, alternative, criterion]).Sum();
}
