using System.Runtime.InteropServices;

namespace ToiletAid.App.Pictures;

/// <summary>A place or a direction on a picture.</summary>
/// <param name="X">To the right, cm.</param>
/// <param name="Y">Up, cm.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Spot(double X, double Y)
{
    internal double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>The same direction, one long.</summary>
    internal Spot Unit => Length > 0 ? this * (1 / Length) : new(1, 0);

    /// <summary>A quarter turn to the left.</summary>
    internal Spot Left => new(-Y, X);

    /// <summary>Degrees from the right, to the left above 0.</summary>
    internal double Degrees => Math.Atan2(Y, X) * 180 / Math.PI;

    public static Spot operator +(Spot a, Spot b) => new(a.X + b.X, a.Y + b.Y);

    public static Spot operator -(Spot a, Spot b) => new(a.X - b.X, a.Y - b.Y);

    public static Spot operator *(Spot a, double k) => new(a.X * k, a.Y * k);

    /// <summary>One long in a direction.</summary>
    internal static Spot Toward(double degrees)
    {
        (double s, double c) = Math.SinCos(degrees * Math.PI / 180);
        return new(c, s);
    }

    /// <summary>Turned to the left about the middle of the picture.</summary>
    internal Spot Turned(double degrees)
    {
        var t = Toward(degrees);
        return new((X * t.X) - (Y * t.Y), (X * t.Y) + (Y * t.X));
    }

    internal double Dot(Spot other) => (X * other.X) + (Y * other.Y);
}
