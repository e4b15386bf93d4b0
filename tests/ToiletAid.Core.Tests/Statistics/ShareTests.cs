using CsCheck;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;
using ToiletAid.Core.Statistics;

namespace ToiletAid.Core.Tests.Statistics;

public sealed class ShareTests
{
    /// <summary>4 of 20: example printed in the manual of the R function exactci (0.057334, 0.436614). The others follow from the definition by hand: nothing
    /// of n has the upper end 1 - 0.025^(1/n), all of n the lower end 0.025^(1/n).</summary>
    [Theory]
    [InlineData(4, 20, 0.057334, 0.436614)]
    [InlineData(0, 10, 0, 0.308497)]
    [InlineData(10, 10, 0.691503, 1)]
    [InlineData(0, 20, 0, 0.168433)]
    public void Exact_intervals_are_those_of_published_examples(long count, long of, double low, double high)
    {
        var interval = Shares.Exact(count, of, 0.95);

        Assert.Equal(low, interval.Low, 1e-6);
        Assert.Equal(high, interval.High, 1e-6);
    }

    /// <summary>5 of 100,000 with 90 of 100: example printed in the manual of the R package GenBinomApps.</summary>
    [Fact]
    public void Exact_intervals_hold_for_rare_things()
    {
        var interval = Shares.Exact(5, 100_000, 0.9);

        Assert.Equal(1.97017e-05, interval.Low, 1e-10);
        Assert.Equal(0.0001051275, interval.High, 1e-10);
    }

    [Fact]
    public void The_beta_distribution_is_that_of_a_reference_library() =>
        Gen.Select(Gen.Double[0.001, 0.999], Gen.Double[0.5, 400], Gen.Double[0.5, 400]).Sample((x, a, b) =>
        {
            Assert.Equal(SpecialFunctions.GammaLn(a), BetaDistribution.LogGamma(a), 1e-9 * Math.Max(1, Math.Abs(SpecialFunctions.GammaLn(a))));
            Assert.Equal(Beta.CDF(a, b, x), BetaDistribution.Probability(x, a, b), 1e-10);
            Assert.Equal(x, BetaDistribution.Quantile(BetaDistribution.Probability(x, a, b), a, b), Beta.PDF(a, b, x) > 1e-3 ? 1e-9 : 1);
        }, iter: 2_000);

    [Fact]
    public void Tails_are_those_of_the_binomial_distribution() =>
        Gen.Select(Gen.Int[1, 200], Gen.Double[0.01, 0.99]).SelectMany((n, p) => Gen.Int[0, n].Select(k => (n, p, k))).Sample(t =>
        {
            Assert.Equal(1 - Binomial.CDF(t.p, t.n, t.k - 1), Shares.AtLeast(t.k, t.n, t.p), 1e-9);
            Assert.Equal(t.k == t.n ? 1 : Binomial.CDF(t.p, t.n, t.k), Shares.AtMost(t.k, t.n, t.p), 1e-9);
        }, iter: 2_000);

    /// <summary>The definition: at each end the count has a probability of half of what is left over.</summary>
    [Fact]
    public void At_the_ends_of_an_exact_interval_half_of_the_rest_lies_beyond() =>
        Gen.Int[2, 300].SelectMany(n => Gen.Int[1, n - 1].Select(k => (n, k))).Sample(t =>
        {
            var interval = Shares.Exact(t.k, t.n, 0.95);

            Assert.Equal(0.025, 1 - Binomial.CDF(interval.Low, t.n, t.k - 1), 1e-8);
            Assert.Equal(0.025, Binomial.CDF(interval.High, t.n, t.k), 1e-8);
        }, iter: 500);

    [Fact]
    public void Nothing_tried_says_nothing() => Assert.Equal(new Interval(0, 1), Shares.Exact(0, 0, 0.95));

    [Theory]
    [InlineData(3, 2, 0.95)]
    [InlineData(-1, 2, 0.95)]
    [InlineData(1, 2, 1)]
    public void What_cannot_be_counted_is_refused(long count, long of, double confidence) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Shares.Exact(count, of, confidence));
}
