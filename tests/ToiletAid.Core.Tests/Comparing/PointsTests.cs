using CsCheck;
using ToiletAid.App.Wording;

namespace ToiletAid.Core.Tests.Comparing;

public sealed class PointsTests
{
    /// <summary>What is read out adds up, and no part is more than a tenth of a point from what it is.</summary>
    [Fact]
    public void Rounded_parts_add_up_to_the_rounded_whole() =>
        Gen.Select(Gen.Double[-1, 1], Gen.Double[-0.3, 0.3].Array[1, 10]).Sample((before, parts) =>
        {
            long whole = Points.Tenths(before + parts.Sum()) - Points.Tenths(before);

            long[] tenths = Points.Parts(parts, whole);

            Assert.Equal(whole, tenths.Sum());
            Assert.All(parts.Zip(tenths), p => Assert.True(Math.Abs((p.First * 1000) - p.Second) <= 1 + 1e-6));
        });

    [Fact]
    public void A_negative_number_is_said_with_minus() => Assert.Equal("minus 3.4", Points.Say(-34));
}
