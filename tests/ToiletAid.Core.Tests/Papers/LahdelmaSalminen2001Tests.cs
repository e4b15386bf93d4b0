using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Tests.Papers;

/// <summary>SMAA-2 of Lahdelma and Salminen (2001), Operations Research 49:444, on a case that is solved by hand: with the values
/// (1, 0, 1) and (0, 1, 0) and any weights, the first wins exactly when the second weight is below one half, which holds in 3/4 of
/// the simplex; the means of the two parts are (7/18, 2/9, 7/18) and (1/6, 2/3, 1/6).</summary>
public sealed class LahdelmaSalminen2001Tests
{
    private const int Draws = 240_100;

    private static readonly CriterionValues Opposites = CriterionValues.Of(2, 3, 1, [1, 0, 1, 0, 1, 0]);

    [Fact]
    public void Two_opposite_alternatives_share_the_simplex_three_to_one()
    {
        var result = Acceptability.Of(Opposites, WeightSample.Draw(PriorityOrder.None(3), Draws, seed: 11));
        Assert.Equal(0.75, result.RankShare(0, 0), 0.004);
        Assert.Equal(0.25, result.RankShare(0, 1), 0.004);
        Assert.Equal(0.25, result.RankShare(1, 0), 0.004);
        Assert.Equal(0.75, result.RankShare(1, 1), 0.004);
        AssertNear([7 / 18.0, 2 / 9.0, 7 / 18.0], [.. result.CentralWeights[0]!.Value], 0.002);
        AssertNear([1 / 6.0, 2 / 3.0, 1 / 6.0], [.. result.CentralWeights[1]!.Value], 0.004);
        Assert.Equal(1.0, result.ConfidenceFactors[0]);
        Assert.Equal(1.0, result.ConfidenceFactors[1]);
    }

    [Fact]
    public void Equal_alternatives_share_every_rank_and_have_the_middle_of_the_simplex_as_central_weights()
    {
        // The second example of the same kind, all values 0: central weights (1/3, 1/3, 1/3) within 0.01.
        var result = Acceptability.Of(new CriterionValues(2, 3), WeightSample.Draw(PriorityOrder.None(3), 9_604, seed: 12));
        for (int alternative = 0; alternative < 2; alternative++)
        {
            Assert.Equal(0.5, result.RankShare(alternative, 0));
            Assert.Equal(0.5, result.RankShare(alternative, 1));
            Assert.Equal(0.0, result.PairwiseWinningShare(alternative, 1 - alternative));
            AssertNear([1 / 3.0, 1 / 3.0, 1 / 3.0], [.. result.CentralWeights[alternative]!.Value], 0.01);
        }
    }

    private static void AssertNear(double[] expected, double[] actual, double within)
    {
        Assert.Equal(expected.Length, actual.Length);
        for (int i = 0; i < expected.Length; i++)
        {
            Assert.Equal(expected[i], actual[i], within);
        }
    }
}
