namespace ToiletAid.Core.Statistics;

/// <summary>The beta distribution: what is known of a share, and through it exact binomial intervals.</summary>
internal static class BetaDistribution
{
    private const int MostSteps = 500;
    private const double Tiny = 1e-300;

    /// <summary>Halvings of the range from 0 to 1 until no number lies between its ends.</summary>
    private const int Halvings = 60;

    private static readonly double[] Lanczos =
    [
        0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313,
        -176.61502916214059, 12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
    ];

    /// <summary>Natural logarithm of the gamma function.</summary>
    /// <param name="x">0.5 or more.</param>
    /// <remarks>Lanczos 1964 with nine terms (from memory); checked against a reference library in the tests.</remarks>
    internal static double LogGamma(double x)
    {
        double sum = Lanczos[0], t = x + 6.5;
        for (int i = 1; i < Lanczos.Length; i++)
        {
            sum += Lanczos[i] / (x + i - 1);
        }

        return (0.5 * Math.Log(2 * Math.PI)) + ((x - 0.5) * Math.Log(t)) - t + Math.Log(sum);
    }

    /// <summary>Probability of a share up to <paramref name="x"/>: the regularized incomplete beta function.</summary>
    /// <param name="x">0 to 1.</param>
    /// <param name="a">First parameter, 0.5 or more.</param>
    /// <param name="b">Second parameter, 0.5 or more.</param>
    internal static double Probability(double x, double a, double b)
    {
        if (x <= 0 || x >= 1)
        {
            return x <= 0 ? 0 : 1;
        }

        double front = Math.Exp(LogGamma(a + b) - LogGamma(a) - LogGamma(b) + (a * Math.Log(x)) + (b * Math.Log(1 - x)));

        // The fraction runs out fast only on this side of the mean.
        return x < (a + 1) / (a + b + 2) ? front * Fraction(x, a, b) / a : 1 - (front * Fraction(1 - x, b, a) / b);
    }

    /// <summary>The share below which a probability of <paramref name="p"/> lies.</summary>
    internal static double Quantile(double p, double a, double b)
    {
        double low = 0, high = 1;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            if (Probability(middle, a, b) < p)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return (low + high) / 2;
    }

    /// <summary>The continued fraction of the incomplete beta function, by Lentz's method.</summary>
    private static double Fraction(double x, double a, double b)
    {
        double c = 1, d = 1 / Away(1 - ((a + b) * x / (a + 1))), fraction = d;
        for (int m = 1; m <= MostSteps; m++)
        {
            double even = m * (b - m) * x / ((a + (2 * m) - 1) * (a + (2 * m)));
            d = 1 / Away(1 + (even * d));
            c = Away(1 + (even / c));
            fraction *= c * d;
            double odd = -(a + m) * (a + b + m) * x / ((a + (2 * m)) * (a + (2 * m) + 1));
            d = 1 / Away(1 + (odd * d));
            c = Away(1 + (odd / c));
            double step = c * d;
            fraction *= step;
            if (Math.Abs(step - 1) < 1e-15)
            {
                break;
            }
        }

        return fraction;
    }

    private static double Away(double value) => Math.Abs(value) < Tiny ? Tiny : value;
}
