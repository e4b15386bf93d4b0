using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Tests.Ranking;

/// <summary>What does not belong together is refused, and never read past its end.</summary>
public sealed class RefusalTests
{
    private static readonly CriterionValues TwoOfTwo = CriterionValues.Of(2, 2, 1, [1, 0, 0.5, 0.5]);
    private static readonly WeightSet ThreeCriteria = new(PriorityOrder.None(3));
    private static readonly WeightSample ThreeDrawn = WeightSample.Draw(PriorityOrder.None(3), 8, seed: 1);

    [Fact]
    public void Weights_of_other_criteria_than_the_values_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Acceptability.Of(TwoOfTwo, ThreeDrawn));
        Assert.Throws<ArgumentException>(() => FirstRank.Shares(TwoOfTwo, ThreeDrawn));
        Assert.Throws<ArgumentException>(() => FirstRank.SharesAt(TwoOfTwo, [0.2, 0.3, 0.5]));
        Assert.Throws<ArgumentException>(() => ExactAcceptability.Of(TwoOfTwo, ThreeCriteria));
        Assert.Throws<ArgumentException>(() => LeadContributions.Of(TwoOfTwo, ThreeCriteria, 0, 1));
    }

    [Fact]
    public void An_alternative_or_rank_that_is_not_there_is_refused()
    {
        var sampled = Acceptability.Of(TwoOfTwo, WeightSample.Draw(PriorityOrder.None(2), 8, seed: 1));
        var exact = ExactAcceptability.Of(TwoOfTwo, new(PriorityOrder.None(2)))!;
        Assert.Throws<ArgumentOutOfRangeException>(() => sampled.RankShare(0, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => sampled.RankShare(2, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => exact.RankShare(0, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => exact.RankShare(2, 0));
    }

    [Fact]
    public void Orders_that_differ_in_one_place_are_not_the_same() =>
        Assert.NotEqual(PriorityOrder.Of(4, [[0], [1]]), PriorityOrder.Of(4, [[0], [2]]));

    [Fact]
    public void A_centroid_of_no_criteria_and_a_sample_of_no_draws_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => RankOrderCentroid.Weights(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => RankOrderCentroid.WeightsWithTies(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => CriterionValues.Of(0, 1, 1, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => CriterionValues.Of(1, 0, 1, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => CriterionValues.Of(1, 1, 0, []));
    }
}
