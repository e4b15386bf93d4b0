namespace ToiletAid.Core.Statistics;

/// <summary>What a count out of a number of tries says about the share behind it.</summary>
public static class Shares
{
    /// <summary>The exact interval of a share (Clopper and Pearson 1934): the true share lies in it at least as often as the confidence says, however few the tries.</summary>
    /// <param name="count">How many, 0 or more.</param>
    /// <param name="of">Out of how many; at least <paramref name="count"/>.</param>
    /// <param name="confidence">Above 0 and below 1, such as 0.95.</param>
    /// <returns>From 0 to 1 where nothing was tried.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are more than were tried, or a number is out of its range.</exception>
    public static Interval Exact(long count, long of, double confidence)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, of);
        double tail = Tail(confidence);
        return new(
            count == 0 ? 0 : BetaDistribution.Quantile(tail, count, of - count + 1),
            count == of ? 1 : BetaDistribution.Quantile(1 - tail, count + 1, of - count));
    }

    /// <summary>Probability of at least so many out of so many, when each has the same chance.</summary>
    /// <param name="count">How many, 0 or more.</param>
    /// <param name="of">Out of how many.</param>
    /// <param name="chance">Chance of each, 0 to 1.</param>
    public static double AtLeast(long count, long of, double chance) =>
        count <= 0 ? 1 : count > of ? 0 : BetaDistribution.Probability(chance, count, of - count + 1);

    /// <summary>Probability of at most so many out of so many, when each has the same chance.</summary>
    /// <param name="count">How many, 0 or more.</param>
    /// <param name="of">Out of how many.</param>
    /// <param name="chance">Chance of each, 0 to 1.</param>
    public static double AtMost(long count, long of, double chance) => 1 - AtLeast(count + 1, of, chance);

    private static double Tail(double confidence) => confidence is > 0 and < 1
        ? (1 - confidence) / 2
        : throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "a confidence lies between 0 and 1");
}
