using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>What surrounds the body in one posture and where the hand is going.</summary>
[StructLayout(LayoutKind.Auto)]
internal struct Scene
{
    /// <summary>Share of the forward lean that the pelvis takes.</summary>
    public double PelvisLean;

    /// <summary>Share of the side bend that the pelvis takes.</summary>
    public double PelvisBend;

    /// <summary>One over the trunk's own range of lean, bend and twist, 1/rad; 0 where there is none to use. Together they make one envelope.</summary>
    public Vector3D TrunkInverse;

    /// <summary>True when there is a seat under the body.</summary>
    public bool HasSeat;

    /// <summary>Height of the seat plane, m; below 0.</summary>
    public double SeatUp;

    /// <summary>Side on which the mattress lies.</summary>
    public Mattress Mattress;

    /// <summary>Direction of the working-side thigh; the other mirrors it.</summary>
    public Vector3D Thigh;

    /// <summary>Target in the frame of the pelvis, m; on its skin where nothing else is said.</summary>
    public Vector3D Target;

    /// <summary>True for a landmark that does not lie on the ellipsoid of the pelvis (waist, groin): the way to it is the straight line.</summary>
    public bool TargetOffSkin;

    /// <summary>Direction from which the approach comes, horizontal: (-1,0) behind, (1,0) front, (0,1) side.</summary>
    public double WedgeX;

    /// <inheritdoc cref="WedgeX"/>
    public double WedgeY;

    /// <summary>Sine of the half-angle of the approach.</summary>
    public double WedgeSine;

    /// <summary>Cosine of the half-angle of the approach.</summary>
    public double WedgeCosine;

    /// <summary>Pronation, supination and ulnar deviation, rad; see <see cref="JointMotion"/> for the other motions of the wrist.</summary>
    public double Pronation;

    /// <inheritdoc cref="Pronation"/>
    public double Supination;

    /// <inheritdoc cref="Pronation"/>
    public double Deviation;

    /// <summary>True for an aid that cannot bend around the body.</summary>
    public bool Straight;
}
