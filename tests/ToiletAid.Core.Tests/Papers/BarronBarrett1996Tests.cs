using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Tests.Papers;

/// <summary>Rank-order-centroid weights, Barron and Barrett (1996), Management Science 42:1515. The formula is from memory; the table was
/// computed from it apart from this program and is typed in here to its printed digits.</summary>
public sealed class BarronBarrett1996Tests
{
    public static TheoryData<double[]> Table =>
    [
        new double[] { .7500, .2500 },
        new double[] { .6111, .2778, .1111 },
        new double[] { .5208, .2708, .1458, .0625 },
        new double[] { .4567, .2567, .1567, .0900, .0400 },
        new double[] { .4083, .2417, .1583, .1028, .0611, .0278 },
        new double[] { .3704, .2276, .1561, .1085, .0728, .0442, .0204 },
        new double[] { .3397, .2147, .1522, .1106, .0793, .0543, .0335, .0156 },
    ];

    [Theory]
    [MemberData(nameof(Table))]
    public void Weights_agree_with_the_table(double[] printed)
    {
        double[] weights = RankOrderCentroid.Weights(printed.Length);
        double[] centroid = new WeightSet(PriorityOrder.Strict([.. Enumerable.Range(0, printed.Length)])).Centroid.ToArray();
        for (int place = 0; place < printed.Length; place++)
        {
            Assert.Equal(printed[place], weights[place], 0.5001e-4);
            Assert.Equal(weights[place], centroid[place], 1e-15);
        }
    }

    [Fact]
    public void One_criterion_has_all_the_weight() => Assert.Equal([1.0], RankOrderCentroid.Weights(1));

    [Fact]
    public void Tied_places_get_the_mean_of_the_places_they_cover()
    {
        // Places 2 and 3 of four in the table: (.2708 + .1458) / 2.
        double[] weights = RankOrderCentroid.WeightsWithTies(1, 2, 1);
        Assert.Equal(.5208, weights[0], 0.5001e-4);
        Assert.Equal(.2083, weights[1], 0.5001e-4);
        Assert.Equal(.0625, weights[2], 0.5001e-4);
    }
}
