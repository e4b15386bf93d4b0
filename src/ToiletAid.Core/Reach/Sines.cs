using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace ToiletAid.Core.Reach;

/// <summary>Sines and cosines of eight angles at once, the same bits however wide the processor is.</summary>
/// <remarks>The library's own use fused steps where the processor has them, so that a pose could end in another valley on another
/// machine. Reduction to an eighth of a turn and polynomials as in fdlibm (k_sin.c, k_cos.c).</remarks>
internal static class Sines
{
    private const double TwoOverPi = 2 / Math.PI;

    /// <summary>One and a half times 2^52: from here on a double counts in ones.</summary>
    private const double Rounder = 6755399441055744;

    // A right angle in two parts, the first with its last bits 0, so that small multiples of it are exact.
    private const double RightAngle = 1.57079632673412561417e+00;
    private const double RightAngleRest = 6.07710050650619224932e-11;

    /// <summary>Sines and cosines.</summary>
    /// <param name="angles">rad, a few turns at most.</param>
    /// <param name="sines">The sines.</param>
    /// <param name="cosines">The cosines.</param>
    public static void Of(in Eight angles, out Eight sines, out Eight cosines)
    {
        Of(angles.Pair(0), out Vector128<double> s0, out Vector128<double> c0);
        Of(angles.Pair(1), out Vector128<double> s1, out Vector128<double> c1);
        Of(angles.Pair(2), out Vector128<double> s2, out Vector128<double> c2);
        Of(angles.Pair(3), out Vector128<double> s3, out Vector128<double> c3);
        sines = new(s0, s1, s2, s3);
        cosines = new(c0, c1, c2, c3);
    }

    private static void Of(Vector128<double> angles, out Vector128<double> sines, out Vector128<double> cosines)
    {
        // Adding and taking off so large a number rounds to a whole one, which then stands in the last bits of the sum.
        Vector128<double> rounded = (angles * TwoOverPi) + Vector128.Create(Rounder);
        Vector128<double> quarters = rounded - Vector128.Create(Rounder);
        Vector128<long> whole = rounded.AsInt64();
        Vector128<double> x = angles - (quarters * RightAngle) - (quarters * RightAngleRest);
        Vector128<double> z = x * x;
        Vector128<double> sine = x + (x * z * (Vector128.Create(-1.66666666666666324348e-01) + (z * (Vector128.Create(8.33333333332248946124e-03)
            + (z * (Vector128.Create(-1.98412698298579493134e-04) + (z * (Vector128.Create(2.75573137070700676789e-06)
            + (z * (Vector128.Create(-2.50507602534068634195e-08) + (z * 1.58969099521155010221e-10)))))))))));
        Vector128<double> cosine = Vector128.Create(1.0) - (0.5 * z) + (z * z * (Vector128.Create(4.16666666666666019037e-02)
            + (z * (Vector128.Create(-1.38888888888741095749e-03) + (z * (Vector128.Create(2.48015872894767294178e-05)
            + (z * (Vector128.Create(-2.75573143513906633035e-07) + (z * (Vector128.Create(2.08757232129817482790e-09)
            + (z * -1.13596475577881948265e-11)))))))))));

        // An odd number of right angles swaps the two; the sign turns with every second one.
        Vector128<double> odd = (-(whole & Vector128<long>.One)).AsDouble();
        Vector128<double> down = Flip(whole), back = Flip(whole + Vector128<long>.One);
        sines = Vector128.ConditionalSelect(odd, cosine, sine) ^ down;
        cosines = Vector128.ConditionalSelect(odd, sine, cosine) ^ back;
    }

    /// <summary>The sign bit where the second bit of a whole number is set.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector128<double> Flip(Vector128<long> whole) => (whole << 62).AsDouble() & Vector128.Create(-0.0);
}
