using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>Sines and cosines of a pose, and of the pelvis's share of lean and bend.</summary>
[StructLayout(LayoutKind.Auto)]
internal struct JointAngles
{
    private JointVector _sines;
    private JointVector _cosines;

    /// <summary>Lean, bend and twist themselves, rad.</summary>
    public Vector3D Trunk;
    public double PelvisBendSine;
    public double PelvisBendCosine;

    public readonly double LeanSine => _sines[JointVector.Lean];

    public readonly double LeanCosine => _cosines[JointVector.Lean];

    public readonly double BendSine => _sines[JointVector.Bend];

    public readonly double BendCosine => _cosines[JointVector.Bend];

    public readonly double TwistSine => _sines[JointVector.Twist];

    public readonly double TwistCosine => _cosines[JointVector.Twist];

    public readonly double FlexionSine => _sines[JointVector.Flexion];

    public readonly double FlexionCosine => _cosines[JointVector.Flexion];

    public readonly double AbductionSine => _sines[JointVector.Abduction];

    public readonly double AbductionCosine => _cosines[JointVector.Abduction];

    public readonly double RotationSine => _sines[JointVector.Rotation];

    public readonly double RotationCosine => _cosines[JointVector.Rotation];

    public readonly double ElbowSine => _sines[JointVector.Elbow];

    public readonly double ElbowCosine => _cosines[JointVector.Elbow];

    // The place without a joint carries the pelvis's lean.
    public readonly double PelvisLeanSine => _sines[JointVector.Count];

    public readonly double PelvisLeanCosine => _cosines[JointVector.Count];

    public static JointAngles Of(in JointVector q, double pelvisLean, double pelvisBend)
    {
        JointVector turns = q;
        turns[JointVector.Count] = pelvisLean * q[JointVector.Lean];
        JointAngles a = default;
        a.Trunk = new Vector3D(q[JointVector.Lean], q[JointVector.Bend], q[JointVector.Twist]);
        Sines.Of(turns.All, out Eight sines, out Eight cosines);
        (a._sines.All, a._cosines.All) = (sines, cosines);
        (a.PelvisBendSine, a.PelvisBendCosine) = pelvisBend == 0 ? (0, 1) : Math.SinCos(pelvisBend * q[JointVector.Bend]);
        return a;
    }
}
