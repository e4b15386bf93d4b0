using ToiletAid.Core.Randomness;

namespace ToiletAid.Core.Hand;

/// <summary>How a measure is spread over people: its value at every percentile.</summary>
/// <remarks>Between the known percentiles the value runs straight against the z-score, so that a normal distribution is met exactly;
/// beyond the outermost ones its logarithm runs straight on with the same slope, so that it stays above zero (decision).</remarks>
public sealed class NormCurve
{
    private readonly double[] _z;
    private readonly double[] _values;

    internal NormCurve(double[] z, double[] values)
    {
        _z = z;
        _values = values;
    }

    /// <summary>The value that half of all people reach, SI; 0 when there is nothing.</summary>
    public double Median => AtZ(0);

    /// <summary>Spread as a standard deviation of the logarithm, from the percentiles one deviation below and above the median.</summary>
    public double LogSpread => Median > 0 ? Math.Log(AtZ(1) / AtZ(-1)) / 2 : 0;

    /// <summary>True when there is nothing to be spread: no such ability.</summary>
    internal bool IsZero => _values.Length == 0;

    internal static NormCurve Zero { get; } = new([], []);

    /// <summary>The value at a percentile.</summary>
    /// <param name="u">Share of people below it, above 0 and below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="u"/> is not between 0 and 1.</exception>
    public double At(double u) => u > 0 && u < 1
        ? AtZ(StandardNormal.Quantile(u))
        : throw new ArgumentOutOfRangeException(nameof(u), u, "not between 0 and 1");

    /// <summary>The value at a z-score.</summary>
    /// <param name="z">Deviations above the median, negative below it; any number.</param>
    /// <returns>SI; above 0, and 0 where there is nothing. Rises with <paramref name="z"/>.</returns>
    public double AtZ(double z)
    {
        if (IsZero)
        {
            return 0;
        }

        int last = _z.Length - 1;
        if (z < _z[0])
        {
            return _values[0] * Math.Exp(Slope(0) / _values[0] * (z - _z[0]));
        }

        if (z > _z[last])
        {
            return _values[last] * Math.Exp(Slope(last - 1) / _values[last] * (z - _z[last]));
        }

        int i = 0;
        while (i < last - 1 && z > _z[i + 1])
        {
            i++;
        }

        return _values[i] + (Slope(i) * (z - _z[i]));
    }

    /// <summary>The z-score of a value.</summary>
    /// <param name="value">SI, above 0.</param>
    /// <returns>The number of deviations above the median, negative below it; minus infinity for 0.</returns>
    /// <exception cref="InvalidOperationException">There is no spread to compare with.</exception>
    public double ZScore(double value)
    {
        if (IsZero)
        {
            throw new InvalidOperationException("no spread to compare with");
        }

        int last = _z.Length - 1;
        if (value < _values[0])
        {
            return _z[0] + (Math.Log(Math.Max(value, 0) / _values[0]) * _values[0] / Slope(0));
        }

        if (value > _values[last])
        {
            return _z[last] + (Math.Log(value / _values[last]) * _values[last] / Slope(last - 1));
        }

        int i = 0;
        while (i < last - 1 && value > _values[i + 1])
        {
            i++;
        }

        return _z[i] + ((value - _values[i]) / Slope(i));
    }

    /// <summary>The share of people below a value, 0 to 1.</summary>
    /// <param name="value">SI, above 0.</param>
    /// <exception cref="InvalidOperationException">There is no spread to compare with.</exception>
    public double Percentile(double value) => StandardNormal.Probability(ZScore(value));

    /// <summary>The same curve with every value times <paramref name="factor"/> and a wider spread.</summary>
    /// <param name="factor">0 or more; 0 leaves nothing.</param>
    /// <param name="extraLogSd">Further uncertainty, as a standard deviation of the logarithm; 0 or more.</param>
    internal NormCurve Scaled(double factor, double extraLogSd)
    {
        if (IsZero || factor <= 0)
        {
            return Zero;
        }

        double median = Median, spread = LogSpread;
        double wider = Math.Sqrt(1 + (extraLogSd * extraLogSd / (spread * spread)));
        double[] values = new double[_values.Length];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = factor * median * Math.Pow(_values[i] / median, wider);
        }

        return new(_z, values);
    }

    /// <summary>A normal spread around a mean, known at the given z-scores.</summary>
    internal static NormCurve Normal(double mean, double sd, double[] z)
    {
        double[] values = new double[z.Length];
        for (int i = 0; i < z.Length; i++)
        {
            values[i] = mean + (z[i] * sd);
        }

        return new(z, values);
    }

    /// <summary>The spread over a group that is half the one and half the other, at the first one's percentiles.</summary>
    internal static NormCurve Mixture(NormCurve first, NormCurve second)
    {
        double[] values = new double[first._z.Length];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = MixtureQuantile(first, second, first._z[i]);
        }

        return new(first._z, values);
    }

    /// <summary>Where half the people of one curve and half those of the other make up the share below a z-score.</summary>
    /// <remarks>It lies between the two curves; false position with the Illinois change closes in on it.</remarks>
    private static double MixtureQuantile(NormCurve first, NormCurve second, double z)
    {
        double share = StandardNormal.Probability(z);
        double low = Math.Min(first.AtZ(z), second.AtZ(z)), high = Math.Max(first.AtZ(z), second.AtZ(z));
        double below = Excess(low), above = Excess(high);
        double x = low, last = high + 1;
        int side = 0;
        for (int step = 0; step < 60 && above > below && Math.Abs(x - last) > 1e-13 * x; step++)
        {
            last = x;
            x = low - (below * (high - low) / (above - below));
            double here = Excess(x);
            if (here < 0)
            {
                above = side < 0 ? above / 2 : above;
                (low, below, side) = (x, here, -1);
            }
            else
            {
                below = side > 0 ? below / 2 : below;
                (high, above, side) = (x, here, 1);
            }
        }

        return x;

        double Excess(double value) => ((first.Percentile(value) + second.Percentile(value)) / 2) - share;
    }

    private double Slope(int i) => (_values[i + 1] - _values[i]) / (_z[i + 1] - _z[i]);
}
