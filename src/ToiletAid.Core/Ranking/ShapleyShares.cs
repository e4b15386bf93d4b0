using System.Numerics;
using ToiletAid.Core.Randomness;

namespace ToiletAid.Core.Ranking;

/// <summary>Divides a total change fairly over the items that changed together.</summary>
/// <remarks>Shapley (1953), "A value for n-person games" (from memory): an item's share is what it adds to the items before it, averaged over
/// all orders in which they could have changed. The shares add up to the whole change; items that do the same get the same; an item that
/// never adds anything gets nothing.</remarks>
public static class ShapleyShares
{
    /// <summary>Items that are still divided exactly: 4,096 evaluations. Decision: above that, orders are sampled.</summary>
    public const int LargestExact = 12;

    /// <summary>Exact shares.</summary>
    /// <param name="items">Number of items, 0 to <see cref="LargestExact"/>.</param>
    /// <param name="value">Value when exactly the items in a set have changed; bit i stands for item i. Called once for each set.</param>
    /// <returns>One share for each item; they add up to the value of all minus the value of none, up to rounding.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="items"/> is out of range.</exception>
    public static double[] Exact(int items, Func<ulong, double> value)
    {
        ArgumentNullException.ThrowIfNull(value);
        ArgumentOutOfRangeException.ThrowIfNegative(items);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(items, LargestExact);
        double[] values = new double[1 << items];
        for (int set = 0; set < values.Length; set++)
        {
            values[set] = value((ulong)set);
        }

        return Exact(values);
    }

    /// <summary>Exact shares from the values of all sets.</summary>
    /// <param name="values">2^k values for k items; index bit i stands for item i.</param>
    /// <returns>One share for each item; they add up to the last value minus the first, up to rounding.</returns>
    /// <exception cref="ArgumentException">The number of values is not a power of two.</exception>
    public static double[] Exact(ReadOnlySpan<double> values)
    {
        if (!BitOperations.IsPow2(values.Length))
        {
            throw new ArgumentException($"{values.Length} values are not one for each set", nameof(values));
        }

        int items = BitOperations.Log2((uint)values.Length);
        double[] orders = OrdersBySize(items), shares = new double[items];
        for (int item = 0; item < items; item++)
        {
            double share = 0;
            for (int set = 0; set < values.Length; set++)
            {
                if ((set >> item & 1) == 0)
                {
                    share += orders[BitOperations.PopCount((uint)set)] * (values[set | (1 << item)] - values[set]);
                }
            }

            shares[item] = share;
        }

        return shares;
    }

    /// <summary>Shares estimated from sampled orders, for many items.</summary>
    /// <param name="items">Number of items, 1 to 63.</param>
    /// <param name="value">Value when exactly the items in a set have changed; bit i stands for item i.</param>
    /// <param name="orders">Number of sampled orders, 1 or more; each is used forwards and backwards.</param>
    /// <param name="seed">Seed of the whole run.</param>
    /// <param name="stream">Number of the random stream.</param>
    /// <returns>One share for each item. They add up to the whole change, up to rounding, because they do so in every single order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static double[] Sampled(int items, Func<ulong, double> value, int orders, ulong seed, ulong stream = 0)
    {
        ArgumentNullException.ThrowIfNull(value);
        ArgumentOutOfRangeException.ThrowIfLessThan(items, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(items, 63);
        ArgumentOutOfRangeException.ThrowIfLessThan(orders, 1);
        RandomDraws draws = new(seed, stream);
        int[] order = [.. Enumerable.Range(0, items)];
        double[] sums = new double[items];
        double none = value(0);
        for (int sample = 0; sample < orders; sample++)
        {
            for (int i = items - 1; i > 0; i--)
            {
                int j = (int)(draws.NextUniform() * (i + 1));
                (order[i], order[j]) = (order[j], order[i]);
            }

            AddSteps(order, value, none, sums);
            Array.Reverse(order);
            AddSteps(order, value, none, sums);
        }

        for (int item = 0; item < items; item++)
        {
            sums[item] /= 2.0 * orders;
        }

        return sums;
    }

    private static void AddSteps(int[] order, Func<ulong, double> value, double none, double[] sums)
    {
        ulong set = 0;
        double before = none;
        foreach (int item in order)
        {
            set |= 1UL << item;
            double after = value(set);
            sums[item] += after - before;
            before = after;
        }
    }

    /// <summary>Share of all orders in which exactly a given set of s items comes before an item: s! (k - 1 - s)! / k!.</summary>
    private static double[] OrdersBySize(int items)
    {
        double[] orders = new double[items];
        double choices = 1;
        for (int size = 0; size < items; size++)
        {
            // choices is (k - 1) over s, a whole number.
            orders[size] = 1 / (items * choices);
            choices = choices * (items - 1 - size) / (size + 1);
        }

        return orders;
    }
}
