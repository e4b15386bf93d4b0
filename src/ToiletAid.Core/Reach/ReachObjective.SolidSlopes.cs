namespace ToiletAid.Core.Reach;

/// <content>Slopes of the depths of hand, forearm and elbow in the solids.</content>
internal readonly partial struct ReachObjective
{
    /// <summary>Slopes of one part against one solid.</summary>
    private void SolidSlopes(in Arm arm, in ArmSlopes moves, int depth, double rise, double risePerBend, out JointVector sum)
    {
        int solid = depth switch
        {
            < ReachTrial.Depths.Trunk => ReachTrial.Depths.Pelvis,
            < ReachTrial.Depths.Thigh => ReachTrial.Depths.Trunk,
            < ReachTrial.Depths.OtherThigh => ReachTrial.Depths.Thigh,
            < ReachTrial.Depths.Seat => ReachTrial.Depths.OtherThigh,
            < ReachTrial.Depths.PathOnSeat => ReachTrial.Depths.Seat,
            _ => ReachTrial.Depths.Mattress,
        };
        int part = depth - solid;
        double radius = part == 0 ? _body.HandRadius : _body.ForearmRadius;
        bool inTrunk = solid == ReachTrial.Depths.Trunk;
        (Vector3D elbow, Vector3D grip) = inTrunk ? (arm.ElbowInTrunk, arm.GripInTrunk) : (arm.Elbow, arm.Grip);
        Vector3D point = part == 0 ? grip : (part == 1 ? 0.5 * (elbow + grip) : elbow);
        ReachSlopes.Points move = part switch
        {
            0 => inTrunk ? moves.GripInTrunk : moves.Grip,
            1 => inTrunk ? ArmSlopes.Middle(in moves.ElbowInTrunk, in moves.GripInTrunk) : ArmSlopes.Middle(in moves.Elbow, in moves.Grip),
            _ => inTrunk ? moves.ElbowInTrunk : moves.Elbow,
        };
        if (solid == ReachTrial.Depths.Pelvis)
        {
            move = moves.ToPelvis(in arm, in move, point);
            point = arm.ToPelvis(point);
        }

        sum = default;
        sum.All = move.Along(solid switch
        {
            ReachTrial.Depths.Pelvis => PelvisSlope(point),
            ReachTrial.Depths.Trunk => TrunkSlope(point, radius),
            ReachTrial.Depths.Thigh => ThighSlope(point, 1),
            ReachTrial.Depths.OtherThigh => ThighSlope(point, -1),
            ReachTrial.Depths.Seat => SeatSlope(point, radius, rise),
            _ => _scene.Mattress == Mattress.Beside ? new Vector3D(0, -1, 0) : new Vector3D(-1, 0, 0),
        });
        if (solid == ReachTrial.Depths.Seat)
        {
            // The seat goes down by as much as the body rises.
            sum[JointVector.Bend] -= risePerBend;
        }
    }

    // Each of these is the slope of a depth above 0 with the point; nobody asks for another.

    private Vector3D PelvisSlope(Vector3D p)
    {
        double a = _body.PelvisForwardInverse, b = _body.PelvisSidewaysInverse, c = _body.PelvisUpInverse;
        (double aa, double bb, double cc) = (a * a, b * b, c * c);
        var across = new Vector3D(p.X * aa, p.Y * bb, p.Z * cc);
        double r = Math.Sqrt(Vector3D.Dot(p, across)), size = across.Length;
        if (r < 1e-9)
        {
            return default;
        }

        var curved = new Vector3D(across.X * aa, across.Y * bb, across.Z * cc);
        return ((1 - (2 * r)) / (size * r) * across) + (r * (r - 1) / (size * size * size) * curved);
    }

    private Vector3D TrunkSlope(Vector3D p, double radius)
    {
        double here = TrunkDepth(p, radius);
        return Difference(
            TrunkDepth(p with { X = p.X + Nudge }, radius),
            TrunkDepth(p with { Y = p.Y + Nudge }, radius),
            TrunkDepth(p with { Z = p.Z + Nudge }, radius),
            here);
    }

    /// <summary>Away from the nearest point of the thigh; at its ends that is a point, and between them the slope has no part along it.</summary>
    private Vector3D ThighSlope(Vector3D p, double side)
    {
        Vector3D away = FromThigh(p, side);
        double size = away.Length;
        return size < 1e-9 ? default : (-1 / size) * away;
    }

    private Vector3D SeatSlope(Vector3D p, double radius, double rise)
    {
        double here = SeatDepth(p, radius, rise);
        return new Vector3D(
            (SeatDepth(p with { X = p.X + Nudge }, radius, rise) - here) / Nudge,
            (SeatDepth(p with { Y = p.Y + Nudge }, radius, rise) - here) / Nudge,
            -1);
    }
}
