using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>One body and the things it sits on, as the solver uses them; m unless said otherwise.</summary>
/// <remarks>Every length that can enter a result is here, so that scaling this scales the result exactly.</remarks>
[StructLayout(LayoutKind.Auto)]
internal struct Body
{
    public double Stature;

    /// <summary>kg.</summary>
    public double Mass;

    /// <summary>Shoulder joint above the hips and out from the midline.</summary>
    public double ShoulderUp;

    /// <inheritdoc cref="ShoulderUp"/>
    public double ShoulderOut;

    /// <summary>From joint to joint, and from elbow joint to grip centre.</summary>
    public double UpperArm;

    /// <inheritdoc cref="UpperArm"/>
    public double Forearm;

    /// <summary>How far the fingertips reach past the grip centre, and the middle of the wiping face when they hold paper.</summary>
    public double HandBeyond;

    /// <inheritdoc cref="HandBeyond"/>
    public double FaceBeyond;
    public double HandRadius;

    /// <summary>Half the thickness of an aid between body and seat.</summary>
    public double AidRadius;

    public double ForearmRadius;

    /// <summary>Half-axes of the ellipsoid of pelvis and buttocks, whose middle lies between the hips.</summary>
    public double PelvisForward;

    /// <inheritdoc cref="PelvisForward"/>
    public double PelvisSideways;

    /// <inheritdoc cref="PelvisForward"/>
    public double PelvisUp;

    /// <summary>Axis of the elliptic cylinder of the trunk before the hips, and its half-axes.</summary>
    public double TrunkCentre;

    /// <inheritdoc cref="TrunkCentre"/>
    public double TrunkForward;

    /// <inheritdoc cref="TrunkCentre"/>
    public double TrunkSideways;

    /// <summary>Waist above the hips.</summary>
    public double WaistUp;
    public double ThighRadius;
    public double ThighLength;

    /// <summary>Hip joint from the midline.</summary>
    public double ThighOut;

    /// <summary>Seat above the hips; below 0.</summary>
    public double SeatUp;
    public double OpeningHalfWidth;

    /// <summary>Ends of the seat's opening behind and before the hips.</summary>
    public double OpeningBack;

    /// <inheritdoc cref="OpeningBack"/>
    public double OpeningFront;

    /// <summary>How far the middle of the hand goes down in the opening.</summary>
    public double OpeningDepth;

    /// <summary>Rise of the hips over the seat when the buttocks are partly off it.</summary>
    public double SeatRise;

    /// <summary>Cost of each rad² by which a handle must bend.</summary>
    public double HandleBend;

    /// <summary>How far a straight handle may press into the flesh.</summary>
    public double TissueGive;

    /// <summary>How far an arm presses the front of the belly and the inside of each thigh in; what is left of them stands in the way.</summary>
    public double AbdomenGive;

    /// <inheritdoc cref="AbdomenGive"/>
    public double ThighGive;

    /// <summary>Where the way is longer there is none.</summary>
    public double LongestWay;

    /// <summary>Depth of pressing beyond which flesh resists ever more.</summary>
    public double FleshDepth;

    /// <summary>Cost of pressing into a solid, 1/m: half of this times the depth squared.</summary>
    public double Stiffness;

    /// <summary>One over each half-axis of pelvis and trunk, 1/m; kept because dividing is slow.</summary>
    public double PelvisForwardInverse;

    /// <inheritdoc cref="PelvisForwardInverse"/>
    public double PelvisSidewaysInverse;

    /// <inheritdoc cref="PelvisForwardInverse"/>
    public double PelvisUpInverse;

    /// <inheritdoc cref="PelvisForwardInverse"/>
    public double TrunkForwardInverse;

    /// <inheritdoc cref="PelvisForwardInverse"/>
    public double TrunkSidewaysInverse;

    /// <summary>Sets the inverses; to be called after any change of the half-axes.</summary>
    public void Invert()
    {
        PelvisForwardInverse = 1 / PelvisForward;
        PelvisSidewaysInverse = 1 / PelvisSideways;
        PelvisUpInverse = 1 / PelvisUp;
        TrunkForwardInverse = 1 / TrunkForward;
        TrunkSidewaysInverse = 1 / TrunkSideways;
    }

    /// <summary>The same body and seat, <paramref name="k"/> times as large. The laws of scale are tested with it.</summary>
    public readonly Body Scaled(double k)
    {
        Body s = this;
        s.Stature *= k;
        s.ShoulderUp *= k;
        s.ShoulderOut *= k;
        s.UpperArm *= k;
        s.Forearm *= k;
        s.HandBeyond *= k;
        s.FaceBeyond *= k;
        s.HandRadius *= k;
        s.AidRadius *= k;
        s.ForearmRadius *= k;
        s.PelvisForward *= k;
        s.PelvisSideways *= k;
        s.PelvisUp *= k;
        s.TrunkCentre *= k;
        s.TrunkForward *= k;
        s.TrunkSideways *= k;
        s.WaistUp *= k;
        s.ThighRadius *= k;
        s.ThighLength *= k;
        s.ThighOut *= k;
        s.SeatUp *= k;
        s.OpeningHalfWidth *= k;
        s.OpeningBack *= k;
        s.OpeningFront *= k;
        s.OpeningDepth *= k;
        s.SeatRise *= k;
        s.HandleBend *= k;
        s.TissueGive *= k;
        s.AbdomenGive *= k;
        s.ThighGive *= k;
        s.LongestWay *= k;
        s.FleshDepth *= k;
        s.Stiffness /= k;
        s.Invert();
        return s;
    }
}
