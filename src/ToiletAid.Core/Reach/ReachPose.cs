using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>A posture of trunk and arm; all angles in rad.</summary>
/// <param name="Lean">Trunk leaning forward.</param>
/// <param name="Bend">Trunk bent sideways; positive toward the working hand.</param>
/// <param name="Twist">Trunk twisted; positive brings the working shoulder backward.</param>
/// <param name="ShoulderFlexion">Upper arm forward; negative is extension.</param>
/// <param name="ShoulderAbduction">Upper arm sideways; negative is adduction.</param>
/// <param name="ShoulderInternalRotation">Forearm turned inward; negative is external rotation.</param>
/// <param name="ElbowFlexion">Elbow; 0 is straight.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct ReachPose(
    double Lean,
    double Bend,
    double Twist,
    double ShoulderFlexion,
    double ShoulderAbduction,
    double ShoulderInternalRotation,
    double ElbowFlexion);
