using ToiletAid.Core.Randomness;

namespace ToiletAid.Core.Tests.Randomness;

public sealed class RandomDrawsTests
{
    [Theory]
    [InlineData(0UL)]
    [InlineData(1UL << 63)]
    [InlineData(ulong.MaxValue - (1UL << 11))]
    [InlineData(ulong.MaxValue)]
    public void Every_number_lies_above_zero_and_below_one(ulong bits)
    {
        double u = RandomDraws.Uniform(bits);
        Assert.True(u > 0 && u < 1, $"{u:R}");
        Assert.True(double.IsFinite(StandardNormal.Quantile(u)));
    }
}
