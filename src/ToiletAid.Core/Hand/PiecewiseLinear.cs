namespace ToiletAid.Core.Hand;

/// <summary>A line through given points, level beyond its ends.</summary>
internal sealed class PiecewiseLinear
{
    private readonly double[] _x;
    private readonly double[] _y;

    /// <summary>Makes a line.</summary>
    /// <param name="x">Places, rising.</param>
    /// <param name="y">Heights, as many.</param>
    /// <exception cref="ArgumentException">Places do not rise, or the numbers of both differ.</exception>
    public PiecewiseLinear(double[] x, double[] y)
    {
        bool rises = Enumerable.Range(1, x.Length - 1).All(i => x[i] > x[i - 1]);
        if (x.Length != y.Length || !rises)
        {
            throw new ArgumentException("points must rise", nameof(x));
        }

        _x = x;
        _y = y;
    }

    /// <summary>The height at <paramref name="x"/>.</summary>
    public double At(double x)
    {
        if (!(x > _x[0]))
        {
            return _y[0];
        }

        for (int i = 1; i < _x.Length; i++)
        {
            if (x < _x[i])
            {
                return _y[i - 1] + ((_y[i] - _y[i - 1]) * (x - _x[i - 1]) / (_x[i] - _x[i - 1]));
            }
        }

        return _y[^1];
    }
}
