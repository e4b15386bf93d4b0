namespace ToiletAid.Core.Statistics;

/// <summary>How far raters agree.</summary>
public static class Agreement
{
    /// <summary>Weighted kappa of two raters (Cohen 1968): 1 they agree on everything, 0 as much as by chance.</summary>
    /// <param name="counts">How often the first gave the row's grade and the second the column's.</param>
    /// <param name="disagreement">How grave each disagreement is; 0 on the diagonal.</param>
    /// <returns>Null where chance alone could not make them disagree.</returns>
    public static double? WeightedKappa(double[,] counts, Func<int, int, double> disagreement)
    {
        ArgumentNullException.ThrowIfNull(counts);
        ArgumentNullException.ThrowIfNull(disagreement);
        int grades = counts.GetLength(0);
        double[] rows = new double[grades], columns = new double[grades];
        double all = 0;
        for (int i = 0; i < grades; i++)
        {
            for (int j = 0; j < grades; j++)
            {
                rows[i] += counts[i, j];
                columns[j] += counts[i, j];
                all += counts[i, j];
            }
        }

        double seen = 0, expected = 0;
        for (int i = 0; i < grades; i++)
        {
            for (int j = 0; j < grades; j++)
            {
                seen += disagreement(i, j) * counts[i, j];
                expected += disagreement(i, j) * rows[i] * columns[j];
            }
        }

        return expected > 0 ? 1 - (seen * all / expected) : null;
    }

    /// <summary>Gravity of a disagreement as the square of its distance (Fleiss and Cohen 1973).</summary>
    /// <param name="one">One grade.</param>
    /// <param name="other">The other.</param>
    public static double Squared(int one, int other) => (double)(one - other) * (one - other);

    /// <summary>Ranks from 1, smallest first; equals share the mean of their ranks.</summary>
    /// <param name="values">What is ranked.</param>
    public static double[] Ranks(ReadOnlySpan<double> values)
    {
        double[] ranks = new double[values.Length];
        for (int i = 0; i < values.Length; i++)
        {
            int below = 0, equal = 0;
            foreach (double other in values)
            {
                below += other < values[i] ? 1 : 0;
                equal += other == values[i] ? 1 : 0;
            }

            ranks[i] = below + ((equal + 1) / 2.0);
        }

        return ranks;
    }

    /// <summary>Coefficient of concordance of several raters, corrected for ties (Kendall and Babington Smith 1939): 1 all rank alike, 0 no agreement at all.</summary>
    /// <param name="ratings">One list for each rater, all of the same things; only their order counts.</param>
    /// <returns>Null where no rater tells anything apart, and for fewer than two raters or things.</returns>
    public static double? Concordance(IReadOnlyList<double[]> ratings)
    {
        ArgumentNullException.ThrowIfNull(ratings);
        int raters = ratings.Count, things = raters == 0 ? 0 : ratings[0].Length;
        if (raters < 2 || things < 2)
        {
            return null;
        }

        double[] sums = new double[things];
        double ties = 0;
        foreach (double[] rating in ratings)
        {
            double[] ranks = Ranks(rating);
            for (int i = 0; i < things; i++)
            {
                sums[i] += ranks[i];

                // Each of t equals adds t² - 1, so that a tie adds t³ - t.
                double equal = rating.Count(r => r == rating[i]);
                ties += (equal * equal) - 1;
            }
        }

        double mean = raters * (things + 1) / 2.0, squares = sums.Sum(s => (s - mean) * (s - mean));
        double most = ((double)raters * raters * things * (((double)things * things) - 1)) - (raters * ties);
        return most > 0 ? 12 * squares / most : null;
    }
}
