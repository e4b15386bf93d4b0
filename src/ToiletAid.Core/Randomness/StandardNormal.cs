namespace ToiletAid.Core.Randomness;

/// <summary>The standard normal distribution, for percentiles, z-scores and draws.</summary>
internal static class StandardNormal
{
    private const double SplitCentre = 0.425;
    private const double SplitTail = 5;

    private static readonly double[] CentreTop =
    [
        3.3871328727963666080, 1.3314166789178437745e2, 1.9715909503065514427e3, 1.3731693765509461125e4,
        4.5921953931549871457e4, 6.7265770927008700853e4, 3.3430575583588128105e4, 2.5090809287301226727e3,
    ];

    private static readonly double[] CentreBottom =
    [
        1, 4.2313330701600911252e1, 6.8718700749205790830e2, 5.3941960214247511077e3,
        2.1213794301586595867e4, 3.9307895800092710610e4, 2.8729085735721942674e4, 5.2264952788528545610e3,
    ];

    private static readonly double[] FlankTop =
    [
        1.42343711074968357734, 4.63033784615654529590, 5.76949722146069140550, 3.64784832476320460504,
        1.27045825245236838258, 2.41780725177450611770e-1, 2.27238449892691845833e-2, 7.74545014278341407640e-4,
    ];

    private static readonly double[] FlankBottom =
    [
        1, 2.05319162663775882187, 1.67638483018380384940, 6.89767334985100004550e-1,
        1.48103976427480074590e-1, 1.51986665636164571966e-2, 5.47593808499534494600e-4, 1.05075007164441684324e-9,
    ];

    private static readonly double[] TailTop =
    [
        6.65790464350110377720, 5.46378491116411436990, 1.78482653991729133580, 2.96560571828504891230e-1,
        2.65321895265761230930e-2, 1.24266094738807843860e-3, 2.71155556874348757815e-5, 2.01033439929228813265e-7,
    ];

    private static readonly double[] TailBottom =
    [
        1, 5.99832206555887937690e-1, 1.36929880922735805310e-1, 1.48753612908506148525e-2,
        7.86869131145613259100e-4, 1.84631831751005468180e-5, 1.42151175831644588870e-7, 2.04426310338993978564e-15,
    ];

    /// <summary>The z-score below which a share <paramref name="p"/> of people lie.</summary>
    /// <param name="p">Above 0 and below 1.</param>
    /// <remarks>Wichura 1988, algorithm AS 241 (from memory); checked against the inverse and printed tables in the tests.</remarks>
    public static double Quantile(double p)
    {
        double q = p - 0.5;
        if (Math.Abs(q) <= SplitCentre)
        {
            double inner = (SplitCentre * SplitCentre) - (q * q);
            return q * Polynomial(CentreTop, inner) / Polynomial(CentreBottom, inner);
        }

        double r = Math.Sqrt(-Math.Log(q < 0 ? p : 1 - p));
        double z = r <= SplitTail
            ? Polynomial(FlankTop, r - 1.6) / Polynomial(FlankBottom, r - 1.6)
            : Polynomial(TailTop, r - SplitTail) / Polynomial(TailBottom, r - SplitTail);
        return q < 0 ? -z : z;
    }

    /// <summary>The share of people below <paramref name="z"/>; not a number for what is none.</summary>
    /// <remarks>Series of Marsaglia 2004 (from memory); beyond eight deviations nothing is left to tell apart.</remarks>
    public static double Probability(double z)
    {
        // What is not a number would be summed for ever.
        if (!(Math.Abs(z) <= 8))
        {
            return z < 0 ? 0 : z > 0 ? 1 : double.NaN;
        }

        double sum = z, last = 0, term = z;
        for (int i = 3; sum != last; i += 2)
        {
            last = sum;
            term *= z * z / i;
            sum += term;
        }

        return Math.Clamp(0.5 + (sum * Math.Exp(-0.5 * z * z) / Math.Sqrt(2 * Math.PI)), 0, 1);
    }

    private static double Polynomial(double[] coefficients, double x)
    {
        double value = 0;
        for (int i = coefficients.Length - 1; i >= 0; i--)
        {
            value = (value * x) + coefficients[i];
        }

        return value;
    }
}
