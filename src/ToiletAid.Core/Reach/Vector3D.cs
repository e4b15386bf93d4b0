using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>A point or a direction: x forward, y to the working hand, z up along the upright trunk; m.</summary>
/// <remarks>Computed with millions of times a second, and too small for a call to be worth it.</remarks>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Vector3D(double X, double Y, double Z)
{
    public double Length => Math.Sqrt((X * X) + (Y * Y) + (Z * Z));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3D operator +(Vector3D a, Vector3D b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3D operator -(Vector3D a, Vector3D b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3D operator *(double k, Vector3D a) => new(k * a.X, k * a.Y, k * a.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Dot(Vector3D a, Vector3D b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3D Cross(Vector3D a, Vector3D b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));
}
