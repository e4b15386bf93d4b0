using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Four = System.Runtime.Intrinsics.Vector128<float>;

namespace ToiletAid.Core.Reach;

/// <summary>Shortest ways around the pelvis of four persons: what <see cref="PelvisPath"/> is for one, with its slopes.</summary>
/// <remarks>A shortest way does not change, to the first order, with where it touches; so its slope within its plane is its own direction,
/// and across the plane only the turning of the plane counts.</remarks>
[StructLayout(LayoutKind.Sequential)]
internal struct FourWay
{
    /// <summary>Nearer to being opposite the target, the plane of the way counts as turning no faster, in half-axes.</summary>
    private const float LeastAside = 1e-3f;

    /// <summary>Nearer to the skin, the point of tangency counts as moving no faster, in half-axes.</summary>
    private const float LeastTangent = 0.05f;

    /// <summary>Length of the whole way, m.</summary>
    public Four Length;

    /// <summary>Where it touches the skin first, as the pelvis sees it.</summary>
    public FourPoints Touch;

    /// <summary>Slope of the length with the grip.</summary>
    public FourPoints Slope;

    private FourPoints _target;
    private FourPoints _up;
    private FourPoints _across;
    private FourPoints _hiddenSlope;
    private FourPoints _turn;
    private ThreeOf<Four> _sines;
    private ThreeOf<Four> _cosines;
    private Four _any;

    /// <summary>Finds the ways.</summary>
    /// <param name="n">The persons.</param>
    /// <param name="from">Grips, as the pelvis sees them.</param>
    public void Find(in DescentNumbers<Four> n, in FourPoints from)
    {
        _target = new(n.TargetX, n.TargetY, n.TargetZ);
        var inverse = new FourPoints(n.PelvisXInverse, n.PelvisYInverse, n.PelvisZInverse);
        FourPoints u = _target * inverse, q = from * inverse;
        Four along = FourPoints.Dot(in q, in u);
        FourPoints across = q - (along * u);
        Four aside = across.Length, square = q.Square;
        Four tangent = Vector128.Sqrt(FourMath.Over(square - FourMath.One));
        Four sine = aside - (along * tangent), cosine = along + (aside * tangent);
        Four seen = Vector128.GreaterThanOrEqual(along, FourMath.One)
            | (Vector128.LessThanOrEqual(sine, Four.Zero) & Vector128.GreaterThanOrEqual(cosine, Four.Zero));
        _any = ~seen;
        if (_any == Four.Zero)
        {
            GoStraight(in _target, in from);
            return;
        }

        Four hidden = FourMath.Angle(FourMath.Over(sine), cosine) & _any;
        Four width = Vector128.MaxNative(aside, FourMath.Of(LeastAside));
        FourPoints unit = (FourMath.One / width) * across;
        var axes = new FourPoints(n.PelvisX, n.PelvisY, n.PelvisZ);
        _up = unit * axes;
        FourPoints side = FourPoints.Cross(in u, in unit);
        _across = side * axes;
        _turn = ((FourMath.One / width) * side) * inverse;
        Bound(in q, in u, in unit, in inverse, along, aside, square, tangent);
        AlongSkin(in from, hidden);
    }

    /// <summary>Takes the straight way to the target, whatever lies between; points of the way along the skin stay as they were found.</summary>
    public void GoStraight(in FourPoints target, in FourPoints from)
    {
        Touch = target;
        FourPoints line = from - target;
        Length = line.Length;
        Slope = (FourMath.One / Vector128.MaxNative(Length, FourMath.Of(1e-9f))) * line;
    }

    /// <summary>How deep the straight line to the target presses into the pelvis, as <see cref="PelvisPath.StraightDepth"/>.</summary>
    public static Four StraightDepth(in DescentNumbers<Four> n, in FourPoints from)
    {
        var inverse = new FourPoints(n.PelvisXInverse, n.PelvisYInverse, n.PelvisZInverse);
        FourPoints u = new FourPoints(n.TargetX, n.TargetY, n.TargetZ) * inverse, q = from * inverse, line = q - u;
        Four along = FourPoints.Dot(in q, in u);
        FourPoints foot = u + (((FourMath.One - along) / Vector128.MaxNative(line.Square, FourMath.Of(1e-9f))) * line);
        Four r = foot.Length;
        FourPoints skin = (FourMath.One / Vector128.MaxNative(r, FourMath.Of(1e-6f))) * foot;
        skin *= new FourPoints(n.PelvisX, n.PelvisY, n.PelvisZ);
        return (FourMath.One - r) * skin.Length & Vector128.LessThan(along, FourMath.One);
    }

