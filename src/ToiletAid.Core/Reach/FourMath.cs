using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Four = System.Runtime.Intrinsics.Vector128<float>;

namespace ToiletAid.Core.Reach;

/// <summary>Functions of four numbers at once, the same bits on every processor: nothing here rounds otherwise where a processor has wider or
/// fused steps.</summary>
internal static class FourMath
{
    private const float TwoOverPi = (float)(2 / Math.PI);

    /// <summary>One and a half times 2^23: from here on a float counts in ones.</summary>
    private const float Rounder = 12582912f;

    // A right angle in three parts, as in Cephes (sinf.c): the first two with last bits 0, so that small multiples of them are exact.
    private const float RightAngle = 1.5703125f;
    private const float RightAngleRest = 4.837512969970703125e-4f;
    private const float RightAngleLast = 7.54978995489188216e-8f;

    public static Four One
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => Vector128.Create(1f);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four Of(float x) => Vector128.Create(x);

    /// <summary>0 where it is below 0.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four Over(Four x) => Vector128.MaxNative(x, Four.Zero);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four Clamp(Four x, Four low, Four high) => Vector128.MinNative(Vector128.MaxNative(x, low), high);

    /// <summary>The first where bits are set, else the other.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four Select(Four where, Four first, Four other) => Vector128.ConditionalSelect(where, first, other);

    /// <summary>0 below 0, 1 above 1, smooth between.</summary>
    /// <param name="x">Place.</param>
    /// <param name="slope">Slope of that with the place.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four Step(Four x, out Four slope)
    {
        Four t = Clamp(x, Four.Zero, One);
        slope = 6 * (t * (One - t));
        return t * t * (Of(3) - (2 * t));
    }

    /// <summary>Sines and cosines. Polynomials as in Cephes (sinf.c, cosf.c).</summary>
    /// <param name="angles">rad, a few turns at most.</param>
    /// <param name="sines">The sines.</param>
    /// <param name="cosines">The cosines.</param>
    public static void Sines(Four angles, out Four sines, out Four cosines)
    {
        // Adding and taking off so large a number rounds to a whole one, which then stands in the last bits of the sum.
        Four rounded = (angles * TwoOverPi) + Of(Rounder);
        Four quarters = rounded - Of(Rounder);
        Vector128<int> whole = rounded.AsInt32();
        Four x = angles - (quarters * RightAngle) - (quarters * RightAngleRest) - (quarters * RightAngleLast);
        NearZero(x, out Four sine, out Four cosine);

        // An odd number of right angles swaps the two; the sign turns with every second one.
        Four odd = (-(whole & Vector128<int>.One)).AsSingle();
        sines = Select(odd, cosine, sine) ^ Flip(whole);
        cosines = Select(odd, sine, cosine) ^ Flip(whole + Vector128<int>.One);
    }

    /// <summary>Sines and cosines of angles up to an eighth of a turn; up to a sixth they err by less than 1e-5.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void NearZero(Four x, out Four sine, out Four cosine)
    {
        Four z = x * x;
        sine = x + (x * z * (Of(-1.6666654611e-1f) + (z * (Of(8.3321608736e-3f) + (z * -1.9515295891e-4f)))));
        cosine = One - (0.5f * z) + (z * z * (Of(4.166664568298827e-2f) + (z * (Of(-1.388731625493765e-3f) + (z * 2.443315711809948e-5f)))));
    }

    /// <summary>The angle from the x-axis to a point on or above it, 0 to π.</summary>
    /// <remarks>Polynomial of Abramowitz and Stegun 4.4.49, error 2e-8.</remarks>
    public static Four Angle(Four y, Four x)
    {
        Four ahead = Vector128.Abs(x);
        Four small = Vector128.MinNative(y, ahead), large = Vector128.MaxNative(y, ahead);
        Four t = small / Vector128.MaxNative(large, Of(1e-30f));
        Four z = t * t;
        Four sum = Of(-0.0161657367f) + (z * 0.0028662257f);
        sum = Of(0.0429096138f) + (z * sum);
        sum = Of(-0.0752896400f) + (z * sum);
        sum = Of(0.1065626393f) + (z * sum);
        sum = Of(-0.1420889944f) + (z * sum);
        sum = Of(0.1999355085f) + (z * sum);
        sum = Of(-0.3333314528f) + (z * sum);
        Four angle = t + (t * z * sum);
        angle = Select(Vector128.GreaterThan(y, ahead), Of((float)(Math.PI / 2)) - angle, angle);
        return Select(Vector128.LessThan(x, Four.Zero), Of((float)Math.PI) - angle, angle);
    }

    /// <summary>The sign bit where the second bit of a whole number is set.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Four Flip(Vector128<int> whole) => (whole << 30).AsSingle() & Of(-0f);
}
