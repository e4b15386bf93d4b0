using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>Sines and cosines of a pose, and of the pelvis's share of lean and bend.</summary>
[StructLayout(LayoutKind.Auto)]
internal struct JointAngles
{
    public double LeanSine;
    public double LeanCosine;
    public double BendSine;
    public double BendCosine;
    public double TwistSine;
    public double TwistCosine;
    public double FlexionSine;
    public double FlexionCosine;
    public double AbductionSine;
    public double AbductionCosine;
    public double RotationSine;
    public double RotationCosine;
    public double ElbowSine;
    public double ElbowCosine;
    public double PelvisLeanSine;
    public double PelvisLeanCosine;
    public double PelvisBendSine;
    public double PelvisBendCosine;

    public static JointAngles Of(in JointVector q, double pelvisLean, double pelvisBend)
    {
        JointAngles a = default;
        (a.LeanSine, a.LeanCosine) = Math.SinCos(q[JointVector.Lean]);
        (a.BendSine, a.BendCosine) = Math.SinCos(q[JointVector.Bend]);
        (a.TwistSine, a.TwistCosine) = Math.SinCos(q[JointVector.Twist]);
        (a.FlexionSine, a.FlexionCosine) = Math.SinCos(q[JointVector.Flexion]);
        (a.AbductionSine, a.AbductionCosine) = Math.SinCos(q[JointVector.Abduction]);
        (a.RotationSine, a.RotationCosine) = Math.SinCos(q[JointVector.Rotation]);
        (a.ElbowSine, a.ElbowCosine) = Math.SinCos(q[JointVector.Elbow]);
        (a.PelvisLeanSine, a.PelvisLeanCosine) = Math.SinCos(pelvisLean * q[JointVector.Lean]);
        (a.PelvisBendSine, a.PelvisBendCosine) = Math.SinCos(pelvisBend * q[JointVector.Bend]);
        return a;
    }

    /// <summary>The pose with one joint turned by a step so small that its square does not count.</summary>
    public readonly JointAngles Nudged(int joint, double step, double pelvisLean, double pelvisBend)
    {
        JointAngles a = this;
        switch (joint)
        {
            case JointVector.Lean:
                Turn(ref a.LeanSine, ref a.LeanCosine, step);
                Turn(ref a.PelvisLeanSine, ref a.PelvisLeanCosine, step * pelvisLean);
                break;
            case JointVector.Bend:
                Turn(ref a.BendSine, ref a.BendCosine, step);
                Turn(ref a.PelvisBendSine, ref a.PelvisBendCosine, step * pelvisBend);
                break;
            case JointVector.Twist:
                Turn(ref a.TwistSine, ref a.TwistCosine, step);
                break;
            case JointVector.Flexion:
                Turn(ref a.FlexionSine, ref a.FlexionCosine, step);
                break;
            case JointVector.Abduction:
                Turn(ref a.AbductionSine, ref a.AbductionCosine, step);
                break;
            case JointVector.Rotation:
                Turn(ref a.RotationSine, ref a.RotationCosine, step);
                break;
            default:
                Turn(ref a.ElbowSine, ref a.ElbowCosine, step);
                break;
        }

        return a;
    }

    private static void Turn(ref double sine, ref double cosine, double step) =>
        (sine, cosine) = (sine + (step * cosine), cosine - (step * sine));
}
