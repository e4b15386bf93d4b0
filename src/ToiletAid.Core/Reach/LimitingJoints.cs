using System.Collections.Immutable;

namespace ToiletAid.Core.Reach;

/// <summary>Finds the joints whose range is used up in the best pose.</summary>
internal static class LimitingJoints
{
    /// <summary>By how much a limit is moved to see what more of it would bring, rad.</summary>
    public const double TenDegrees = Math.PI / 18;

    /// <summary>Slope at which a limit begins to matter, m/rad: ten degrees of it would bring a fifth of a millimetre.</summary>
    private const double Matters = 1e-3;
    private const int Most = 3;

    /// <summary>Joints of the person, most limiting first.</summary>
    /// <param name="objective">What was made small.</param>
    /// <param name="box">Limits within which it was.</param>
    /// <param name="wider">Limits of a person with ten degrees more of everything in the same posture and under the same precautions. A limit that
    /// stays where it was is set by these or by the model, and more of a joint would bring nothing.</param>
    /// <param name="pose">Best pose.</param>
    /// <param name="way">Its value, m.</param>
    public static ImmutableArray<LimitingJoint> Find(
        in ReachObjective objective,
        in JointBox box,
        in JointBox wider,
        in JointVector pose,
        double way)
    {
        JointVector slope = BoxMinimiser.Slope(in objective, in pose);
        var candidates = new List<(JointMotion Motion, int Index, bool Upper, double Slope)>();
        for (int i = 0; i < JointVector.Count; i++)
        {
            bool upper = pose[i] >= box.High[i] && wider.High[i] > box.High[i] && slope[i] < -Matters;
            bool lower = pose[i] <= box.Low[i] && wider.Low[i] < box.Low[i] && slope[i] > Matters;
            if ((upper || lower) && Motion(i, upper) is { } motion)
            {
                candidates.Add((motion, i, upper, -Math.Abs(slope[i])));
            }
        }

        var found = ImmutableArray.CreateBuilder<LimitingJoint>();
        foreach ((JointMotion motion, int index, bool isUpper, double perRadian) in candidates.OrderBy(c => c.Slope).Take(Most))
        {
            JointBox one = box;
            if (isUpper)
            {
                one.High[index] = wider.High[index];
            }
            else
            {
                one.Low[index] = wider.Low[index];
            }

            JointVector q = pose;
            double shorter = ReachSolver.Follow(in objective, in one, ref q);
            found.Add(new LimitingJoint(motion, perRadian, Math.Min(shorter - way, 0)));
        }

        return found.ToImmutable();
    }

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
