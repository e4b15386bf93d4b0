using CsCheck;
using ToiletAid.Core.Randomness;

namespace ToiletAid.Core.Tests.Randomness;

public sealed class StandardNormalTests
{
    /// <summary>Printed tables of the normal distribution: common practice.</summary>
    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(0.8413447460685429, 1)]
    [InlineData(0.9, 1.2815515655446004)]
    [InlineData(0.95, 1.6448536269514722)]
    [InlineData(0.975, 1.959963984540054)]
    [InlineData(0.999, 3.090232306167813)]
    [InlineData(0.025, -1.959963984540054)]
    [InlineData(1e-9, -5.997807015007687)]
    public void Percentiles_are_those_of_printed_tables(double p, double z)
    {
        Assert.Equal(z, StandardNormal.Quantile(p), 1e-12);
        Assert.Equal(p, StandardNormal.Probability(z), 1e-12);
    }

    [Fact]
    public void Percentile_and_z_score_undo_each_other() =>
        Gen.Double[-6, 6].Sample(z => Assert.Equal(z, StandardNormal.Quantile(StandardNormal.Probability(z)), 1e-6), iter: 5_000);

    [Theory]
    [InlineData(double.NegativeInfinity, 0)]
    [InlineData(-40, 0)]
    [InlineData(40, 1)]
    public void Far_out_nothing_is_left(double z, double p) => Assert.Equal(p, StandardNormal.Probability(z));

    [Fact]
    public void What_is_not_a_number_has_no_share() => Assert.Equal(double.NaN, StandardNormal.Probability(double.NaN));
}
