namespace ToiletAid.Core.Plans;

/// <summary>Plans of one kind, and in which order their keys put them, worked out where it is looked at, and once.</summary>
/// <param name="plans">The plans; not to be changed.</param>
internal sealed class PlanList(Plan[] plans)
{
    private int[]? _places;

    /// <summary>The plans.</summary>
    internal ReadOnlySpan<Plan> Plans => plans;

    /// <summary>Puts plans in order, the best first; those that are worth the same by their keys.</summary>
    /// <param name="which">Numbers of plans.</param>
    /// <param name="worths">What each of all plans is worth.</param>
    internal void Sort(int[] which, double[] worths)
    {
        double[] keys = new double[which.Length];
        for (int i = 0; i < keys.Length; i++)
        {
            keys[i] = -worths[which[i]];
        }

        Array.Sort(keys, which);
        for (int from = 0, to; from < which.Length; from = to)
        {
            for (to = from + 1; to < which.Length && keys[to] == keys[from]; to++)
            {
            }

            if (to - from > 1)
            {
                int[] places = _places ??= Places();
                which.AsSpan(from, to - from).Sort((a, b) => places[a].CompareTo(places[b]));
            }
        }
    }

    /// <summary>Which place each has among all when they are put in order by their keys.</summary>
    private int[] Places()
    {
        string[] keys = [.. plans.Select(p => p.Key)];
        int[] inOrder = [.. Enumerable.Range(0, keys.Length)], places = new int[keys.Length];
        Array.Sort(keys, inOrder, StringComparer.Ordinal);
        for (int place = 0; place < inOrder.Length; place++)
        {
            places[inOrder[place]] = place;
        }

        return places;
    }
}
