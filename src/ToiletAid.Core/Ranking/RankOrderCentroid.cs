namespace ToiletAid.Core.Ranking;

/// <summary>The mean of all weights that agree with a complete order of the criteria.</summary>
/// <remarks>Barron and Barrett (1996), Management Science 42:1515-1523 (formula from memory): the weight of place i among n is the mean over
/// n of 1/i + 1/(i + 1) + ... + 1/n.</remarks>
public static class RankOrderCentroid
{
    /// <summary>Weights by place, most important first.</summary>
    /// <param name="criteria">Number of criteria, 1 or more.</param>
    /// <returns>Adds up to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="criteria"/> is below 1.</exception>
    public static double[] Weights(int criteria)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(criteria, 1);
        double[] weights = new double[criteria];
        double sum = 0;
        for (int place = criteria; place >= 1; place--)
        {
            sum += 1.0 / place;
            weights[place - 1] = sum / criteria;
        }

        return weights;
    }

    /// <summary>Weights by place when criteria share places: each gets the mean of the places that they cover.</summary>
    /// <param name="placeSizes">Number of criteria in each place, most important first; all 1 or more.</param>
    /// <returns>One weight for each place; times their sizes they add up to 1.</returns>
    /// <remarks>This is the mean of the weight set when a tie means that either may come first. When it means equal weights, the set is
    /// another one and so is its mean: see <see cref="WeightSet.Centroid"/>.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A size is below 1, or there is none.</exception>
    public static double[] WeightsWithTies(params int[] placeSizes)
    {
        ArgumentNullException.ThrowIfNull(placeSizes);
        double[] single = Weights(placeSizes.Sum()), shared = new double[placeSizes.Length];
        int from = 0;
        for (int place = 0; place < placeSizes.Length; place++)
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(placeSizes[place], 1, nameof(placeSizes));
            double sum = 0;
            for (int i = from; i < from + placeSizes[place]; i++)
            {
                sum += single[i];
            }

            shared[place] = sum / placeSizes[place];
            from += placeSizes[place];
        }

        return shared;
    }
}
