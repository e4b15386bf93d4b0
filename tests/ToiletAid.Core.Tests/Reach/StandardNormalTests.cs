using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Tests.Reach;

public sealed class StandardNormalTests
{
    // Printed table of the standard normal distribution, for example NIST/SEMATECH e-Handbook 1.3.6.7.1 (from memory).
    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(0.9, 1.281552)]
    [InlineData(0.95, 1.644854)]
    [InlineData(0.975, 1.959964)]
    [InlineData(0.995, 2.575829)]
    [InlineData(0.999, 3.090232)]
    [InlineData(0.01, -2.326348)]
    public void Quantiles_are_those_of_the_printed_table(double share, double deviate) =>
        Assert.Equal(deviate, StandardNormal.Quantile(share), 1e-6);

    [Fact]
    public void Every_part_of_a_stream_is_visited_once()
    {
        const int Draws = 64;
        var chance = new Chance(Draws, 3);
        for (int thing = 0; thing < Chance.Count; thing++)
        {
            int[] parts = [.. Enumerable.Range(0, Draws).Select(i => (int)(chance.Share(thing, i) * Draws)).Order()];
            Assert.Equal(Enumerable.Range(0, Draws), parts);
        }
    }
}
