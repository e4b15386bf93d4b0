using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>What the solver makes small: the way from grip centre to target, plus what it costs to press into solids, to come from the
/// wrong side, or to hold the aid in a direction that forearm and wrist do not give.</summary>
/// <remarks>Solids are stiff springs, as flesh is, so that the value is smooth and one number orders all poses: a wider box of joint
/// ranges can never have a larger least value.</remarks>
[StructLayout(LayoutKind.Auto)]
internal readonly partial struct ReachObjective(in Body body, in Scene scene)
{
    private readonly Body _body = body;
    private readonly Scene _scene = scene;
    private readonly double _firmness = 1 / (body.FleshDepth * body.FleshDepth);
    private readonly double _tiltSine = Math.Sin(Math.Min(scene.Deviation, Math.PI / 2));
    private readonly double _pronationSlope = Slope(scene.Pronation);
    private readonly double _supinationSlope = Slope(scene.Supination);

    /// <summary>What surrounds the body.</summary>
    [UnscopedRef]
    public ref readonly Scene Scene => ref _scene;

    /// <summary>The numbers that a descent uses.</summary>
    public DescentNumbers<float> Numbers(in JointBox box) => DescentNumbers<float>.Of(in _body, in _scene, in box);

    /// <summary>The value of a pose, m.</summary>
    public double At(in JointVector q)
    {
        JointAngles angles = Angles(in q);
        Try(in angles, out ReachTrial trial);
        return trial.Value;
    }

    /// <summary>Slope of the value with the sum of squared depths, 1/m.</summary>
    public double Pressure(double pressed) => _body.Stiffness / 2 * (1 + (2 * pressed * _firmness));

    /// <summary>Change of that slope with the sum of squared depths, 1/m³.</summary>
    public double PressureGrowth => _body.Stiffness * _firmness;

    /// <summary>Length by which the solver measures how far is far; with it bodies of all sizes are solved alike, m.</summary>
    public double Unit => _body.Stature;

    /// <summary>Cost of each rad² by which the handle must bend, m.</summary>
    public double BendCost => _body.HandleBend;

    /// <summary>Sines and cosines of a pose.</summary>
    public JointAngles Angles(in JointVector q) => JointAngles.Of(in q, _scene.PelvisLean, _scene.PelvisBend);

    /// <summary>Tries a pose.</summary>
    /// <param name="angles">The pose.</param>
    /// <param name="trial">What was found.</param>
    public void Try(in JointAngles angles, out ReachTrial trial)
    {
        trial = default;
        trial.Arm = Arm.At(in _body, in angles);
        ref readonly Arm arm = ref trial.Arm;
        trial.Grip = arm.ToPelvis(arm.Grip);
        if (_scene.TargetOffSkin)
        {
            trial.Touch = _scene.Target;
            trial.Length = (trial.Grip - _scene.Target).Length;
        }
        else
        {
            Way(in arm, ref trial);
        }

        Solids(in arm, ref trial);
        trial.Depth[ReachTrial.Depths.Wedge] = Wedge(trial.Grip);
        trial.Depth[ReachTrial.Depths.Envelope] = Over(_body.ShoulderUp * (Math.Sqrt(EnvelopeSquare(in angles)) - 1));
        HandleBend(arm.Grip, arm.Elbow, arm.Thumb, arm.FromPelvis(trial.Touch), ref trial);
        double pressed = trial.Depth.Squares();
        trial.Pressed = pressed;
        trial.Value = trial.Length
            + (_body.Stiffness / 2 * pressed * (1 + (pressed * _firmness)))
            + (_body.HandleBend * ((trial.Tilt * trial.Tilt) + (trial.Turn * trial.Turn)));
    }

    /// <summary>Slope of a direction across the hand at which a turn of the forearm is used up.</summary>
    internal static double Slope(double angle) => angle < Math.PI / 2 ? Math.Tan(angle) : double.MaxValue;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Over(double depth) => depth > 0 ? depth : 0;

    /// <summary>0 below 0, 1 above 1, smooth between.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Step(double x)
    {
        double t = Math.Min(Math.Max(x, 0), 1);
        return t * t * (3 - (2 * t));
    }

    /// <summary>Square of the share of the envelope that lean, bend and twist use up together: nobody leans, bends and turns to the end at once.</summary>
    private double EnvelopeSquare(in JointAngles q)
    {
        double lean = q.Trunk.X * _scene.TrunkInverse.X, bend = q.Trunk.Y * _scene.TrunkInverse.Y, twist = q.Trunk.Z * _scene.TrunkInverse.Z;
        return (lean * lean) + (bend * bend) + (twist * twist);
    }

    private void Way(in Arm arm, ref ReachTrial trial)
    {
        PelvisPath path = PelvisPath.To(in _body, _scene.Target, trial.Grip);
        trial.Touch = _scene.Straight ? _scene.Target : path.Touch;
        trial.Length = _scene.Straight ? path.Straight : path.Length;
        trial.Depth[ReachTrial.Depths.Straight] = _scene.Straight ? Over(PelvisPath.StraightDepth(in _body, _scene.Target, trial.Grip) - _body.TissueGive) : 0;
        if (_scene.HasSeat)
        {
            double rise = arm.Rise * _body.ThighOut;
            trial.Depth[ReachTrial.Depths.PathOnSeat] = ThinDepth(arm.FromPelvis(path.FirstThird), _body.AidRadius, rise);
            trial.Depth[ReachTrial.Depths.PathOnSeat + 1] = ThinDepth(arm.FromPelvis(path.SecondThird), _body.AidRadius, rise);
            trial.Depth[ReachTrial.Depths.PathOnSeat + 2] = ThinDepth(arm.FromPelvis(path.Touch), _body.AidRadius, rise);
        }
    }

    private void Solids(in Arm arm, ref ReachTrial trial)
    {
        Part(in arm, 0, arm.GripInTrunk, arm.Grip, _body.HandRadius, ref trial.Depth);
        Part(in arm, 1, 0.5 * (arm.ElbowInTrunk + arm.GripInTrunk), 0.5 * (arm.Elbow + arm.Grip), _body.ForearmRadius, ref trial.Depth);
        Part(in arm, 2, arm.ElbowInTrunk, arm.Elbow, _body.ForearmRadius, ref trial.Depth);
    }

    /// <summary>A ball around the hand, the middle of the forearm or the elbow against every solid.</summary>
    private void Part(in Arm arm, int part, Vector3D inTrunk, Vector3D p, double radius, ref ReachTrial.Depths depth)
    {
        depth[ReachTrial.Depths.Pelvis + part] = PelvisDepth(arm.ToPelvis(p), radius);
        depth[ReachTrial.Depths.Trunk + part] = TrunkDepth(inTrunk, radius);
        depth[ReachTrial.Depths.Thigh + part] = ThighDepth(p, radius, 1);
        depth[ReachTrial.Depths.OtherThigh + part] = ThighDepth(p, radius, -1);
        if (_scene.HasSeat)
        {
            depth[ReachTrial.Depths.Seat + part] = SeatDepth(p, radius, arm.Rise * _body.ThighOut);
        }

        if (_scene.Mattress != Mattress.None)
        {
            depth[ReachTrial.Depths.Mattress + part] = MattressDepth(p, radius);
        }
    }

    /// <summary>How deep a ball presses into the pelvis, m. First-order, exact on the skin.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double PelvisDepth(Vector3D p, double radius)
    {
        double a = _body.PelvisForwardInverse, b = _body.PelvisSidewaysInverse, c = _body.PelvisUpInverse;
        double x = p.X * a, y = p.Y * b, z = p.Z * c;
        double square = (x * x) + (y * y) + (z * z);
        double sharpest = Math.Max(a, Math.Max(b, c));
        if (IsClear(square, radius * sharpest))
        {
            return 0;
        }

        (x, y, z) = (x * a, y * b, z * c);
        double r = Math.Sqrt(square);
        double gap = r < 1e-9 ? -1 / sharpest : r * (r - 1) / Math.Sqrt((x * x) + (y * y) + (z * z));
        return Over(radius - gap);
    }

    /// <summary>True when a ball is certainly off a solid, so that nothing more need be computed: the first-order gap is never less than
    /// the distance in half-axes times the shortest of these.</summary>
    /// <param name="square">Square of the distance from the centre, in half-axes.</param>
    /// <param name="radius">Of the ball, as a share of the shortest half-axis.</param>
    private static bool IsClear(double square, double radius) => square >= (1 + radius) * (1 + radius);

    /// <summary>How deep a ball presses into the trunk, m; fades out below the waist, where the pelvis takes over.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double TrunkDepth(Vector3D p, double radius)
    {
        double a = _body.TrunkForwardInverse, b = _body.TrunkSidewaysInverse;
        double x = (p.X - _body.TrunkCentre) * a, y = p.Y * b;
        double square = (x * x) + (y * y);
        double sharpest = Math.Max(a, b);
        if (p.Z <= 0 || p.Z >= _body.ShoulderUp || IsClear(square, radius * sharpest))
        {
            return 0;
        }

        (x, y) = (x * a, y * b);
        double r = Math.Sqrt(square);
        double gap = r < 1e-9 ? -1 / sharpest : r * (r - 1) / Math.Sqrt((x * x) + (y * y));
        double depth = Over(radius - gap);
        return depth == 0 ? 0 : depth * Step(2 * p.Z * _body.PelvisUpInverse) * Step(2 * (_body.ShoulderUp - p.Z) * _body.PelvisUpInverse);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double ThighDepth(Vector3D p, double radius, double side)
    {
        Vector3D away = FromThigh(p, side);
        double near = radius + _body.ThighRadius, square = Vector3D.Dot(away, away);
        return square >= near * near ? 0 : near - Math.Sqrt(square);
    }

    /// <summary>From the nearest point of the middle line of a thigh.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector3D FromThigh(Vector3D p, double side)
    {
        var from = new Vector3D(p.X, p.Y - (side * _body.ThighOut), p.Z);
        var along = new Vector3D(_scene.Thigh.X, side * _scene.Thigh.Y, _scene.Thigh.Z);
        double t = Math.Min(Math.Max(Vector3D.Dot(from, along), _body.ThighRadius), _body.ThighLength);
        return from - (t * along);
    }

    /// <summary>How deep a ball is in the seat; in the opening it may go down a little.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double SeatDepth(Vector3D p, double radius, double rise)
    {
        if (p.Z >= _scene.SeatUp + radius)
        {
            return 0;
        }

        double open = Opening(p, radius);
        double floor = _scene.SeatUp - rise + (radius * (1 - open)) - (_body.OpeningDepth * open);
        return Over(floor - p.Z);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Opening(Vector3D p, double radius) =>
        Step((_body.OpeningHalfWidth - Math.Abs(p.Y)) / radius)
        * Step((p.X + _body.OpeningBack) / radius)
        * Step((_body.OpeningFront - p.X) / radius);

    private double ThinDepth(Vector3D p, double radius, double rise)
    {
        if (p.Z >= _scene.SeatUp + radius)
        {
            return 0;
        }

        double floor = _scene.SeatUp - rise + radius - ((radius + (2 * _body.OpeningDepth)) * Opening(p, radius));
        return Over(floor - p.Z);
    }

    private double MattressDepth(Vector3D p, double radius) =>
        _scene.Mattress == Mattress.Beside ? Over(radius - _body.PelvisSideways - p.Y) : Over(radius - _body.PelvisForward - p.X);

    /// <summary>Distance by which the grip lies outside the sector of the approach, seen from the target.</summary>
    private double Wedge(Vector3D grip)
    {
        double x = grip.X - _scene.Target.X, y = grip.Y - _scene.Target.Y;
        double forth = (x * _scene.WedgeX) + (y * _scene.WedgeY);
        double aside = Math.Abs((x * _scene.WedgeY) - (y * _scene.WedgeX));
        return Over((aside * _scene.WedgeCosine) - (forth * _scene.WedgeSine));
    }

    /// <summary>How far the handle must bend where forearm and wrist do not point it.</summary>
    private void HandleBend(Vector3D grip, Vector3D elbow, Vector3D thumb, Vector3D touch, ref ReachTrial trial)
    {
        Vector3D d = touch - grip;
        double size = d.Length;
        if (size < 1e-9)
        {
            return;
        }

        Vector3D fore = (1 / _body.Forearm) * (grip - elbow);
        double forth = Vector3D.Dot(d, fore) / size;
        double ahead = Vector3D.Dot(d, thumb) / size;
        double inward = Vector3D.Dot(d, Vector3D.Cross(fore, thumb)) / size;
        trial.Tilt = forth >= -_tiltSine ? 0 : Over(Math.Acos(Math.Max(forth, -1)) - (Math.PI / 2) - _scene.Deviation);

        // The handle sticks out of either end of the fist, so a direction and its opposite are the same.
        (double y, double x) = ahead < 0 ? (-inward, -ahead) : (inward, ahead);
        if (y > _pronationSlope * x || -y > _supinationSlope * x)
        {
            double turn = Math.Atan2(y, x);
            double aside = Over(turn - _scene.Pronation) + Over(-turn - _scene.Supination);
            trial.Turn = aside * Math.Sqrt((ahead * ahead) + (inward * inward));
        }
    }
}
