using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Tests.Reach;

public sealed class LatinHypercubeDrawsTests
{
    [Fact]
    public void Every_part_of_a_stream_is_visited_once()
    {
        const int Draws = 64;
        var hypercube = new LatinHypercubeDraws(Draws, 3);
        for (int thing = 0; thing < LatinHypercubeDraws.Count; thing++)
        {
            int[] parts = [.. Enumerable.Range(0, Draws).Select(i => (int)(hypercube.Share(thing, i) * Draws)).Order()];
            Assert.Equal(Enumerable.Range(0, Draws), parts);
        }
    }

    // The greatest number below 1, in the last part: the sum has fewer digits behind the point and is rounded up.
    [Theory]
    [InlineData(1)]
    [InlineData(64)]
    [InlineData(4096)]
    public void The_last_part_ends_below_one(int parts) => Assert.InRange(LatinHypercubeDraws.Within(parts - 1, 1 - Math.Pow(2, -53), parts), 0.5, 1 - Math.Pow(2, -53));
}
