using CsCheck;
using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Tests.Ranking;

public sealed class WeightSetTests
{
    private const double Rounding = 1e-12;

    [Fact]
    public void Corners_of_a_complete_order_give_equal_weight_to_the_first_places()
    {
        double[][] corners = [.. new WeightSet(PriorityOrder.Strict(2, 0, 1)).ExtremePoints()];
        Assert.Equal([[0, 0, 1], [.5, 0, .5], [1 / 3.0, 1 / 3.0, 1 / 3.0]], corners);
    }

    [Fact]
    public void Equal_weights_in_one_place_have_a_centroid_of_their_own()
    {
        // By hand: corners (1/2, 1/2, 0) and (1/3, 1/3, 1/3), mean (5/12, 5/12, 1/6).
        var centroid = new WeightSet(PriorityOrder.Of(3, [[0, 1], [2]])).Centroid;
        Assert.Equal(5 / 12.0, centroid[0], Rounding);
        Assert.Equal(5 / 12.0, centroid[1], Rounding);
        Assert.Equal(1 / 6.0, centroid[2], Rounding);
    }

    [Fact]
    public void When_either_may_come_first_the_centroid_is_the_mean_of_the_tied_places()
    {
        double[] shared = RankOrderCentroid.WeightsWithTies(2, 1, 3);
        var centroid = new WeightSet(PriorityOrder.Of(6, [[4, 1], [0]], TieMeaning.EitherFirst)).Centroid;
        Assert.Equal(shared[0], centroid[4], Rounding);
        Assert.Equal(shared[0], centroid[1], Rounding);
        Assert.Equal(shared[1], centroid[0], Rounding);
        Assert.Equal(shared[2], centroid[2], Rounding);
        Assert.Equal(shared[2], centroid[5], Rounding);
    }

    [Fact]
    public void All_corners_keep_the_order() =>
        RankingGen.Order(1, 6).Sample(order =>
        {
            foreach (double[] corner in new WeightSet(order).ExtremePoints())
            {
                AssertAllowed(order, corner);
            }
        });

    [Fact]
    public void There_is_a_corner_for_every_place_and_for_every_choice_where_the_order_is_open() =>
        RankingGen.Order(1, 6).Sample(order =>
        {
            double[][] corners = [.. new WeightSet(order).ExtremePoints()];
            int expected = (1 << order.Unmentioned.Length) - 1 + order.Places.Sum(
                place => order.Ties == TieMeaning.EqualWeights ? 1 : (1 << place.Length) - 1);
            Assert.Equal(expected, corners.Select(corner => string.Join(' ', corner)).Distinct(StringComparer.Ordinal).Count());
            Assert.Equal(expected, corners.Length);
        });

    [Fact]
    public void Extremes_of_a_weighted_sum_are_those_over_the_corners() =>
        RankingGen.Case(1, 7).Sample((order, values) =>
        {
            double[] one = [.. Enumerable.Range(0, order.Criteria).Select(criterion => values[0, 0, criterion])];
            WeightSet set = new(order);
            double[] sums = [.. set.ExtremePoints().Select(corner => corner.Zip(one, (w, v) => w * v).Sum())];
            Assert.Equal(sums.Min(), set.Least(one), Rounding);
            Assert.Equal(sums.Max(), set.Greatest(one), Rounding);
        });

    [Fact]
    public void The_centroid_is_allowed_and_is_the_mean_of_the_simplexes() =>
        RankingGen.Order(1, 5).Sample(order =>
        {
            WeightSet set = new(order);
            AssertAllowed(order, set.Centroid);
            double[][][] simplexes = [.. set.Simplexes()];
            for (int criterion = 0; criterion < order.Criteria; criterion++)
            {
                double mean = simplexes.Average(simplex => simplex.Average(corner => corner[criterion]));
                Assert.Equal(mean, set.Centroid[criterion], Rounding);
            }
        });

    [Fact]
    public void Values_of_another_number_of_criteria_are_refused() =>
        Assert.Throws<ArgumentException>(() => new WeightSet(PriorityOrder.None(3)).Least([1, 2]));

    internal static void AssertAllowed(PriorityOrder order, ReadOnlySpan<double> weights)
    {
        double sum = 0;
        foreach (double weight in weights)
        {
            Assert.True(weight >= 0);
            sum += weight;
        }

        Assert.Equal(1, sum, Rounding);
        double least = double.PositiveInfinity;
        foreach (var place in order.Places)
        {
            double smallestHere = double.PositiveInfinity;
            foreach (int criterion in place)
            {
                Assert.True(weights[criterion] <= least + Rounding);
                Assert.True(order.Ties == TieMeaning.EitherFirst || Math.Abs(weights[criterion] - weights[place[0]]) <= Rounding);
                smallestHere = Math.Min(smallestHere, weights[criterion]);
            }

            least = smallestHere;
        }

        foreach (int criterion in order.Unmentioned)
        {
            Assert.True(weights[criterion] <= least + Rounding);
        }
    }
}
