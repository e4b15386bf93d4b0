using System.Numerics;
using CsCheck;
using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Tests.Ranking;

public sealed class ShapleySharesTests
{
    private const double Rounding = 1e-12;

    private static readonly Gen<double[]> Games =
        Gen.Int[0, 6].SelectMany(items => Gen.Double[-10, 10].Array[1 << items]);

    /// <summary>The glove game: two own a left glove, one a right glove, only a pair is worth anything. Shares 1/6, 1/6, 4/6 (textbook
    /// case from memory; by hand: the right glove completes a pair unless it comes first).</summary>
    [Fact]
    public void Owners_of_gloves_share_a_pair()
    {
        double[] shares = ShapleyShares.Exact(3, set => (set & 4) != 0 && (set & 3) != 0 ? 1 : 0);
        Assert.Equal(1 / 6.0, shares[0], Rounding);
        Assert.Equal(1 / 6.0, shares[1], Rounding);
        Assert.Equal(4 / 6.0, shares[2], Rounding);
    }

    /// <summary>An airport's runway, Littlechild and Owen (1973), Management Science 20:370 (from memory): each length is paid
    /// equally by those who need it. Costs 1, 3, 6 by hand: 1/3; 1/3 + 2/2; 1/3 + 2/2 + 3.</summary>
    [Fact]
    public void Users_of_a_runway_share_what_they_need()
    {
        double[] costs = [1, 3, 6];
        double[] shares = ShapleyShares.Exact(3, set => costs.Where((_, i) => (set >> i & 1) != 0).DefaultIfEmpty().Max());
        Assert.Equal(1 / 3.0, shares[0], Rounding);
        Assert.Equal(4 / 3.0, shares[1], Rounding);
        Assert.Equal(13 / 3.0, shares[2], Rounding);
    }

    [Fact]
    public void Shares_are_the_mean_over_all_orders() =>
        Games.Sample(values =>
        {
            int items = BitOperations.Log2((uint)values.Length);
            double[] sums = new double[items];
            int orders = 0;
            foreach (int[] order in Orders([.. Enumerable.Range(0, items)]))
            {
                int set = 0;
                foreach (int item in order)
                {
                    sums[item] += values[set | (1 << item)] - values[set];
                    set |= 1 << item;
                }

                orders++;
            }

            double[] shares = ShapleyShares.Exact(values);
            for (int item = 0; item < items; item++)
            {
                Assert.Equal(sums[item] / orders, shares[item], 1e-10);
            }
        });

    [Fact]
    public void Shares_add_up_to_the_whole_change() =>
        Games.Sample(values => Assert.Equal(values[^1] - values[0], ShapleyShares.Exact(values).Sum(), 1e-10));

    [Fact]
    public void An_item_that_changes_nothing_gets_nothing_and_twins_get_the_same() =>
        Gen.Double[-10, 10].Array[6].Sample(byCount =>
        {
            // Items 0 to 3 count alike, item 4 not at all.
            double[] shares = ShapleyShares.Exact(5, set => byCount[BitOperations.PopCount(set & 15)]);
            Assert.Equal(0.0, shares[4]);
            for (int item = 1; item < 4; item++)
            {
                Assert.Equal(shares[0], shares[item], 1e-10);
            }
        });

    [Fact]
    public void Twelve_items_that_only_add_get_what_they_add()
    {
        double[] shares = ShapleyShares.Exact(12, set => Enumerable.Range(0, 12).Sum(i => (set >> i & 1) != 0 ? i * i : 0.0));
        for (int item = 0; item < 12; item++)
        {
            Assert.Equal(item * item, shares[item], 1e-9);
        }
    }

    [Fact]
    public void Sampled_orders_come_near_and_add_up_too()
    {
        double[] weights = [.. Enumerable.Range(1, 10).Select(i => (double)i)];
        double Value(ulong set) => 5 + Math.Sqrt(weights.Where((_, i) => (set >> i & 1) != 0).Sum());
        double[] exact = ShapleyShares.Exact(10, Value), sampled = ShapleyShares.Sampled(10, Value, 2_000, seed: 8);
        Assert.Equal(Value(1023) - Value(0), sampled.Sum(), 1e-9);
        for (int item = 0; item < 10; item++)
        {
            Assert.Equal(exact[item], sampled[item], 0.02);
        }

        Assert.Equal(sampled, ShapleyShares.Sampled(10, Value, 2_000, seed: 8));
    }

    [Fact]
    public void Sets_that_are_not_complete_and_too_many_items_are_refused()
    {
        Assert.Throws<ArgumentException>(() => ShapleyShares.Exact([1, 2, 3]));
        Assert.Throws<ArgumentException>(() => ShapleyShares.Exact([]));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShapleyShares.Exact(13, _ => 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShapleyShares.Sampled(64, _ => 0, 1, seed: 1));
        Assert.Empty(ShapleyShares.Exact(0, _ => 5));
    }

    private static IEnumerable<int[]> Orders(int[] items) =>
        items.Length == 0 ? [[]] : items.SelectMany(first => Orders([.. items.Where(i => i != first)]).Select(rest => (int[])[first, .. rest]));
}
