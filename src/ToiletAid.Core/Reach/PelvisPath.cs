using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ToiletAid.Core.Reach;

/// <summary>Shortest way from a point to a target on the skin of the pelvis, outside the pelvis, in the plane of both and its centre:
/// straight to the point of tangency, then along the skin.</summary>
/// <remarks>An aid is a plane curve, so a way in one plane is what an aid of that length can follow (decision). Stretching space until the
/// ellipsoid is a unit sphere keeps planes, tangents and insides; lengths are taken in the unstretched space.</remarks>
[StructLayout(LayoutKind.Auto)]
internal struct PelvisPath
{
    // The eighth place fills up to what the processor computes at once, and weighs nothing.
    private static Eight Steps => Eight.Of(0, 1 / 6.0, 2 / 6.0, 3 / 6.0, 4 / 6.0, 5 / 6.0, 1, 0);
    private static Eight Simpson => Eight.Of(1, 4, 2, 4, 2, 4, 1, 0.0);

    /// <summary>Length of the whole way, m.</summary>
    public double Length;

    /// <summary>Straight distance, m.</summary>
    public double Straight;

    /// <summary>Where the way touches the skin first: the tangent point, or the target when it is in sight.</summary>
    public Vector3D Touch;

    /// <summary>Points at a third and two thirds of the way along the skin.</summary>
    public Vector3D FirstThird;

    /// <inheritdoc cref="FirstThird"/>
    public Vector3D SecondThird;

    /// <summary>Finds the way.</summary>
    /// <param name="body">Gives the ellipsoid.</param>
    /// <param name="target">On the ellipsoid, m.</param>
    /// <param name="from">Anywhere; from inside, the way first comes straight out to the skin.</param>
    public static PelvisPath To(in Body body, Vector3D target, Vector3D from)
    {
        PelvisPath path = default;
        path.Straight = (from - target).Length;
        path.Length = path.Straight;
        path.Touch = target;
        path.FirstThird = target;
        path.SecondThird = target;

        Vector3D u = Stretch(in body, target), q = Stretch(in body, from);
        double along = Vector3D.Dot(q, u);
        if (along >= 1)
        {
            // Beyond the plane that touches the pelvis at the target: in sight.
            return path;
        }

        double r = q.Length;
        Vector3D across = q - (along * u);
        double w = across.Length, aside = w;
        if (w < 1e-12)
        {
            // Exactly opposite the target all ways around are planes of symmetry; the one through front and back is taken.
            (across, w) = (new Vector3D(-u.Z, 0, u.X), Math.Sqrt((u.X * u.X) + (u.Z * u.Z)));
        }

        // The angle at the centre between target and eye, less that between tangent point and eye, as one angle.
        double tangent = r > 1 ? Math.Sqrt((r * r) - 1) : 0;
        double sine = aside - (along * tangent), cosine = along + (aside * tangent);
        if (sine <= 0 && cosine >= 0)
        {
            return path;
        }

        double hidden = Math.Atan2(sine, cosine);
        Vector3D unit = (1 / w) * across;
        var v = new Vector3D(unit.X * body.PelvisForward, unit.Y * body.PelvisSideways, unit.Z * body.PelvisUp);
        path.AlongSkin(target, v, hidden);
        path.Length += (from - path.Touch).Length;
        return path;
    }

    /// <summary>How deep the straight line to the target presses into the pelvis, m; 0 where the target is in sight.</summary>
    /// <param name="body">Gives the ellipsoid.</param>
    /// <param name="target">On the ellipsoid, m.</param>
    /// <param name="from">Anywhere outside.</param>
    public static double StraightDepth(in Body body, Vector3D target, Vector3D from)
    {
        Vector3D u = Stretch(in body, target), q = Stretch(in body, from);
        double along = Vector3D.Dot(q, u);
        if (along >= 1)
        {
            return 0;
        }

        // The line is deepest at the foot of the perpendicular from the centre; the skin lies in that direction.
        Vector3D line = q - u;
        Vector3D foot = u + ((1 - along) / Vector3D.Dot(line, line) * line);
        double r = foot.Length;
        Vector3D skin = r > 1e-12 ? (1 / r) * foot : new Vector3D(-u.Z, 0, u.X);
        return (1 - r) * new Vector3D(skin.X * body.PelvisForward, skin.Y * body.PelvisSideways, skin.Z * body.PelvisUp).Length;
    }

    /// <summary>A point in the space in which the ellipsoid is a unit sphere.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector3D Stretch(in Body body, Vector3D p) =>
        new(p.X * body.PelvisForwardInverse, p.Y * body.PelvisSidewaysInverse, p.Z * body.PelvisUpInverse);

    /// <summary>Length along the skin by Simpson's rule over six equal steps of the parameter, all at once.</summary>
    private void AlongSkin(Vector3D target, Vector3D v, double hidden)
    {
        double uu = Vector3D.Dot(target, target), vv = Vector3D.Dot(v, v), uv = Vector3D.Dot(target, v);
        Sines.Of(hidden * Steps, out Eight sine, out Eight cosine);
        Eight speed = Eight.Sqrt((uu * sine * sine) + (vv * cosine * cosine) - (2 * uv * sine * cosine));
        Length = (Simpson * speed).Sum * hidden / 18;
        FirstThird = (cosine.Pair(1).ToScalar() * target) + (sine.Pair(1).ToScalar() * v);
        SecondThird = (cosine.Pair(2).ToScalar() * target) + (sine.Pair(2).ToScalar() * v);
        Touch = (cosine.Pair(3).ToScalar() * target) + (sine.Pair(3).ToScalar() * v);
    }
}
