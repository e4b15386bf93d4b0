using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Four = System.Runtime.Intrinsics.Vector128<float>;

namespace ToiletAid.Core.Reach;

/// <content>Depths of hand, forearm and elbow in the solids, of the way in the seat, and of leaving the sector or the envelope.</content>
internal sealed partial class FourObjective
{
    private const int Hand = 0;
    private const int ElbowPart = 2;

    private void Solids()
    {
        for (int part = Hand; part <= ElbowPart; part++)
        {
            Four radius = part == Hand ? _n.HandRadius : _n.ForearmRadius;
            FourPoints p = Part(part, in _arm.Elbow, in _arm.Grip);
            Pelvis(part, in p, radius);
            Trunk(part, Part(part, in _arm.ElbowInTrunk, in _arm.GripInTrunk), radius);
            Thigh(part, in p, radius, FourMath.One);
            Thigh(part, in p, radius, -FourMath.One);
            if (_hasSeat)
            {
                Seat(part, in p, radius);
            }

            if (_mattress != Mattress.None)
            {
                MattressDepth(part, in p, radius);
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static FourPoints Part(int part, in FourPoints elbow, in FourPoints grip) => part switch
    {
        Hand => grip,
        ElbowPart => elbow,
        _ => FourMath.Of(0.5f) * (elbow + grip),
    };

    /// <summary>Takes in a depth whose slope with the point is known in the frame of seat and thighs.</summary>
    private void Press(int part, Four depth, in FourPoints slope)
    {
        Row(part, in slope, out JointsOf<Four> row);
        Press(depth, in row);
    }

    /// <summary>A slope with a part of the arm, carried over to the joints.</summary>
    private void Row(int part, in FourPoints slope, out JointsOf<Four> row)
    {
        if (part == Hand)
        {
            Row(in slope, in _gripMoves, JointVector.Count, out row);
            return;
        }

        Row(in slope, in _elbowMoves, JointVector.Rotation, out row);
        if (part != ElbowPart)
        {
            Row(in slope, in _gripMoves, JointVector.Count, out JointsOf<Four> grip);
            for (int i = 0; i < N; i++)
            {
                row[i] = 0.5f * (row[i] + grip[i]);
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Row(in FourPoints slope, in JointsOf<FourPoints> moves, int count, out JointsOf<Four> row)
    {
        Unsafe.SkipInit(out row);
        row[0] = FourPoints.Dot(in slope, in moves[0]);
        row[1] = FourPoints.Dot(in slope, in moves[1]);
        row[2] = FourPoints.Dot(in slope, in moves[2]);
        row[3] = FourPoints.Dot(in slope, in moves[3]);
        row[4] = FourPoints.Dot(in slope, in moves[4]);
        (row[5], row[6]) = (Four.Zero, Four.Zero);
        if (count > JointVector.Rotation)
        {
            row[5] = FourPoints.Dot(in slope, in moves[5]);
            row[6] = FourPoints.Dot(in slope, in moves[6]);
        }
    }

    /// <summary>True when any depth is above 0; it is counted.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private bool IsPressed(Four depth)
    {
        _pressed += depth * depth;
        return _withSlopes && Vector128.GreaterThanAny(depth, Four.Zero);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static FourPoints Where(Four depth, in FourPoints slope)
    {
        Four pressing = Vector128.GreaterThan(depth, Four.Zero);
        return new(slope.X & pressing, slope.Y & pressing, slope.Z & pressing);
    }

    private void Pelvis(int part, in FourPoints seen, Four radius)
    {
        FourPoints p = _arm.ToPelvis(in seen);
        var inverse = new FourPoints(_n.PelvisXInverse, _n.PelvisYInverse, _n.PelvisZInverse);
        FourPoints shares = p * inverse;
        Four square = shares.Square, sharpest = Vector128.MaxNative(inverse.X, Vector128.MaxNative(inverse.Y, inverse.Z));
        Four near = IsNear(square, radius * sharpest);
        if (near == Four.Zero)
        {
            return;
        }

        Four r = Vector128.Sqrt(square);
        FourPoints across = shares * inverse;
        Four size = Vector128.MaxNative(across.Length, FourMath.Of(1e-6f));
        Four inverseSize = FourMath.One / size;
        Four gap = r * (r - FourMath.One) * inverseSize;
        Four depth = FourMath.Over(radius - gap) & near;
        if (!IsPressed(depth))
        {
            return;
        }

        FourPoints curved = across * inverse * inverse;
        Four outward = (FourMath.One - (2 * r)) * inverseSize / Vector128.MaxNative(r, FourMath.Of(1e-6f));
        PressPelvis(part, in seen, depth, (outward * across) + ((gap * inverseSize * inverseSize) * curved));
    }

    /// <summary>Bits where a ball may press into a solid; elsewhere the first-order gap is certainly wider than the ball.</summary>
    /// <param name="square">Square of the distance from the centre, in half-axes.</param>
    /// <param name="radius">Of the ball, as a share of the shortest half-axis.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Four IsNear(Four square, Four radius)
    {
        Four clear = FourMath.One + radius;
        return Vector128.LessThan(square, clear * clear);
    }

    private void Trunk(int part, in FourPoints p, Four radius)
    {
        Four a = _n.TrunkXInverse, b = _n.TrunkYInverse;
        Four x = (p.X - _n.TrunkCentre) * a, y = p.Y * b;
        Four square = (x * x) + (y * y);
        Four near = IsNear(square, radius * Vector128.MaxNative(a, b)) & Vector128.GreaterThan(p.Z, Four.Zero) & Vector128.LessThan(p.Z, _n.ShoulderUp);
        if (near == Four.Zero)
        {
            return;
        }

        Four r = Vector128.Sqrt(square);
        (x, y) = (x * a, y * b);
        Four size = Vector128.MaxNative(Vector128.Sqrt((x * x) + (y * y)), FourMath.Of(1e-6f)), inverse = FourMath.One / size;
        Four gap = r * (r - FourMath.One) * inverse, free = FourMath.Over(radius - gap) & near;
        Four low = FourMath.Step(2 * p.Z * _n.PelvisZInverse, out Four lowSlope);
        Four high = FourMath.Step(2 * (_n.ShoulderUp - p.Z) * _n.PelvisZInverse, out Four highSlope);
        Four depth = free * low * high;
        if (!IsPressed(depth))
        {
            return;
        }

        Four outward = (FourMath.One - (2 * r)) * inverse / Vector128.MaxNative(r, FourMath.Of(1e-6f)), bent = gap * inverse * inverse;
        Four within = low * high;
        var slope = new FourPoints(
            within * x * (outward + (bent * a * a)),
            within * y * (outward + (bent * b * b)),
            2 * free * _n.PelvisZInverse * ((lowSlope * high) - (low * highSlope)));
        Row(part, _arm.FromTrunk(Where(depth, in slope)), out JointsOf<Four> row);
        (row[JointVector.Lean], row[JointVector.Bend], row[JointVector.Twist]) = (Four.Zero, Four.Zero, Four.Zero);
        Press(depth, in row);
    }

    private void Thigh(int part, in FourPoints p, Four radius, Four side)
    {
        var from = new FourPoints(p.X, p.Y - (side * _n.ThighOut), p.Z);
        var along = new FourPoints(_n.ThighX, side * _n.ThighY, _n.ThighZ);
        Four t = FourMath.Clamp(FourPoints.Dot(in from, in along), _n.ThighRadius, _n.ThighLength);
        FourPoints away = from - (t * along);
        Four square = away.Square, reach = radius + _n.ThighRadius, near = Vector128.LessThan(square, reach * reach);
        if (near == Four.Zero)
        {
            return;
        }

        Four size = Vector128.Sqrt(square);
        Four depth = FourMath.Over(reach - size) & near;
        if (IsPressed(depth))
        {
            Press(part, depth, Where(depth, (-FourMath.One / Vector128.MaxNative(size, FourMath.Of(1e-6f))) * away));
        }
    }

    /// <summary>How open the seat is below a ball, 0 to 1, and how that changes with the ball's place.</summary>
    private Four Opening(in FourPoints p, Four radius, out Four slopeX, out Four slopeY)
    {
        Four inverse = FourMath.One / radius;
        Four side = FourMath.Step((_n.OpeningHalfWidth - Vector128.Abs(p.Y)) * inverse, out Four sideSlope);
        Four back = FourMath.Step((p.X + _n.OpeningBack) * inverse, out Four backSlope);
        Four front = FourMath.Step((_n.OpeningFront - p.X) * inverse, out Four frontSlope);
        slopeX = side * inverse * ((backSlope * front) - (back * frontSlope));
        slopeY = -((sideSlope * back * front * inverse) ^ (p.Y & FourMath.Of(-0f)));
        return side * back * front;
    }

    /// <summary>How deep a ball is in the seat, and how that changes with its place.</summary>
    /// <param name="p">Middle of the ball.</param>
    /// <param name="radius">Of the ball.</param>
    /// <param name="fall">How much lower it may be in the opening.</param>
    /// <param name="slope">The slope; none where the ball is clear of the seat.</param>
    private Four SeatDepth(in FourPoints p, Four radius, Four fall, out FourPoints slope)
    {
        slope = default;
        Four near = Vector128.LessThan(p.Z, _n.SeatUp + radius);
        if (near == Four.Zero)
        {
            return Four.Zero;
        }

        Four open = Opening(in p, radius, out Four slopeX, out Four slopeY);
        slope = new FourPoints(-(fall * slopeX), -(fall * slopeY), -FourMath.One);
        return FourMath.Over(_n.SeatUp - _arm.Rise + radius - (fall * open) - p.Z) & near;
    }

    private void Seat(int part, in FourPoints p, Four radius)
    {
        Four depth = SeatDepth(in p, radius, radius + _n.OpeningDepth, out FourPoints slope);
        if (IsPressed(depth))
        {
            Row(part, Where(depth, in slope), out JointsOf<Four> row);
            row[JointVector.Bend] -= _arm.RisePerBend & Vector128.GreaterThan(depth, Four.Zero);
            Press(depth, in row);
        }
    }

    /// <summary>Three points of an aid along the skin, in the seat.</summary>
    private void WayOnSeat()
    {
        Four radius = _n.AidRadius, fall = radius + (2 * _n.OpeningDepth);
        for (int third = 0; third < 3; third++)
        {
            FourPoints p = _arm.FromPelvis(_way.Point(third));
            Four depth = SeatDepth(in p, radius, fall, out FourPoints slope);
            if (!IsPressed(depth))
            {
                continue;
            }

            slope = Where(depth, in slope);
            FourPoints withGrip = _arm.FromPelvis(_way.Carried(third, _arm.ToPelvis(in slope)));
            Row(Hand, in withGrip, out JointsOf<Four> row);
            FourPoints moment = FourPoints.Cross(in p, in slope) - FourPoints.Cross(in _arm.Grip, in withGrip);
            row[JointVector.Lean] += FourPoints.Dot(_arm.PelvisLean, in moment);
            row[JointVector.Bend] += FourPoints.Dot(_arm.PelvisBend, in moment)
                - (_arm.RisePerBend & Vector128.GreaterThan(depth, Four.Zero));
            Press(depth, in row);
        }
    }

    private void MattressDepth(int part, in FourPoints p, Four radius)
    {
        bool beside = _mattress == Mattress.Beside;
        Four depth = FourMath.Over(beside ? radius - _n.PelvisY - p.Y : radius - _n.PelvisX - p.X);
        if (IsPressed(depth))
        {
            FourPoints slope = beside ? new(Four.Zero, -FourMath.One, Four.Zero) : new(-FourMath.One, Four.Zero, Four.Zero);
            Press(part, depth, Where(depth, in slope));
        }
    }

    /// <summary>A straight aid in the pelvis. Its slope is taken by small steps.</summary>
    private void Straight()
    {
        const float Nudge = 1e-3f;
        Four here = FourWay.StraightDepth(in _n, in _grip), depth = FourMath.Over(here - _n.TissueGive);
        if (!IsPressed(depth))
        {
            return;
        }

        Four per = FourMath.Of(1 / Nudge), step = FourMath.Of(Nudge);
        var slope = new FourPoints(
            per * (FourWay.StraightDepth(in _n, new(_grip.X + step, _grip.Y, _grip.Z)) - here),
            per * (FourWay.StraightDepth(in _n, new(_grip.X, _grip.Y + step, _grip.Z)) - here),
            per * (FourWay.StraightDepth(in _n, new(_grip.X, _grip.Y, _grip.Z + step)) - here));
        PressPelvis(Hand, in _arm.Grip, depth, in slope);
    }

    /// <summary>Takes in a depth whose slope with a part of the arm is known as the pelvis sees it, which turns by a share of lean and bend.</summary>
    private void PressPelvis(int part, in FourPoints at, Four depth, in FourPoints seen)
    {
        FourPoints slope = _arm.FromPelvis(Where(depth, in seen));
        Row(part, in slope, out JointsOf<Four> row);
        FourPoints moment = FourPoints.Cross(in at, in slope);
        row[JointVector.Lean] -= FourPoints.Dot(_arm.PelvisLean, in moment);
        row[JointVector.Bend] -= FourPoints.Dot(_arm.PelvisBend, in moment);
        Press(depth, in row);
    }

    /// <summary>Distance by which the grip lies outside the sector of the approach, seen from the target.</summary>
    private void Wedge()
    {
        Four x = _grip.X - _n.TargetX, y = _grip.Y - _n.TargetY;
        Four forth = (x * _wedgeX) + (y * _wedgeY), beside = (x * _wedgeY) - (y * _wedgeX);
        Four depth = FourMath.Over((Vector128.Abs(beside) * _wedgeCosine) - (forth * _wedgeSine));
        if (!IsPressed(depth))
        {
            return;
        }

        Four sign = beside & FourMath.Of(-0f);
        var slope = new FourPoints(
            ((_wedgeY * _wedgeCosine) ^ sign) - (_wedgeX * _wedgeSine),
            -((_wedgeX * _wedgeCosine) ^ sign) - (_wedgeY * _wedgeSine),
            Four.Zero);
        PressPelvis(Hand, in _arm.Grip, depth, in slope);
    }

    /// <summary>The trunk past the envelope of lean, bend and twist, as far as that would carry the shoulder.</summary>
    private void Envelope(in JointsOf<Four> q)
    {
        Four lean = q[JointVector.Lean] * _n.LeanInverse, bend = q[JointVector.Bend] * _n.BendInverse, twist = q[JointVector.Twist] * _n.TwistInverse;
        Four share = Vector128.Sqrt((lean * lean) + (bend * bend) + (twist * twist));
        Four depth = FourMath.Over(_n.ShoulderUp * (share - FourMath.One));
        if (IsPressed(depth))
        {
            Four per = _n.ShoulderUp / Vector128.MaxNative(share, FourMath.Of(1e-6f)) & Vector128.GreaterThan(depth, Four.Zero);
            JointsOf<Four> row = default;
            row[JointVector.Lean] = per * lean * _n.LeanInverse;
            row[JointVector.Bend] = per * bend * _n.BendInverse;
            row[JointVector.Twist] = per * twist * _n.TwistInverse;
            Press(depth, in row);
        }
    }
}
