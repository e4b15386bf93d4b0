using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>One body and the things it sits on, as the solver uses them; m unless said otherwise, angles rad.</summary>
/// <remarks>Every length that can enter a result is here, so that scaling this scales the result exactly.</remarks>
[StructLayout(LayoutKind.Auto)]
internal struct Body
{
    public double Stature;
    public double Mass;
    public double ShoulderUp;
    public double ShoulderOut;
    public double UpperArm;
    public double Forearm;
    public double HandBeyond;
    public double HandRadius;

    /// <summary>Half the thickness of an aid between body and seat, m.</summary>
    public double AidRadius;

    public double ForearmRadius;
    public double PelvisForward;
    public double PelvisSideways;
    public double PelvisUp;
    public double TrunkCentre;
    public double TrunkForward;
    public double TrunkSideways;
    public double WaistUp;
    public double ThighRadius;
    public double ThighLength;
    public double ThighOut;
    public double SeatUp;
    public double OpeningHalfWidth;
    public double OpeningBack;
    public double OpeningFront;
    public double OpeningDepth;
    public double SeatRise;
    public double HandleBend;
    public double TissueGive;
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

    /// <summary>The same body and seat, <paramref name="k"/> times as large.</summary>
    public readonly Body Scaled(double k)
    {
        Body s = this;
        s.Stature *= k;
        s.ShoulderUp *= k;
        s.ShoulderOut *= k;
        s.UpperArm *= k;
        s.Forearm *= k;
        s.HandBeyond *= k;
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
        s.LongestWay *= k;
        s.FleshDepth *= k;
        s.Stiffness /= k;
        s.Invert();
        return s;
    }
}
