namespace ToiletAid.Core.Reach;

/// <summary>Quantiles of the standard normal distribution.</summary>
internal static class StandardNormal
{
    /// <summary>The deviate below which a share lies.</summary>
    /// <param name="share">Above 0 and below 1.</param>
    /// <remarks>Rational approximation by P. J. Acklam (2003), relative error below 1.2e-9; coefficients from memory, checked in tests
    /// against published quantiles.</remarks>
    public static double Quantile(double share)
    {
        const double Low = 0.02425;
        if (share < Low)
        {
            return Tail(Math.Sqrt(-2 * Math.Log(share)));
        }

        if (share > 1 - Low)
        {
            return -Tail(Math.Sqrt(-2 * Math.Log(1 - share)));
        }

        double q = share - 0.5, r = q * q;
        double numerator = (((((((((-3.969683028665376e+01 * r) + 2.209460984245205e+02) * r) - 2.759285104469687e+02) * r) + 1.383577518672690e+02) * r) - 3.066479806614716e+01) * r) + 2.506628277459239e+00;
        double denominator = (((((((((-5.447609879822406e+01 * r) + 1.615858368580409e+02) * r) - 1.556989798598866e+02) * r) + 6.680131188771972e+01) * r) - 1.328068155288572e+01) * r) + 1;
        return numerator * q / denominator;
    }

    private static double Tail(double q)
    {
        double numerator = (((((((((-7.784894002430293e-03 * q) - 3.223964580411365e-01) * q) - 2.400758277161838e+00) * q) - 2.549732539343734e+00) * q) + 4.374664141464968e+00) * q) + 2.938163982698783e+00;
        double denominator = (((((((7.784695709041462e-03 * q) + 3.224671290700398e-01) * q) + 2.445134137142996e+00) * q) + 3.754408661907416e+00) * q) + 1;
        return numerator / denominator;
    }
}
