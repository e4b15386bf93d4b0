using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>All numbers of one person in one way of reaching that a descent uses: body, solids around it, target and limits; m and rad.</summary>
/// <typeparam name="T">A float for one person, or a vector of floats for several; places are the same in both.</typeparam>
[StructLayout(LayoutKind.Sequential)]
internal struct DescentNumbers<T>
    where T : unmanaged
{
    /// <summary>Length by which the solver measures how far is far.</summary>
    public T Unit;
    public T ShoulderOut;
    public T ShoulderUp;
    public T UpperArm;
    public T Forearm;
    public T HandRadius;
    public T ForearmRadius;
    public T AidRadius;

    // Half-axes of the pelvis and one over each.
    public T PelvisX;
    public T PelvisY;
    public T PelvisZ;
    public T PelvisXInverse;
    public T PelvisYInverse;
    public T PelvisZInverse;
    public T TrunkCentre;
    public T TrunkXInverse;
    public T TrunkYInverse;
    public T ThighRadius;
    public T ThighLength;
    public T ThighOut;
    public T ThighX;
    public T ThighY;
    public T ThighZ;
    public T SeatUp;
    public T OpeningHalfWidth;
    public T OpeningBack;
    public T OpeningFront;
    public T OpeningDepth;
    public T HandleBend;
    public T TissueGive;
    public T Firmness;
    public T Stiffness;

    // One over the trunk's own range of lean, bend and twist.
    public T LeanInverse;
    public T BendInverse;
    public T TwistInverse;
    public T TargetX;
    public T TargetY;
    public T TargetZ;
    public T Pronation;
    public T Supination;
    public T Deviation;

    // Beyond these a handle must bend: share of a line against the forearm, and slopes of it across the hand.
    public T DeviationSine;
    public T PronationSlope;
    public T SupinationSlope;
    public JointsOf<T> Low;
    public JointsOf<T> High;

    /// <summary>How many numbers there are.</summary>
    public static int Count => Unsafe.SizeOf<DescentNumbers<float>>() / sizeof(float);

    /// <summary>The numbers of one person.</summary>
    public static DescentNumbers<float> Of(in Body body, in Scene scene, in JointBox box)
    {
        DescentNumbers<float> n = new()
        {
            Unit = (float)body.Stature,
            ShoulderOut = (float)body.ShoulderOut,
            ShoulderUp = (float)body.ShoulderUp,
            UpperArm = (float)body.UpperArm,
            Forearm = (float)body.Forearm,
            HandRadius = (float)body.HandRadius,
            ForearmRadius = (float)body.ForearmRadius,
            AidRadius = (float)body.AidRadius,
            PelvisX = (float)body.PelvisForward,
            PelvisY = (float)body.PelvisSideways,
            PelvisZ = (float)body.PelvisUp,
            PelvisXInverse = (float)body.PelvisForwardInverse,
            PelvisYInverse = (float)body.PelvisSidewaysInverse,
            PelvisZInverse = (float)body.PelvisUpInverse,
            TrunkCentre = (float)body.TrunkCentre,
            TrunkXInverse = (float)body.TrunkForwardInverse,
            TrunkYInverse = (float)body.TrunkSidewaysInverse,
            ThighRadius = (float)body.ThighRadius,
            ThighLength = (float)body.ThighLength,
            ThighOut = (float)body.ThighOut,
            OpeningHalfWidth = (float)body.OpeningHalfWidth,
            OpeningBack = (float)body.OpeningBack,
            OpeningFront = (float)body.OpeningFront,
            OpeningDepth = (float)body.OpeningDepth,
            HandleBend = (float)body.HandleBend,
            TissueGive = (float)body.TissueGive,
            Firmness = (float)(1 / (body.FleshDepth * body.FleshDepth)),
            Stiffness = (float)body.Stiffness,
        };
        Around(in scene, ref n);
        for (int i = 0; i < JointVector.Count; i++)
        {
            (n.Low[i], n.High[i]) = ((float)box.Low[i], (float)box.High[i]);
        }

        return n;
    }

    private static void Around(in Scene scene, ref DescentNumbers<float> n)
    {
        (n.ThighX, n.ThighY, n.ThighZ) = ((float)scene.Thigh.X, (float)scene.Thigh.Y, (float)scene.Thigh.Z);
        n.SeatUp = (float)scene.SeatUp;
        n.LeanInverse = (float)scene.TrunkInverse.X;
        n.BendInverse = (float)scene.TrunkInverse.Y;
        n.TwistInverse = (float)scene.TrunkInverse.Z;
        (n.TargetX, n.TargetY, n.TargetZ) = ((float)scene.Target.X, (float)scene.Target.Y, (float)scene.Target.Z);
        (n.Pronation, n.Supination, n.Deviation) = ((float)scene.Pronation, (float)scene.Supination, (float)scene.Deviation);
        n.DeviationSine = (float)Math.Sin(Math.Min(scene.Deviation, Math.PI / 2));
        (n.PronationSlope, n.SupinationSlope) = (Slope(scene.Pronation), Slope(scene.Supination));
    }

    private static float Slope(double angle) => (float)Math.Min(ReachObjective.Slope(angle), float.MaxValue);
}
