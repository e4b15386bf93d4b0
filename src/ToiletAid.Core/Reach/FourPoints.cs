using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Four = System.Runtime.Intrinsics.Vector128<float>;

namespace ToiletAid.Core.Reach;

/// <summary>A point or a direction of each of four persons; axes as in <see cref="Vector3D"/>, m.</summary>
[StructLayout(LayoutKind.Sequential)]
internal readonly struct FourPoints(Four x, Four y, Four z)
{
    public readonly Four X = x;
    public readonly Four Y = y;
    public readonly Four Z = z;

    public Four Square
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => Dot(in this, in this);
    }

    public Four Length
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => Vector128.Sqrt(Square);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourPoints operator +(in FourPoints a, in FourPoints b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourPoints operator -(in FourPoints a, in FourPoints b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourPoints operator *(Four k, in FourPoints a) => new(k * a.X, k * a.Y, k * a.Z);

    /// <summary>Coordinate by coordinate.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourPoints operator *(in FourPoints a, in FourPoints b) => new(a.X * b.X, a.Y * b.Y, a.Z * b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Four Dot(in FourPoints a, in FourPoints b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourPoints Cross(in FourPoints a, in FourPoints b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));
}
