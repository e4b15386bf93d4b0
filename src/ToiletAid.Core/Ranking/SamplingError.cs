namespace ToiletAid.Core.Ranking;

/// <summary>How far a sampled share may be off.</summary>
/// <remarks>95 % half-widths of the normal approximation, and the count of draws that bounds the worst case (a share of one half), as used
/// for SMAA by Tervonen and Lahdelma (2007), European Journal of Operational Research 178:500-513 (the bound from memory).</remarks>
public static class SamplingError
{
    private const double NormalQuantile = 1.96;

    /// <summary>Number of independent draws that keeps every share within a half-width, 95 times in 100.</summary>
    /// <param name="halfWidth">Above 0, at most 0.5.</param>
    /// <returns>1.96² / (4 d²), rounded up: 9,604 for 0.01.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="halfWidth"/> is out of range.</exception>
    public static int DrawsFor(double halfWidth)
    {
        if (!(halfWidth > 0 && halfWidth <= 0.5))
        {
            throw new ArgumentOutOfRangeException(nameof(halfWidth), halfWidth, "a half-width is above 0 and at most 0.5");
        }

        // Decimal, because in binary 0.01 gives 9,604 and a little, which would be rounded up to 9,605.
        decimal width = (decimal)halfWidth;
        return checked((int)decimal.Ceiling(1.96m * 1.96m / (4 * width * width)));
    }

    /// <summary>95 % half-width of a share that was estimated from independent draws.</summary>
    /// <param name="share">Estimated share, 0 to 1.</param>
    /// <param name="draws">Number of draws, 1 or more.</param>
    /// <returns>0 for a share of 0 or 1, which says little when draws are few: what never came up in n draws may still have a share of
    /// 3/n (the rule of three, from memory).</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
    public static double HalfWidth(double share, int draws)
    {
        if (!(share >= 0 && share <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(share), share, "a share is 0 to 1");
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 1);
        return NormalQuantile * Math.Sqrt(share * (1 - share) / draws);
    }

    /// <summary>95 % half-width when several weight draws share one draw of the values, so that draws are not independent.</summary>
    /// <param name="hits">Hits by value draw.</param>
    /// <param name="trials">Weight draws by value draw; above 0 in all.</param>
    /// <returns>From the spread between value draws (ratio estimate of clustered sampling, Cochran 1977, from memory).</returns>
    internal static double ClusteredHalfWidth(ReadOnlySpan<double> hits, ReadOnlySpan<int> trials)
    {
        double hitSum = 0, trialSum = 0;
        int clusters = 0;
        for (int i = 0; i < hits.Length; i++)
        {
            hitSum += hits[i];
            trialSum += trials[i];
            clusters += trials[i] > 0 ? 1 : 0;
        }

        double share = hitSum / trialSum, squares = 0;
        for (int i = 0; i < hits.Length; i++)
        {
            double off = hits[i] - (share * trials[i]);
            squares += off * off;
        }

        return NormalQuantile * Math.Sqrt(squares * clusters / (clusters - 1.0)) / trialSum;
    }
}
