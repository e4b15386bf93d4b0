using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>Shortest way from a point to a target on the skin of the pelvis, outside the pelvis, in the plane of both and its centre:
/// straight to the point of tangency, then along the skin.</summary>
/// <remarks>An aid is a plane curve, so a way in one plane is what an aid of that length can follow (decision). Stretching space until the
/// ellipsoid is a unit sphere keeps planes, tangents and insides; lengths are taken in the unstretched space.</remarks>
[StructLayout(LayoutKind.Auto)]
internal struct PelvisPath
{
    /// <summary>Length of the whole way, m.</summary>
    public double Length;

    /// <summary>Straight distance, m.</summary>
    public double Straight;

    /// <summary>How deep a straight line would press into the body, m.</summary>
    public double Depth;

    /// <summary>Where the way touches the skin first: the tangent point, or the target when it is in sight.</summary>
    public Space Touch;

    /// <summary>Points at a third and two thirds of the way along the skin.</summary>
    public Space FirstThird;

    /// <inheritdoc cref="FirstThird"/>
    public Space SecondThird;

    /// <summary>Finds the way.</summary>
    /// <param name="body">Gives the ellipsoid.</param>
    /// <param name="target">On the ellipsoid, m.</param>
    /// <param name="from">Anywhere; a point inside counts as lying on the skin.</param>
    public static PelvisPath To(in Body body, Space target, Space from)
    {
        PelvisPath path = default;
        path.Straight = (from - target).Length;
        path.Length = path.Straight;
        path.Touch = target;
        path.FirstThird = target;
        path.SecondThird = target;

        var u = new Space(target.X * body.PelvisForwardInverse, target.Y * body.PelvisSidewaysInverse, target.Z * body.PelvisUpInverse);
        var q = new Space(from.X * body.PelvisForwardInverse, from.Y * body.PelvisSidewaysInverse, from.Z * body.PelvisUpInverse);
        double along = Space.Dot(q, u);
        if (along >= 1)
        {
            // Beyond the plane that touches the pelvis at the target: in sight.
            return path;
        }

        double r = q.Length;
        Space across = q - (along * u);
        double w = across.Length, aside = w;
        if (w < 1e-12)
        {
            // Exactly opposite the target all ways around are planes of symmetry; the one through front and back is taken.
            (across, w) = (new Space(-u.Z, 0, u.X), Math.Sqrt((u.X * u.X) + (u.Z * u.Z)));
        }

        // The angle at the centre between target and eye, less that between tangent point and eye, as one angle.
        double tangent = r > 1 ? Math.Sqrt((r * r) - 1) : 0;
        double sine = aside - (along * tangent), cosine = along + (aside * tangent);
        if (sine <= 0 && cosine >= 0)
        {
            return path;
        }

        double hidden = Math.Atan2(sine, cosine);
        Space unit = (1 / w) * across;
        var v = new Space(unit.X * body.PelvisForward, unit.Y * body.PelvisSideways, unit.Z * body.PelvisUp);
        (double s, double k) = Math.SinCos(hidden / 6);
        path.Bend(target, v, s, k, hidden);
        path.Length += (from - path.Touch).Length;
        return path;
    }

    /// <summary>Length along the skin by Simpson's rule over six equal steps of the parameter.</summary>
    private void Bend(Space target, Space v, double s, double k, double hidden)
    {
        double uu = Space.Dot(target, target), vv = Space.Dot(v, v), uv = Space.Dot(target, v);
        double sine = 0, cosine = 1, sum = 0, sineHalf = 0, cosineHalf = 1;
        for (int i = 0; i <= 6; i++)
        {
            double speed = Math.Sqrt((uu * sine * sine) + (vv * cosine * cosine) - (2 * uv * sine * cosine));
            sum += speed * (i is 0 or 6 ? 1 : (i % 2 == 1 ? 4 : 2));
            switch (i)
            {
                case 2:
                    FirstThird = (cosine * target) + (sine * v);
                    break;
                case 3:
                    (sineHalf, cosineHalf) = (sine, cosine);
                    break;
                case 4:
                    SecondThird = (cosine * target) + (sine * v);
                    break;
                case 6:
                    Touch = (cosine * target) + (sine * v);
                    break;
                default:
                    break;
            }

            (sine, cosine) = ((sine * k) + (cosine * s), (cosine * k) - (sine * s));
        }

        Depth = (1 - cosineHalf) * ((cosineHalf * target) + (sineHalf * v)).Length;
        Length = sum * hidden / 18;
    }
}
