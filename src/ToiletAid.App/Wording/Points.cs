namespace ToiletAid.App.Wording;

/// <summary>Shares as points of 100 with one decimal, rounded so that the parts that are read out add up to the whole that is read out.</summary>
internal static class Points
{
    private const double TenthsInAll = 1000;

    /// <summary>A value of 0 to 1 in tenths of a point.</summary>
    internal static long Tenths(double value) => (long)Math.Round(value * TenthsInAll);

    /// <summary>The parts in tenths of a point, adding up to <paramref name="whole"/>: each is rounded down, and what is missing goes to those that lost most.</summary>
    internal static long[] Parts(IReadOnlyList<double> parts, long whole)
    {
        long[] tenths = [.. parts.Select(p => (long)Math.Floor(p * TenthsInAll))];
        int[] byLoss = [.. Enumerable.Range(0, tenths.Length).OrderByDescending(i => (parts[i] * TenthsInAll) - tenths[i])];
        long missing = whole - tenths.Sum();
        for (int i = 0; i < byLoss.Length && missing > 0; i++, missing--)
        {
            tenths[byLoss[i]]++;
        }

        // More than a tenth each can only be missing when the whole is not the sum of the parts; then it is put where it is seen least.
        if (missing != 0 && tenths.Length > 0)
        {
            tenths[byLoss[^1]] += missing;
        }

        return tenths;
    }

    /// <summary>"minus 3.4".</summary>
    internal static string Say(long tenths) => (tenths < 0 ? "minus " : string.Empty) + Typed.Spoken.Number(Math.Abs(tenths) / 10.0);
}
