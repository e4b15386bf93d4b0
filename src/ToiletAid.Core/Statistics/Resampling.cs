using ToiletAid.Core.Randomness;

namespace ToiletAid.Core.Statistics;

/// <summary>The bootstrap: how far a figure would move with other units of the same kind (Efron 1979, percentile interval).</summary>
public static class Resampling
{
    /// <summary>The interval of a figure over units drawn with replacement.</summary>
    /// <param name="units">Number of units, 1 or more.</param>
    /// <param name="figure">The figure of a drawn set, given by the numbers of its units; null where it has none.</param>
    /// <param name="confidence">Above 0 and below 1.</param>
    /// <param name="draws">Sets drawn, 1 or more.</param>
    /// <param name="seed">Seed of the draws.</param>
    /// <returns>Null when fewer than half of the sets have such a figure.</returns>
    public static Interval? Percentiles(int units, Func<int[], double?> figure, double confidence, int draws, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(figure);
        ArgumentOutOfRangeException.ThrowIfLessThan(units, 1);
        var random = new RandomDraws(seed, 0x5245_5341);
        var figures = new List<double>(draws);
        int[] drawn = new int[units];
        for (int draw = 0; draw < draws; draw++)
        {
            for (int i = 0; i < units; i++)
            {
                drawn[i] = (int)(random.NextUniform() * units);
            }

            if (figure(drawn) is { } value)
            {
                figures.Add(value);
            }
        }

        if (figures.Count * 2 < draws)
        {
            return null;
        }

        figures.Sort();
        double tail = (1 - confidence) / 2;
        return new(At(figures, tail), At(figures, 1 - tail));
    }

    private static double At(List<double> sorted, double share) => sorted[(int)Math.Round(share * (sorted.Count - 1), MidpointRounding.AwayFromZero)];
}
