using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Tests.Ranking;

public sealed class SamplingErrorTests
{
    /// <summary>Counts for the bound 1.96² / (4 d²) as Tervonen and Lahdelma (2007) use it (from memory; 9,604 by hand).</summary>
    [Theory]
    [InlineData(0.01, 9_604)]
    [InlineData(0.005, 38_416)]
    [InlineData(0.002, 240_100)]
    [InlineData(0.5, 4)]
    public void Draws_follow_from_the_wanted_half_width(double halfWidth, int draws) =>
        Assert.Equal(draws, SamplingError.DrawsFor(halfWidth));

    [Fact]
    public void The_count_of_draws_keeps_the_worst_share_within_the_half_width()
    {
        Assert.Equal(0.01, SamplingError.HalfWidth(0.5, SamplingError.DrawsFor(0.01)), 1e-12);
        Assert.Equal(0, SamplingError.HalfWidth(0, 100));
        Assert.True(SamplingError.HalfWidth(0.1, 9_604) < 0.0061);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.51)]
    [InlineData(double.NaN)]
    public void A_half_width_that_means_nothing_is_refused(double halfWidth) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SamplingError.DrawsFor(halfWidth));

    [Fact]
    public void Shares_and_counts_that_mean_nothing_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SamplingError.HalfWidth(1.1, 10));
        Assert.Throws<ArgumentOutOfRangeException>(() => SamplingError.HalfWidth(double.NaN, 10));
        Assert.Throws<ArgumentOutOfRangeException>(() => SamplingError.HalfWidth(0.5, 0));
    }
}
