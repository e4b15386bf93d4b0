using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>How elbow and grip centre move with each joint: the joint's axis crossed with the lever to its centre.</summary>
[StructLayout(LayoutKind.Auto)]
internal struct ArmSlopes
{
    /// <summary>In the trunk's frame; trunk joints move nothing there.</summary>
    public ReachSlopes.Points ElbowInTrunk;

    /// <inheritdoc cref="ElbowInTrunk"/>
    public ReachSlopes.Points GripInTrunk;

    /// <summary>In the frame of seat and thighs.</summary>
    public ReachSlopes.Points Elbow;

    /// <inheritdoc cref="Elbow"/>
    public ReachSlopes.Points Grip;

    /// <summary>Turning of the pelvis with lean and bend, in the frame of seat and thighs.</summary>
    public Vector3D PelvisLean;

    /// <inheritdoc cref="PelvisLean"/>
    public Vector3D PelvisBend;

    /// <summary>Finds the slopes at a pose.</summary>
    public static ArmSlopes At(in Body body, in JointAngles q, in Arm arm, double pelvisLean, double pelvisBend)
    {
        ArmSlopes s = default;
        var shoulder = new Vector3D(0, body.ShoulderOut, body.ShoulderUp);
        Vector3D toElbow = arm.ElbowInTrunk - shoulder, toGrip = arm.GripInTrunk - shoulder, fore = arm.GripInTrunk - arm.ElbowInTrunk;
        Vector3D flexion = Flexion, abduction = Abduction(in q), rotation = Rotation(in q), elbow = ElbowAxis(in q);

        s.ElbowInTrunk[JointVector.Flexion] = Vector3D.Cross(flexion, toElbow);
        s.ElbowInTrunk[JointVector.Abduction] = Vector3D.Cross(abduction, toElbow);
        s.GripInTrunk[JointVector.Flexion] = Vector3D.Cross(flexion, toGrip);
        s.GripInTrunk[JointVector.Abduction] = Vector3D.Cross(abduction, toGrip);
        s.GripInTrunk[JointVector.Rotation] = Vector3D.Cross(rotation, fore);
        s.GripInTrunk[JointVector.Elbow] = Vector3D.Cross(elbow, fore);
        s.Elbow = FromTrunk(in s.ElbowInTrunk, in q);
        s.Grip = FromTrunk(in s.GripInTrunk, in q);

        Vector3D lean = Lean, bend = Bend(in q), twist = Twist(in q);
        s.Elbow[JointVector.Lean] = Vector3D.Cross(lean, arm.Elbow);
        s.Elbow[JointVector.Bend] = Vector3D.Cross(bend, arm.Elbow);
        s.Elbow[JointVector.Twist] = Vector3D.Cross(twist, arm.Elbow);
        s.Grip[JointVector.Lean] = Vector3D.Cross(lean, arm.Grip);
        s.Grip[JointVector.Bend] = Vector3D.Cross(bend, arm.Grip);
        s.Grip[JointVector.Twist] = Vector3D.Cross(twist, arm.Grip);
        s.PelvisLean = pelvisLean * lean;
        s.PelvisBend = pelvisBend * new Vector3D(-q.PelvisLeanCosine, 0, q.PelvisLeanSine);
        return s;
    }

    /// <summary>How the direction of the thumb turns with each joint, in the frame of seat and thighs.</summary>
    public static ReachSlopes.Points ThumbAt(in JointAngles q, in Arm arm)
    {
        ReachSlopes.Points turned = default;
        turned[JointVector.Lean] = Vector3D.Cross(Lean, arm.Thumb);
        turned[JointVector.Bend] = Vector3D.Cross(Bend(in q), arm.Thumb);
        turned[JointVector.Twist] = Vector3D.Cross(Twist(in q), arm.Thumb);
        turned[JointVector.Flexion] = Vector3D.Cross(Arm.FromTrunk(Flexion, in q), arm.Thumb);
        turned[JointVector.Abduction] = Vector3D.Cross(Arm.FromTrunk(Abduction(in q), in q), arm.Thumb);
        turned[JointVector.Rotation] = Vector3D.Cross(Arm.FromTrunk(Rotation(in q), in q), arm.Thumb);
        turned[JointVector.Elbow] = Vector3D.Cross(Arm.FromTrunk(ElbowAxis(in q), in q), arm.Thumb);
        return turned;
    }

    // Axes of the arm's joints, in the trunk's frame.
    private static Vector3D Flexion => new(0, -1, 0);

    private static Vector3D Abduction(in JointAngles q) => new(q.FlexionCosine, 0, q.FlexionSine);

    private static Vector3D Rotation(in JointAngles q) =>
        Arm.FromUpperArm(0, 0, -1, q.FlexionSine, q.FlexionCosine, q.AbductionSine, q.AbductionCosine);

    private static Vector3D ElbowAxis(in JointAngles q) =>
        Arm.FromUpperArm(-q.RotationSine, -q.RotationCosine, 0, q.FlexionSine, q.FlexionCosine, q.AbductionSine, q.AbductionCosine);

    // Axes of the trunk's joints, in the frame of seat and thighs.
    private static Vector3D Lean => new(0, 1, 0);

    private static Vector3D Bend(in JointAngles q) => new(-q.LeanCosine, 0, q.LeanSine);

    private static Vector3D Twist(in JointAngles q) => Arm.FromTrunk(new Vector3D(0, 0, 1), in q);

    /// <summary>Slopes of a point as the pelvis sees it, from its slopes in the frame of seat and thighs.</summary>
    public readonly ReachSlopes.Points ToPelvis(in Arm arm, in ReachSlopes.Points slopes, Vector3D point)
    {
        ReachSlopes.Points seen = slopes;
        seen[JointVector.Lean] -= Vector3D.Cross(PelvisLean, point);
        seen[JointVector.Bend] -= Vector3D.Cross(PelvisBend, point);
        arm.ToPelvis(ref seen);
        return seen;
    }

    /// <summary>Slopes of the middle between two points.</summary>
    public static ReachSlopes.Points Middle(in ReachSlopes.Points a, in ReachSlopes.Points b)
    {
        ReachSlopes.Points middle = default;
        middle.X.All = 0.5 * (a.X.All + b.X.All);
        middle.Y.All = 0.5 * (a.Y.All + b.Y.All);
        middle.Z.All = 0.5 * (a.Z.All + b.Z.All);
        return middle;
    }

    /// <summary>Directions turned from the trunk's frame into that of seat and thighs; <see cref="Arm.FromTrunk"/> does it for one.</summary>
    private static ReachSlopes.Points FromTrunk(in ReachSlopes.Points p, in JointAngles q)
    {
        Eight x = (p.X.All * q.TwistCosine) - (p.Y.All * q.TwistSine), y = (p.X.All * q.TwistSine) + (p.Y.All * q.TwistCosine);
        Eight z = (p.Z.All * q.BendCosine) - (y * q.BendSine);
        ReachSlopes.Points turned = default;
        turned.X.All = (x * q.LeanCosine) + (z * q.LeanSine);
        turned.Y.All = (y * q.BendCosine) + (p.Z.All * q.BendSine);
        turned.Z.All = (z * q.LeanCosine) - (x * q.LeanSine);
        return turned;
    }
}
