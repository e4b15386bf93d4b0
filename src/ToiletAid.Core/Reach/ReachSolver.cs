using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>Finds the best pose: several starts for each approach, short descents from all, a fine one from the best.</summary>
internal static class ReachSolver
{
    private const int ShortRounds = 30;
    private const int FineRounds = 80;

    // Poses that people take, one line a start: lean, bend, twist, shoulder flexion, abduction, internal rotation, elbow, in rad.
    private static readonly ImmutableArray<JointVector> BehindStarts =
    [
        new(0.3, 0.0, 0.2, -0.8, 0.2, 1.0, 0.8),
        new(0.8, -0.2, 0.3, -0.4, 0.4, 0.8, 0.4),
        new(0.1, 0.2, 0.0, -0.3, 0.8, 1.2, 1.2),
        new(0.9, 0.0, 0.5, 0.0, 0.1, 0.3, 0.1),
    ];

    private static readonly ImmutableArray<JointVector> FrontStarts =
    [
        new(0.3, 0.0, -0.1, 0.4, 0.0, 0.6, 0.6),
        new(0.8, 0.0, -0.3, 0.8, -0.2, 0.4, 0.2),
        new(0.1, 0.3, 0.0, 0.2, 0.3, 0.9, 1.0),
        new(0.6, 0.2, 0.2, 0.0, 0.1, 0.3, 0.5),
    ];

    private static readonly ImmutableArray<JointVector> SideStarts =
    [
        new(0.1, -0.4, 0.0, -0.2, 0.3, 0.5, 0.6),
        new(0.5, -0.5, 0.2, 0.1, 0.2, 0.3, 0.2),
        new(0.3, 0.4, 0.0, 0.0, 0.7, 0.9, 0.6),
        new(0.1, -0.3, 0.3, -0.6, 0.2, 0.9, 0.8),
    ];

    /// <summary>Least value over a box.</summary>
    /// <param name="objective">What to make small.</param>
    /// <param name="box">Limits.</param>
    /// <param name="approach">Chooses the starts.</param>
    /// <param name="best">The best pose.</param>
    /// <returns>m.</returns>
    public static double Solve(in ReachObjective objective, in JointBox box, Approach approach, out JointVector best)
    {
        ImmutableArray<JointVector> starts = approach switch
        {
            Approach.Behind => BehindStarts,
            Approach.Front => FrontStarts,
            _ => SideStarts,
        };
        double least = double.PositiveInfinity;
        best = default;
        foreach (JointVector start in starts)
        {
            JointVector q = box.Clamp(in start);
            double value = BoxMinimiser.Descend(in objective, in box, ref q, ShortRounds, 1e-4);
            if (value < least)
            {
                least = value;
                best = q;
            }
        }

        return BoxMinimiser.Descend(in objective, in box, ref best, FineRounds, 1e-6);
    }

    /// <summary>Least value near a pose that was best for a similar person.</summary>
    public static double Follow(in ReachObjective objective, in JointBox box, ref JointVector pose)
    {
        pose = box.Clamp(in pose);
        return BoxMinimiser.Descend(in objective, in box, ref pose, FineRounds, 2e-5);
    }
}
