using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>Forward kinematics of trunk and arm.</summary>
/// <remarks>Trunk: lean about y, then bend about x, then twist about its own axis, all about the middle between the hips. Upper arm:
/// flexion about y, then abduction about x, then rotation about its own axis. The pelvis takes a share of lean and bend.</remarks>
[StructLayout(LayoutKind.Auto)]
internal struct Arm
{
    /// <summary>Elbow and grip centre in the trunk's frame.</summary>
    public Vector3D ElbowInTrunk;

    /// <inheritdoc cref="ElbowInTrunk"/>
    public Vector3D GripInTrunk;

    /// <summary>Elbow and grip centre in the frame of seat and thighs.</summary>
    public Vector3D Elbow;

    /// <inheritdoc cref="Elbow"/>
    public Vector3D Grip;

    /// <summary>Direction in which the thumb points when the forearm is neither pronated nor supinated; frame of seat and thighs.</summary>
    public Vector3D Thumb;

    private double _pelvisLeanSine;
    private double _pelvisLeanCosine;
    private double _pelvisBendSine;
    private double _pelvisBendCosine;

    /// <summary>Rise of the hip centre over the seat when the pelvis rolls onto one sitting bone, as a share of half the distance of the bones.</summary>
    public readonly double Rise => Math.Abs(_pelvisBendSine);

    /// <summary>Slope of <see cref="Rise"/> with the pelvis's bend, 1/rad.</summary>
    public readonly double RiseSlope => _pelvisBendSine < 0 ? -_pelvisBendCosine : _pelvisBendCosine;

    /// <summary>Places trunk and arm.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Arm At(in Body body, in JointAngles q)
    {
        double sf = q.FlexionSine, cf = q.FlexionCosine, sa = q.AbductionSine, ca = q.AbductionCosine;
        double sr = q.RotationSine, cr = q.RotationCosine, se = q.ElbowSine, ce = q.ElbowCosine;
        var shoulder = new Vector3D(0, body.ShoulderOut, body.ShoulderUp);
        Vector3D upper = FromUpperArm(0, 0, -1, sf, cf, sa, ca);
        Vector3D fore = FromUpperArm(se * cr, -se * sr, -ce, sf, cf, sa, ca);
        Vector3D thumb = FromUpperArm(ce * cr, -ce * sr, se, sf, cf, sa, ca);

        Arm arm = default;
        arm.ElbowInTrunk = shoulder + (body.UpperArm * upper);
        arm.GripInTrunk = arm.ElbowInTrunk + (body.Forearm * fore);
        arm.Elbow = FromTrunk(arm.ElbowInTrunk, in q);
        arm.Grip = FromTrunk(arm.GripInTrunk, in q);
        arm.Thumb = FromTrunk(thumb, in q);
        (arm._pelvisLeanSine, arm._pelvisLeanCosine) = (q.PelvisLeanSine, q.PelvisLeanCosine);
        (arm._pelvisBendSine, arm._pelvisBendCosine) = (q.PelvisBendSine, q.PelvisBendCosine);
        return arm;
    }

    /// <summary>A point of the seat's frame as the pelvis sees it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Vector3D ToPelvis(Vector3D p)
    {
        double x = (p.X * _pelvisLeanCosine) - (p.Z * _pelvisLeanSine);
        double z = (p.X * _pelvisLeanSine) + (p.Z * _pelvisLeanCosine);
        return new Vector3D(x, (p.Y * _pelvisBendCosine) - (z * _pelvisBendSine), (p.Y * _pelvisBendSine) + (z * _pelvisBendCosine));
    }

    /// <summary>Directions of the seat's frame as the pelvis sees them.</summary>
    public readonly void ToPelvis(ref ReachSlopes.Points p)
    {
        Eight x = p.X.All, y = p.Y.All;
        Eight z = (x * _pelvisLeanSine) + (p.Z.All * _pelvisLeanCosine);
        p.X.All = (x * _pelvisLeanCosine) - (p.Z.All * _pelvisLeanSine);
        p.Y.All = (y * _pelvisBendCosine) - (z * _pelvisBendSine);
        p.Z.All = (y * _pelvisBendSine) + (z * _pelvisBendCosine);
    }

    /// <summary>A point of the pelvis as the seat sees it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Vector3D FromPelvis(Vector3D p)
    {
        double y = (p.Y * _pelvisBendCosine) + (p.Z * _pelvisBendSine);
        double z = (-p.Y * _pelvisBendSine) + (p.Z * _pelvisBendCosine);
        return new Vector3D((p.X * _pelvisLeanCosine) + (z * _pelvisLeanSine), y, (-p.X * _pelvisLeanSine) + (z * _pelvisLeanCosine));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector3D FromUpperArm(double x, double y, double z, double sf, double cf, double sa, double ca)
    {
        double y1 = (y * ca) - (z * sa), z1 = (y * sa) + (z * ca);
        return new Vector3D((x * cf) - (z1 * sf), y1, (x * sf) + (z1 * cf));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector3D FromTrunk(Vector3D p, in JointAngles q)
    {
        double sl = q.LeanSine, cl = q.LeanCosine, sb = q.BendSine, cb = q.BendCosine, st = q.TwistSine, ct = q.TwistCosine;
        double x = (p.X * ct) - (p.Y * st), y = (p.X * st) + (p.Y * ct);
        double y1 = (y * cb) + (p.Z * sb), z1 = (-y * sb) + (p.Z * cb);
        return new Vector3D((x * cl) + (z1 * sl), y1, (-x * sl) + (z1 * cl));
    }
}
