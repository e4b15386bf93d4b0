using CsCheck;
using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Tests.Ranking;

public sealed class ExactAcceptabilityTests
{
    private const double Rounding = 1e-9;

    [Fact]
    public void Equal_alternatives_divide_the_ranks_they_cover()
    {
        // The first leads the two equal ones where w is above 1/2 and is behind both elsewhere.
        var exact = ExactAcceptability.Of(CriterionValues.Of(3, 2, 1, [1, 0, 0.5, 0.5, 0.5, 0.5]), new(PriorityOrder.None(2)))!;
        Assert.Equal(0.5, exact.RankShare(0, 0), Rounding);
        Assert.Equal(0.0, exact.RankShare(0, 1), Rounding);
        Assert.Equal(0.5, exact.RankShare(0, 2), Rounding);
        for (int rank = 0; rank < 3; rank++)
        {
            Assert.Equal(rank == 1 ? 0.5 : 0.25, exact.RankShare(1, rank), Rounding);
            Assert.Equal(rank == 1 ? 0.5 : 0.25, exact.RankShare(2, rank), Rounding);
        }
    }

    [Fact]
    public void A_tie_that_only_rounding_breaks_is_a_tie()
    {
        // 0.1 + 0.2 against 0.3 with equal weights: the sums differ in the last bit.
        var values = CriterionValues.Of(2, 3, 1, [0.1, 0.2, 0, 0, 0.3, 0]);
        var exact = ExactAcceptability.Of(values, new(PriorityOrder.Of(3, [[0, 1], [2]])))!;
        Assert.Equal(0.5, exact.RankShare(0, 0), Rounding);
    }

    [Fact]
    public void Two_alternatives_with_eight_criteria_need_few_pieces()
    {
        // Four corners on either side of one cut give at most 8 over 4 = 70 pieces.
        var values = CriterionValues.Of(2, 8, 1, [1, 2, 3, 4, 0, 0, 0, 0, 0, 0, 0, 0, 1, 2, 3, 4]);
        var exact = ExactAcceptability.Of(values, new(PriorityOrder.None(8)), mostPieces: 70);
        Assert.Equal(0.5, exact!.RankShare(0, 0), Rounding);
    }

    /// <summary>The hand-solved case of <see cref="Papers.LahdelmaSalminen2001Tests"/>.</summary>
    [Fact]
    public void Two_opposite_alternatives_share_the_simplex_three_to_one()
    {
        var exact = ExactAcceptability.Of(CriterionValues.Of(2, 3, 1, [1, 0, 1, 0, 1, 0]), new(PriorityOrder.None(3)))!;
        Assert.Equal(0.75, exact.RankShare(0, 0), Rounding);
        Assert.Equal(0.75, exact.RankShare(1, 1), Rounding);
        double[] first = [7 / 18.0, 2 / 9.0, 7 / 18.0], second = [1 / 6.0, 2 / 3.0, 1 / 6.0];
        for (int criterion = 0; criterion < 3; criterion++)
        {
            Assert.Equal(first[criterion], exact.CentralWeights(0)!.Value[criterion], Rounding);
            Assert.Equal(second[criterion], exact.CentralWeights(1)!.Value[criterion], Rounding);
        }
    }

    [Fact]
    public void With_two_criteria_it_is_the_length_of_intervals() =>
        RankingGen.Case(6, 2).Where(given => given.Order.Criteria == 2 && Cells.HasLength(given.Order)).Sample((order, values) =>
        {
            var exact = ExactAcceptability.Of(values, new(order))!;
            double[] lengths = Cells.Lengths(order, values);
            for (int i = 0; i < lengths.Length; i++)
            {
                Assert.Equal(lengths[i], exact.RankShare(i, 0), Rounding);
            }
        });

    [Fact]
    public void With_three_criteria_it_is_the_area_of_polygons() =>
        RankingGen.Case(5, 3).Where(given => given.Order.Criteria == 3
            && given.Order.Places.All(place => place.Length == 1 || given.Order.Ties == TieMeaning.EitherFirst)).Sample((order, values) =>
        {
            var exact = ExactAcceptability.Of(values, new(order), mostPieces: 100_000)!;
            double[] areas = Cells.Areas(order, values);
            for (int i = 0; i < areas.Length; i++)
            {
                Assert.Equal(areas[i], exact.RankShare(i, 0), Rounding);
            }
        });

    [Fact]
    public void Sampling_agrees_within_its_error() =>
        Gen.Select(RankingGen.Case(4, 5), Gen.ULong).Sample((given, seed) =>
        {
            const int Draws = 4_000;
            var (order, values) = given;
            if (ExactAcceptability.Of(values, new(order)) is not { } exact || OnlyRoundingDecides(order, values))
            {
                return;
            }

            var sampled = Acceptability.Of(values, WeightSample.Draw(order, Draws, seed));
            for (int i = 0; i < exact.Alternatives; i++)
            {
                for (int rank = 0; rank < exact.Alternatives; rank++)
                {
                    double share = Math.Clamp(exact.RankShare(i, rank), 0, 1);

                    // Three half-widths are almost six standard errors; the rest is for very small shares.
                    double within = (3 * SamplingError.HalfWidth(share, Draws)) + (6.0 / Draws);
                    Assert.Equal(share, sampled.RankShare(i, rank), within);
                }
            }
        });

    [Fact]
    public void Shares_add_up_to_one_and_central_weights_are_allowed() =>
        RankingGen.Case(4, 4).Sample((order, values) =>
        {
            var exact = ExactAcceptability.Of(values, new(order))!;
            for (int i = 0; i < exact.Alternatives; i++)
            {
                Assert.Equal(1, Enumerable.Range(0, exact.Alternatives).Sum(rank => exact.RankShare(i, rank)), Rounding);
                Assert.Equal(1, Enumerable.Range(0, exact.Alternatives).Sum(k => exact.RankShare(k, i)), Rounding);
                Assert.Equal(exact.RankShare(i, 0) > 0, exact.CentralWeights(i) is not null);
                if (exact.CentralWeights(i) is { } central)
                {
                    WeightSetTests.AssertAllowed(order, central.AsSpan());
                }
            }
        });

    /// <summary>Different values with the same sum for all allowed weights: a sample sees the last bits, the exact way does not.</summary>
    private static bool OnlyRoundingDecides(PriorityOrder order, CriterionValues values)
    {
        WeightSet set = new(order);
        double[][] rows = [.. Enumerable.Range(0, values.Alternatives).Select(
            i => Enumerable.Range(0, values.Criteria).Select(c => values[0, i, c]).ToArray())];
        return rows.Any(one => rows.Any(other => !one.SequenceEqual(other)
            && Dominance.LeastLead(set, one, other) > -1e-12 && Dominance.GreatestLead(set, one, other) < 1e-12));
    }

    [Fact]
    public void It_gives_up_when_there_are_too_many_pieces() =>
        Assert.Null(ExactAcceptability.Of(RankingGen.Random(13, 8, 1, seed: 1), new(PriorityOrder.None(8)), mostPieces: 50));
}
