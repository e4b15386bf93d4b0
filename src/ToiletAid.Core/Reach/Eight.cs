using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ToiletAid.Core.Reach;

/// <summary>Eight numbers that are computed with at once, two in each step of the processor.</summary>
/// <remarks>Every processor that the native program starts on has steps of two, and each place has its own sum, so that the bits are the same
/// everywhere. The library's wider ones are calls, and many times slower, where a program is made for all processors.</remarks>
[StructLayout(LayoutKind.Sequential)]
internal readonly struct Eight(Vector128<double> a, Vector128<double> b, Vector128<double> c, Vector128<double> d)
{
    private readonly Vector128<double> _a = a;
    private readonly Vector128<double> _b = b;
    private readonly Vector128<double> _c = c;
    private readonly Vector128<double> _d = d;

    /// <summary>How many there are.</summary>
    public const int Count = 8;

    /// <summary>Number by number.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight Of(double a, double b, double c, double d, double e, double f, double g, double h) =>
        new(Vector128.Create(a, b), Vector128.Create(c, d), Vector128.Create(e, f), Vector128.Create(g, h));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight operator +(in Eight x, in Eight y) => new(x._a + y._a, x._b + y._b, x._c + y._c, x._d + y._d);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight operator -(in Eight x, in Eight y) => new(x._a - y._a, x._b - y._b, x._c - y._c, x._d - y._d);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight operator *(in Eight x, in Eight y) => new(x._a * y._a, x._b * y._b, x._c * y._c, x._d * y._d);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight operator *(double k, in Eight x)
    {
        var v = Vector128.Create(k);
        return new(v * x._a, v * x._b, v * x._c, v * x._d);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight operator *(in Eight x, double k) => k * x;

    /// <summary>Square root of each.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight Sqrt(in Eight x) => new(Vector128.Sqrt(x._a), Vector128.Sqrt(x._b), Vector128.Sqrt(x._c), Vector128.Sqrt(x._d));

    /// <summary>Each within its limits.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight Clamp(in Eight x, in Eight low, in Eight high) => new(
        Clamp(x._a, low._a, high._a), Clamp(x._b, low._b, high._b), Clamp(x._c, low._c, high._c), Clamp(x._d, low._d, high._d));

    /// <summary>A bit for each place where the one is not above the other.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static uint NotAbove(in Eight x, in Eight y) => Bits(
        Vector128.LessThanOrEqual(x._a, y._a), Vector128.LessThanOrEqual(x._b, y._b), Vector128.LessThanOrEqual(x._c, y._c), Vector128.LessThanOrEqual(x._d, y._d));

    /// <summary>A bit for each place where the one is above the other.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static uint Above(in Eight x, in Eight y) => Bits(
        Vector128.GreaterThan(x._a, y._a), Vector128.GreaterThan(x._b, y._b), Vector128.GreaterThan(x._c, y._c), Vector128.GreaterThan(x._d, y._d));

    /// <summary>A bit for each place where both are equal.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static uint Equals(in Eight x, in Eight y) => Bits(
        Vector128.Equals(x._a, y._a), Vector128.Equals(x._b, y._b), Vector128.Equals(x._c, y._c), Vector128.Equals(x._d, y._d));

    /// <summary>The first where two are equal, else the last.</summary>
    /// <param name="x">The one.</param>
    /// <param name="y">What it is held against.</param>
    /// <param name="where">Taken where they are equal.</param>
    /// <param name="otherwise">Taken where they are not.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Eight SelectEqual(in Eight x, in Eight y, in Eight where, in Eight otherwise) => new(
        Vector128.ConditionalSelect(Vector128.Equals(x._a, y._a), where._a, otherwise._a),
        Vector128.ConditionalSelect(Vector128.Equals(x._b, y._b), where._b, otherwise._b),
        Vector128.ConditionalSelect(Vector128.Equals(x._c, y._c), where._c, otherwise._c),
        Vector128.ConditionalSelect(Vector128.Equals(x._d, y._d), where._d, otherwise._d));

    /// <summary>Sum of all, always in the same order.</summary>
    public double Sum
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get
        {
            Vector128<double> two = _a + _c + (_b + _d);
            return two.ToScalar() + two.GetElement(1);
        }
    }

    /// <summary>Two neighbours: 0 for the first two, 3 for the last.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector128<double> Pair(int number) => number switch
    {
        0 => _a,
        1 => _b,
        2 => _c,
        _ => _d,
    };

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector128<double> Clamp(Vector128<double> x, Vector128<double> low, Vector128<double> high) =>
        Vector128.MinNative(Vector128.MaxNative(x, low), high);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static uint Bits(Vector128<double> a, Vector128<double> b, Vector128<double> c, Vector128<double> d) =>
        a.ExtractMostSignificantBits() | (b.ExtractMostSignificantBits() << 2) | (c.ExtractMostSignificantBits() << 4) | (d.ExtractMostSignificantBits() << 6);
}
