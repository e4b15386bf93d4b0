using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Tests.Reach;

public sealed class ChanceTests
{
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
