using System.Numerics;
using System.Runtime.CompilerServices;

namespace ToiletAid.Core.Reach;

/// <content>Slopes by the chain rule: how points move with joints is exact, how depths and the way change with points is taken by
/// small steps.</content>
internal readonly partial struct ReachObjective
{
    /// <summary>Step by which slopes are taken, m (rad where a joint is moved): small against every length of a body, large against rounding.</summary>
    private const double Nudge = 1e-7;

    /// <summary>How a tried pose changes with each joint.</summary>
    /// <param name="angles">The pose.</param>
    /// <param name="here">What trying it gave.</param>
    /// <param name="slopes">The slopes.</param>
    public void Slopes(in JointAngles angles, in ReachTrial here, out ReachSlopes slopes)
    {
        // Depths are filled in one by one; clearing all places beforehand would take as long as some of them.
        Unsafe.SkipInit(out slopes);
        (slopes.Value, slopes.Tilt, slopes.Turn, slopes.Count) = (default, default, default, 0);
        ref readonly Arm arm = ref here.Arm;
        ArmSlopes moves = ArmSlopes.At(in _body, in angles, in arm, _scene.PelvisLean, _scene.PelvisBend);
        slopes.Grip = moves.ToPelvis(in arm, in moves.Grip, arm.Grip);
        if (_scene.TargetOffSkin)
        {
            Vector3D line = here.Grip - _scene.Target;
            slopes.Value.All = slopes.Grip.Along((1 / Math.Max(line.Length, 1e-9)) * line);
        }
        else
        {
            WaySlopes(in arm, in moves, in here, ref slopes);
        }

        double rise = arm.Rise * _body.ThighOut;
        double risePerBend = RisePerBend(in arm);
        uint bits = here.Pressing();
        const uint Solids = ((1u << ReachTrial.Depths.PathOnSeat) - 1) & ~1u;
        const uint Others = 7u << ReachTrial.Depths.Mattress;
        for (uint rest = bits & (Solids | Others); rest != 0; rest &= rest - 1)
        {
            int depth = BitOperations.TrailingZeroCount(rest);
            SolidSlopes(in arm, in moves, depth, rise, risePerBend, out slopes.Depth[slopes.Count]);
            slopes.Which[slopes.Count++] = depth;
        }

        if ((bits & (1u << ReachTrial.Depths.Wedge)) != 0)
        {
            Vector3D grip = here.Grip;
            double wedge = here.Depth[ReachTrial.Depths.Wedge];
            var slope = new Vector3D(
                (Wedge(grip with { X = grip.X + Nudge }) - wedge) / Nudge,
                (Wedge(grip with { Y = grip.Y + Nudge }) - wedge) / Nudge,
                0);
            slopes.Depth[slopes.Count].All = slopes.Grip.Along(slope);
            slopes.Which[slopes.Count++] = ReachTrial.Depths.Wedge;
        }

        if ((bits & (1u << ReachTrial.Depths.Envelope)) != 0)
        {
            slopes.Depth[slopes.Count] = EnvelopeSlope(in angles);
            slopes.Which[slopes.Count++] = ReachTrial.Depths.Envelope;
        }

        if ((bits & ReachTrial.Bends) != 0)
        {
            BendSlopes(in arm, in moves, in angles, in here, ref slopes);
        }

        double pressure = 2 * Pressure(here.Pressed);
        Eight sum = slopes.Value.All + (2 * BendCost * ((here.Tilt * slopes.Tilt.All) + (here.Turn * slopes.Turn.All)));
        for (int k = 0; k < slopes.Count; k++)
        {
            sum += pressure * here.Depth[slopes.Which[k]] * slopes.Depth[k].All;
        }

        slopes.Value.All = sum;
    }

    private JointVector EnvelopeSlope(in JointAngles angles)
    {
        double perSquare = _body.ShoulderUp / Math.Sqrt(EnvelopeSquare(in angles));
        JointVector slope = default;
        slope[JointVector.Lean] = perSquare * angles.Trunk.X * _scene.TrunkInverse.X * _scene.TrunkInverse.X;
        slope[JointVector.Bend] = perSquare * angles.Trunk.Y * _scene.TrunkInverse.Y * _scene.TrunkInverse.Y;
        slope[JointVector.Twist] = perSquare * angles.Trunk.Z * _scene.TrunkInverse.Z * _scene.TrunkInverse.Z;
        return slope;
    }

    /// <summary>Slopes of the length of the way, of the depth of a straight line, and of the points of the way in the seat.</summary>
    private void WaySlopes(in Arm arm, in ArmSlopes moves, in ReachTrial here, ref ReachSlopes slopes)
    {
        const uint OnSeat = 7u << ReachTrial.Depths.PathOnSeat;
        Vector3D grip = here.Grip;
        if (!_scene.Straight && (here.Pressing() & OnSeat) == 0)
        {
            slopes.Value.All = slopes.Grip.Along(LengthSlope(in here));
            return;
        }

        PelvisPath path = PelvisPath.To(in _body, _scene.Target, grip);
        PelvisPath x = PelvisPath.To(in _body, _scene.Target, grip with { X = grip.X + Nudge });
        PelvisPath y = PelvisPath.To(in _body, _scene.Target, grip with { Y = grip.Y + Nudge });
        PelvisPath z = PelvisPath.To(in _body, _scene.Target, grip with { Z = grip.Z + Nudge });
        if (_scene.Straight)
        {
            slopes.Value.All = slopes.Grip.Along(Difference(x.Straight, y.Straight, z.Straight, path.Straight));
            if (here.Depth[ReachTrial.Depths.Straight] > 0)
            {
                slopes.Depth[slopes.Count].All = slopes.Grip.Along(Difference(
                    PelvisPath.StraightDepth(in _body, _scene.Target, grip with { X = grip.X + Nudge }),
                    PelvisPath.StraightDepth(in _body, _scene.Target, grip with { Y = grip.Y + Nudge }),
                    PelvisPath.StraightDepth(in _body, _scene.Target, grip with { Z = grip.Z + Nudge }),
                    PelvisPath.StraightDepth(in _body, _scene.Target, grip)));
                slopes.Which[slopes.Count++] = ReachTrial.Depths.Straight;
            }
        }
        else
        {
            slopes.Value.All = slopes.Grip.Along(Difference(x.Length, y.Length, z.Length, path.Length));
        }

        for (int k = 0; k < 3; k++)
        {
            int depth = ReachTrial.Depths.PathOnSeat + k;
            if (here.Depth[depth] > 0)
            {
                Vector3D p = Point(in path, k);
                PointOnSeat(in arm, in moves, in slopes.Grip, p, Point(in x, k), Point(in y, k), Point(in z, k), out slopes.Depth[slopes.Count]);
                slopes.Which[slopes.Count++] = depth;
            }
        }
    }

    /// <summary>Slope of the length with the grip: within the plane of the way it is the direction from where the way touches, as for
    /// any shortest way; across the plane, which turns with the grip, it is found by one small step.</summary>
    private Vector3D LengthSlope(in ReachTrial here)
    {
        Vector3D line = here.Grip - here.Touch;
        Vector3D within = (1 / Math.Max(line.Length, 1e-9)) * line;
        Vector3D normal = Vector3D.Cross(_scene.Target, here.Grip);
        double size = normal.Length;
        if (here.Touch == _scene.Target || size < 1e-9)
        {
            return within;
        }

        Vector3D across = (1 / size) * normal;
        double length = PelvisPath.To(in _body, _scene.Target, here.Grip + (Nudge * across)).Length;
        return within + (((length - here.Length) / Nudge) * across);
    }

    private static Vector3D Difference(double x, double y, double z, double from) =>
        new((x - from) / Nudge, (y - from) / Nudge, (z - from) / Nudge);

    private static Vector3D Point(in PelvisPath path, int k) => k switch
    {
        0 => path.FirstThird,
        1 => path.SecondThird,
        _ => path.Touch,
    };

    private void PointOnSeat(
        in Arm arm,
        in ArmSlopes moves,
        in ReachSlopes.Points grip,
        Vector3D p,
        Vector3D x,
        Vector3D y,
        Vector3D z,
        out JointVector sum)
    {
        double thin = _body.AidRadius, rise = arm.Rise * _body.ThighOut;
        Vector3D seen = arm.FromPelvis(p);
        double depth = ThinDepth(seen, thin, rise);
        Vector3D slope = Difference(
            ThinDepth(seen with { X = seen.X + Nudge }, thin, rise),
            ThinDepth(seen with { Y = seen.Y + Nudge }, thin, rise),
            ThinDepth(seen with { Z = seen.Z + Nudge }, thin, rise),
            depth);
        double perRise = (ThinDepth(seen, thin, rise + Nudge) - depth) / Nudge;
        (Vector3D dx, Vector3D dy, Vector3D dz) = ((1 / Nudge) * (x - p), (1 / Nudge) * (y - p), (1 / Nudge) * (z - p));
        ReachSlopes.Points moved = default;
        for (int i = 0; i < JointVector.Count; i++)
        {
            Vector3D g = grip[i];
            moved[i] = arm.FromPelvis((g.X * dx) + (g.Y * dy) + (g.Z * dz));
        }

        moved[JointVector.Lean] += Vector3D.Cross(moves.PelvisLean, seen);
        moved[JointVector.Bend] += Vector3D.Cross(moves.PelvisBend, seen);
        sum = default;
        sum.All = moved.Along(slope);
        sum[JointVector.Bend] += perRise * RisePerBend(in arm);
    }

    private double RisePerBend(in Arm arm) => arm.RiseSlope * _scene.PelvisBend * _body.ThighOut;

    /// <summary>Slopes of the handle's bend: hand, elbow, thumb and the point that the way touches are moved as a small step of each joint
    /// moves them.</summary>
    private void BendSlopes(in Arm arm, in ArmSlopes moves, in JointAngles angles, in ReachTrial here, ref ReachSlopes slopes)
    {
        ReachSlopes.Points thumb = ArmSlopes.ThumbAt(in angles, in arm);
        Vector3D x = default, y = default, z = default;
        if (!_scene.TargetOffSkin && here.Touch != _scene.Target)
        {
            Vector3D grip = here.Grip;
            x = (1 / Nudge) * (PelvisPath.To(in _body, _scene.Target, grip with { X = grip.X + Nudge }).Touch - here.Touch);
            y = (1 / Nudge) * (PelvisPath.To(in _body, _scene.Target, grip with { Y = grip.Y + Nudge }).Touch - here.Touch);
            z = (1 / Nudge) * (PelvisPath.To(in _body, _scene.Target, grip with { Z = grip.Z + Nudge }).Touch - here.Touch);
        }

        Vector3D seen = arm.FromPelvis(here.Touch);
        ReachTrial there = default;
        for (int i = 0; i < JointVector.Count; i++)
        {
            Vector3D g = slopes.Grip[i];
            Vector3D touch = arm.FromPelvis((g.X * x) + (g.Y * y) + (g.Z * z)) + (i switch
            {
                JointVector.Lean => Vector3D.Cross(moves.PelvisLean, seen),
                JointVector.Bend => Vector3D.Cross(moves.PelvisBend, seen),
                _ => default,
            });
            (there.Tilt, there.Turn) = (0, 0);
            HandleBend(
                arm.Grip + (Nudge * moves.Grip[i]),
                arm.Elbow + (Nudge * moves.Elbow[i]),
                arm.Thumb + (Nudge * thumb[i]),
                seen + (Nudge * touch),
                ref there);
            slopes.Tilt[i] = here.Tilt > 0 ? (there.Tilt - here.Tilt) / Nudge : 0;
            slopes.Turn[i] = here.Turn > 0 ? (there.Turn - here.Turn) / Nudge : 0;
        }
    }
}