    /// <summary>How the hidden angle changes with the grip: the angle to the grip less that from there to the point of tangency.</summary>
    private void Bound(in FourPoints q, in FourPoints u, in FourPoints unit, in FourPoints inverse, Four along, Four aside, Four square, Four tangent)
    {
        Four perSquare = FourMath.One / Vector128.MaxNative(square, FourMath.Of(1e-6f));
        FourPoints turning = perSquare * ((along * unit) - (aside * u));
        Four outside = Vector128.GreaterThan(tangent, Four.Zero);
        Four pull = perSquare / Vector128.MaxNative(tangent, FourMath.Of(LeastTangent)) & outside;
        _hiddenSlope = (turning - (pull * q)) * inverse;
    }

    /// <summary>Length along the skin by Simpson's rule over six equal steps of the parameter, and how it changes as the plane turns.</summary>
    private void AlongSkin(in FourPoints from, Four hidden)
    {
        Four uu = _target.Square, vv = _up.Square, uv = FourPoints.Dot(in _target, in _up);
        Four va = FourPoints.Dot(in _up, in _across), ua = FourPoints.Dot(in _target, in _across);
        FourMath.NearZero(hidden * (1 / 6f), out Four s1, out Four c1);
        (Four s2, Four c2) = (2 * s1 * c1, FourMath.One - (2 * s1 * s1));
        (Four s3, Four c3) = ((s1 * c2) + (c1 * s2), (c1 * c2) - (s1 * s2));
        (Four s4, Four c4) = (2 * s2 * c2, FourMath.One - (2 * s2 * s2));
        (Four s5, Four c5) = ((s2 * c3) + (c2 * s3), (c2 * c3) - (s2 * s3));
        (Four s6, Four c6) = (2 * s3 * c3, FourMath.One - (2 * s3 * s3));
        Four sum = Vector128.Sqrt(vv), turn = va / Vector128.MaxNative(sum, FourMath.Of(1e-9f));
        Add(4, s1, c1, uu, vv, uv, va, ua, ref sum, ref turn);
        Add(2, s2, c2, uu, vv, uv, va, ua, ref sum, ref turn);
        Add(4, s3, c3, uu, vv, uv, va, ua, ref sum, ref turn);
        Add(2, s4, c4, uu, vv, uv, va, ua, ref sum, ref turn);
        Add(4, s5, c5, uu, vv, uv, va, ua, ref sum, ref turn);
        Add(1, s6, c6, uu, vv, uv, va, ua, ref sum, ref turn);
        (_sines[0], _sines[1], _sines[2]) = (s2, s4, s6);
        (_cosines[0], _cosines[1], _cosines[2]) = (c2, c4, c6);
        Touch = (c6 * _target) + (s6 * _up);
        FourPoints line = from - Touch;
        Four straight = line.Length;
        Length = (sum * hidden * (1 / 18f)) + straight;
        FourPoints direction = (FourMath.One / Vector128.MaxNative(straight, FourMath.Of(1e-9f))) * line;
        Four perTurn = (turn * hidden * (1 / 18f)) - (s6 * FourPoints.Dot(in direction, in _across));
        Slope = direction + ((perTurn & _any) * _turn);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Add(float weight, Four s, Four c, Four uu, Four vv, Four uv, Four va, Four ua, ref Four sum, ref Four turn)
    {
        Four speed = Vector128.Sqrt(FourMath.Over((uu * s * s) + (vv * c * c) - (2 * uv * s * c)));
        sum += weight * speed;
        turn += weight * (((va * c) - (ua * s)) * c / Vector128.MaxNative(speed, FourMath.Of(1e-9f)));
    }

    /// <summary>A point of the way: a third, two thirds or all of the way along the skin from the target.</summary>
    /// <param name="third">0, 1 or 2.</param>
    public readonly FourPoints Point(int third) =>
        _any == Four.Zero ? _target : (_cosines[third] * _target) + (_sines[third] * _up);

    /// <summary>Slope of something with the grip, from its slope with a point of the way that the grip moves along.</summary>
    /// <param name="third">0, 1 or 2.</param>
    /// <param name="slope">With the point, as the pelvis sees it.</param>
    public readonly FourPoints Carried(int third, in FourPoints slope)
    {
        if (_any == Four.Zero)
        {
            return default;
        }

        FourPoints forth = (_cosines[third] * _up) - (_sines[third] * _target);
        Four perHidden = (third + 1) * (1 / 3f) * FourPoints.Dot(in forth, in slope);
        Four perTurn = _sines[third] * FourPoints.Dot(in _across, in slope);
        return ((perHidden & _any) * _hiddenSlope) + ((perTurn & _any) * _turn);
    }

    [InlineArray(3)]
    private struct ThreeOf<T>
    {
        private T _first;
    }
}
