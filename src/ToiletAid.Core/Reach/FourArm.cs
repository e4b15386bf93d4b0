using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Four = System.Runtime.Intrinsics.Vector128<float>;

namespace ToiletAid.Core.Reach;

/// <summary>Trunk and arm of four persons: what <see cref="Arm"/> and <see cref="ArmSlopes"/> are for one.</summary>
[StructLayout(LayoutKind.Sequential)]
internal struct FourArm
{
    public FourPoints ElbowInTrunk;
    public FourPoints GripInTrunk;

    // In the frame of seat and thighs.
    public FourPoints Shoulder;
    public FourPoints Elbow;
    public FourPoints Grip;
    public FourPoints Thumb;

    /// <summary>How far the hip centre rises over the seat, and how that changes with the bend.</summary>
    public Four Rise;

    /// <inheritdoc cref="Rise"/>
    public Four RisePerBend;

    private JointsOf<Four> _sines;
    private JointsOf<Four> _cosines;
    private Four _pelvisLeanSine;
    private Four _pelvisLeanCosine;
    private Four _pelvisBendSine;
    private Four _pelvisBendCosine;
    private Four _pelvisLean;
    private Four _pelvisBend;

    /// <summary>Places trunk and arm.</summary>
    /// <param name="n">The persons.</param>
    /// <param name="q">The poses.</param>
    /// <param name="pelvisLean">Share of the lean that the pelvis takes.</param>
    /// <param name="pelvisBend">Share of the side bend that it takes.</param>
    public void Place(in DescentNumbers<Four> n, in JointsOf<Four> q, float pelvisLean, float pelvisBend)
    {
        for (int i = 0; i < JointVector.Count; i++)
        {
            FourMath.Sines(q[i], out _sines[i], out _cosines[i]);
        }

        (_pelvisLean, _pelvisBend) = (FourMath.Of(pelvisLean), FourMath.Of(pelvisBend));
        FourMath.Sines(_pelvisLean * q[JointVector.Lean], out _pelvisLeanSine, out _pelvisLeanCosine);
        (_pelvisBendSine, _pelvisBendCosine) = (Four.Zero, FourMath.One);
        if (pelvisBend != 0)
        {
            FourMath.Sines(_pelvisBend * q[JointVector.Bend], out _pelvisBendSine, out _pelvisBendCosine);
        }

        Rise = Vector128.Abs(_pelvisBendSine) * n.ThighOut;
        Four sign = _pelvisBendSine & FourMath.Of(-0f);
        RisePerBend = (_pelvisBendCosine ^ sign) * _pelvisBend * n.ThighOut;

        Four sr = _sines[JointVector.Rotation], cr = _cosines[JointVector.Rotation];
        Four se = _sines[JointVector.Elbow], ce = _cosines[JointVector.Elbow];
        var shoulder = new FourPoints(Four.Zero, n.ShoulderOut, n.ShoulderUp);
        ElbowInTrunk = shoulder + (n.UpperArm * FromUpperArm(Four.Zero, Four.Zero, -FourMath.One));
        GripInTrunk = ElbowInTrunk + (n.Forearm * FromUpperArm(se * cr, -(se * sr), -ce));
        Shoulder = FromTrunk(in shoulder);
        Elbow = FromTrunk(in ElbowInTrunk);
        Grip = FromTrunk(in GripInTrunk);
        Thumb = FromTrunk(FromUpperArm(ce * cr, -(ce * sr), se));
    }

    /// <summary>Axis of each joint in the frame of seat and thighs.</summary>
    public readonly void Axes(out JointsOf<FourPoints> axes)
    {
        Unsafe.SkipInit(out axes);
        axes[JointVector.Lean] = new(Four.Zero, FourMath.One, Four.Zero);
        axes[JointVector.Bend] = new(-_cosines[JointVector.Lean], Four.Zero, _sines[JointVector.Lean]);
        axes[JointVector.Twist] = FromTrunk(new FourPoints(Four.Zero, Four.Zero, FourMath.One));
        axes[JointVector.Flexion] = FromTrunk(new FourPoints(Four.Zero, -FourMath.One, Four.Zero));
        axes[JointVector.Abduction] = FromTrunk(new FourPoints(_cosines[JointVector.Flexion], Four.Zero, _sines[JointVector.Flexion]));
        axes[JointVector.Rotation] = FromTrunk(FromUpperArm(Four.Zero, Four.Zero, -FourMath.One));
        axes[JointVector.Elbow] = FromTrunk(FromUpperArm(-_sines[JointVector.Rotation], -_cosines[JointVector.Rotation], Four.Zero));
    }

    /// <summary>Turning of the pelvis with lean, in the frame of seat and thighs.</summary>
    public readonly FourPoints PelvisLean => new(Four.Zero, _pelvisLean, Four.Zero);

    /// <summary>Turning of the pelvis with bend, in the frame of seat and thighs.</summary>
    public readonly FourPoints PelvisBend => new(-(_pelvisBend * _pelvisLeanCosine), Four.Zero, _pelvisBend * _pelvisLeanSine);

    /// <summary>A point or direction of the seat's frame as the pelvis sees it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly FourPoints ToPelvis(in FourPoints p)
    {
        Four x = (p.X * _pelvisLeanCosine) - (p.Z * _pelvisLeanSine);
        Four z = (p.X * _pelvisLeanSine) + (p.Z * _pelvisLeanCosine);
        return new(x, (p.Y * _pelvisBendCosine) - (z * _pelvisBendSine), (p.Y * _pelvisBendSine) + (z * _pelvisBendCosine));
    }

    /// <summary>A point or direction of the pelvis as the seat sees it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly FourPoints FromPelvis(in FourPoints p)
    {
        Four y = (p.Y * _pelvisBendCosine) + (p.Z * _pelvisBendSine);
        Four z = (p.Z * _pelvisBendCosine) - (p.Y * _pelvisBendSine);
        return new((p.X * _pelvisLeanCosine) + (z * _pelvisLeanSine), y, (z * _pelvisLeanCosine) - (p.X * _pelvisLeanSine));
    }

    /// <summary>A point or direction of the trunk as the seat sees it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly FourPoints FromTrunk(in FourPoints p)
    {
        Four sl = _sines[JointVector.Lean], cl = _cosines[JointVector.Lean], sb = _sines[JointVector.Bend], cb = _cosines[JointVector.Bend];
        Four st = _sines[JointVector.Twist], ct = _cosines[JointVector.Twist];
        Four x = (p.X * ct) - (p.Y * st), y = (p.X * st) + (p.Y * ct);
        Four y1 = (y * cb) + (p.Z * sb), z1 = (p.Z * cb) - (y * sb);
        return new((x * cl) + (z1 * sl), y1, (z1 * cl) - (x * sl));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly FourPoints FromUpperArm(Four x, Four y, Four z)
    {
        Four sf = _sines[JointVector.Flexion], cf = _cosines[JointVector.Flexion];
        Four sa = _sines[JointVector.Abduction], ca = _cosines[JointVector.Abduction];
        Four y1 = (y * ca) - (z * sa), z1 = (y * sa) + (z * ca);
        return new((x * cf) - (z1 * sf), y1, (x * sf) + (z1 * cf));
    }
}
