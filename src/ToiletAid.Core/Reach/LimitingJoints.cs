using System.Collections.Immutable;

namespace ToiletAid.Core.Reach;

/// <summary>Finds the joints whose range is used up in the best pose.</summary>
internal static class LimitingJoints
{
    private const double TenDegrees = Math.PI / 18;
    private const double Matters = 1e-3;
    private const int Most = 3;

    public static ImmutableArray<LimitingJoint> Find(
        in ReachObjective objective,
        in JointBox box,
        PostureNumbers posture,
        in JointVector pose,
        double way)
    {
        JointVector slope = BoxMinimiser.Slope(in objective, in pose);
        var candidates = new List<(JointMotion Motion, int Index, bool Upper, double Slope)>();
        for (int i = 0; i < JointVector.Count; i++)
        {
            bool upper = pose[i] >= box.High[i] && slope[i] < -Matters;
            bool lower = pose[i] <= box.Low[i] && slope[i] > Matters;
            if ((upper || lower) && Motion(i, upper) is { } motion && IsThePersons(i, in box, posture))
            {
                candidates.Add((motion, i, upper, -Math.Abs(slope[i])));
            }
        }

        var found = ImmutableArray.CreateBuilder<LimitingJoint>();
        foreach ((JointMotion motion, int index, bool isUpper, double perRadian) in candidates.OrderBy(c => c.Slope).Take(Most))
        {
            JointBox wider = box;
            wider.High[index] += isUpper ? TenDegrees : 0;
            wider.Low[index] -= isUpper ? 0 : TenDegrees;
            JointVector q = pose;
            double shorter = ReachSolver.Follow(in objective, in wider, ref q);
            found.Add(new LimitingJoint(motion, perRadian, Math.Min(shorter - way, 0)));
        }

        return found.ToImmutable();
    }

    /// <summary>False where the posture and not the person sets the limit.</summary>
    private static bool IsThePersons(int index, in JointBox box, PostureNumbers posture) => index switch
    {
        JointVector.Lean => box.High[index] < posture.LeanHigh,
        JointVector.Bend => box.High[index] < posture.Bend,
        JointVector.Twist => box.High[index] < posture.Twist,
        _ => true,
    };

    private static JointMotion? Motion(int index, bool upper) => (index, upper) switch
    {
        (JointVector.Lean, true) => JointMotion.TrunkFlexion,
        (JointVector.Bend, _) => JointMotion.TrunkSideBend,
        (JointVector.Twist, _) => JointMotion.TrunkRotation,
        (JointVector.Flexion, true) => JointMotion.ShoulderFlexion,
        (JointVector.Flexion, false) => JointMotion.ShoulderExtension,
        (JointVector.Abduction, true) => JointMotion.ShoulderAbduction,
        (JointVector.Abduction, false) => JointMotion.ShoulderAdduction,
        (JointVector.Rotation, true) => JointMotion.ShoulderInternalRotation,
        (JointVector.Rotation, false) => JointMotion.ShoulderExternalRotation,
        (JointVector.Elbow, true) => JointMotion.ElbowFlexion,
        (JointVector.Elbow, false) => JointMotion.ElbowExtensionLag,
        _ => null,
    };
}
