using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Tests.Ranking;

public sealed class PriorityOrderTests
{
    [Fact]
    public void Silence_about_a_criterion_is_kept_apart_from_the_places()
    {
        var order = PriorityOrder.Of(5, [[3], [4, 1]]);
        Assert.Equal([0, 2], order.Unmentioned);
        Assert.Equal([1, 4], order.Places[1]);
    }

    [Fact]
    public void Orders_are_equal_when_they_say_the_same()
    {
        var order = PriorityOrder.Of(4, [[2], [0, 3]]);
        Assert.Equal(order, PriorityOrder.Of(4, [[2], [3, 0]]));
        Assert.Equal(order.GetHashCode(), PriorityOrder.Of(4, [[2], [3, 0]]).GetHashCode());
        Assert.NotEqual(order, PriorityOrder.Of(4, [[2], [0], [3]]));
        Assert.NotEqual(order, PriorityOrder.Of(4, [[2], [0, 3]], TieMeaning.EitherFirst));
        Assert.NotEqual(order, PriorityOrder.Of(5, [[2], [0, 3]]));
        Assert.NotEqual(PriorityOrder.None(4), order);
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PriorityOrder.None(0));
        Assert.Throws<ArgumentException>(() => PriorityOrder.Of(3, [[0], []]));
        Assert.Throws<ArgumentException>(() => PriorityOrder.Of(3, [[0, 1], [1]]));
        Assert.Throws<ArgumentException>(() => PriorityOrder.Of(3, [[3]]));
        Assert.Throws<ArgumentException>(() => PriorityOrder.Of(3, [[-1]]));
        Assert.Throws<ArgumentException>(() => PriorityOrder.Strict(0, 2));
    }
}
