using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>Finds the best pose: several starts for each approach, short descents from all, a fine one from the best.</summary>
internal static class ReachSolver
{
    // Fewer rounds and fewer kept are quicker and miss deeper valleys; ReachSolverTests compare what is found with a search without slopes.
    private const int FirstRounds = 10;
    private const int SecondRounds = 10;
    private const int SecondKept = 12;
    private const int ThirdRounds = 20;
    private const int ThirdKept = 6;
    internal const int FineRounds = 80;

    /// <summary>Share of the stature that two rounds must gain while the field is narrowed.</summary>
    internal const double RoughTolerance = 1e-4;

    /// <summary>The same for the pose that is told.</summary>
    private const double FineTolerance = 1e-6;

    /// <summary>Share of the stature that makes no difference: some hundredths of a millimetre.</summary>
    private const double Indifferent = 2e-5;

    /// <summary>Share of the stature that two rounds must gain; half a millimetre matters to nobody.</summary>
    internal const double DrawTolerance = 3e-4;

    // Poses that were best for random people, chosen so that few remain for which none of them leads to the best. One line a start:
    // lean, bend, twist, shoulder flexion, abduction, internal rotation, elbow, in rad.
    private static readonly ImmutableArray<JointVector> BehindStarts =
    [
        new(0.00, 0.17, 0.61, -0.48, 0.13, 0.73, 0.91),
        new(0.72, 0.32, 0.43, -0.14, -0.02, 0.20, 0.07),
        new(0.27, -0.03, 0.61, -0.18, -0.06, -1.41, 0.50),
        new(0.52, 0.20, 0.52, -0.44, 0.09, 0.69, 0.57),
        new(0.00, 0.21, 0.60, -0.46, 0.17, 0.80, 0.84),
        new(0.35, 0.20, 0.52, -0.27, -0.05, 0.38, 0.32),
        new(0.00, 0.04, 0.52, -0.48, 0.04, 0.66, 0.73),
        new(0.52, 0.29, 0.52, -0.05, -0.00, -1.01, 0.00),
        new(0.35, 0.26, 0.49, -0.14, 0.09, 0.17, 0.17),
        new(0.02, -0.23, 0.79, -0.20, -0.13, 0.24, 0.23),
    ];

    private static readonly ImmutableArray<JointVector> FrontStarts =
    [
        new(0.16, -0.09, -0.79, -0.08, 0.29, 0.57, 1.06),
        new(0.74, -0.20, -0.36, 0.29, -0.23, 0.95, 0.11),
        new(0.00, 0.17, -0.35, -0.08, 0.01, 0.35, 0.96),
        new(0.16, 0.35, -0.61, -0.11, 0.29, 1.07, 0.87),
        new(0.37, 0.01, -0.53, 0.13, -0.12, 0.34, 0.14),
        new(0.16, -0.17, -0.16, 0.06, 0.39, 1.02, 1.39),
        new(0.52, -0.02, 0.02, 0.79, -0.09, 0.11, 0.65),
        new(0.40, -0.37, -0.79, 0.07, 0.19, 0.95, 0.70),
        new(0.70, -0.26, -0.52, 0.31, -0.19, 1.16, 0.13),
        new(0.00, 0.17, -0.35, 0.44, -0.14, 0.21, 0.07),
        new(0.32, -0.04, -0.28, 0.11, 0.20, 0.94, 1.06),
        new(0.60, -0.22, -0.52, 0.36, -0.17, 0.12, 0.00),
        new(0.00, 0.29, -0.70, -0.23, 0.20, 0.65, 0.61),
        new(0.25, 0.17, -0.26, -0.02, 0.35, 1.02, 1.21),
        new(0.40, -0.14, -0.35, 0.35, -0.27, -1.38, 0.07),
        new(0.37, 0.17, -0.35, -0.07, 0.13, 0.33, 0.57),
        new(0.96, -0.31, -0.56, 0.05, 0.16, 1.22, 0.79),
        new(0.42, 0.04, -0.56, -0.06, 0.22, 1.08, 0.90),
        new(0.45, 0.08, -0.34, 0.07, 0.33, 1.20, 1.02),
        new(0.00, 0.19, -0.55, -0.24, 0.28, 0.66, 0.93),
        new(0.24, -0.00, -0.26, 0.10, 0.19, 1.22, 0.85),
        new(0.17, -0.17, -0.26, 0.13, 0.09, 1.19, 0.63),
    ];

    private static readonly ImmutableArray<JointVector> SideStarts =
    [
        new(0.00, 0.17, 0.35, -0.38, 0.02, 0.74, 0.52),
        new(0.17, 0.24, 0.27, -0.12, 0.08, 0.17, 0.07),
        new(0.00, 0.22, 0.61, -0.39, 0.16, 0.81, 0.82),
        new(0.00, 0.24, 0.61, -0.11, -0.04, -1.24, 0.07),
        new(0.00, 0.17, 0.33, -0.41, 0.04, 0.72, 0.67),
        new(0.00, 0.17, 0.35, -0.11, -0.04, 0.13, 0.00),
        new(0.00, 0.17, 0.35, -0.26, 0.03, 0.30, 0.22),
        new(0.29, -0.32, 0.61, -0.14, -0.03, -0.37, 0.07),
        new(0.00, 0.17, 0.35, -0.19, 0.04, 0.22, 0.14),
        new(0.02, 0.21, 0.61, -0.28, -0.04, 0.40, 0.45),
        new(0.52, 0.17, -0.30, -0.00, 0.13, -0.31, 0.07),
        new(0.00, -0.22, 0.28, -0.53, 0.23, 0.62, 0.90),
    ];

    /// <summary>A hand from the side may end as one from behind does.</summary>
    private static readonly ImmutableArray<JointVector> SideAndBehindStarts = [.. SideStarts, .. BehindStarts];

    /// <summary>Poses to go down from by an approach.</summary>
    public static ImmutableArray<JointVector> Starts(Approach approach) => approach switch
    {
        Approach.Behind => BehindStarts,
        Approach.Front => FrontStarts,
        _ => SideStarts,
    };

    /// <summary>Least value over a box.</summary>
    /// <param name="objective">What to make small.</param>
    /// <param name="box">Limits.</param>
    /// <param name="approach">Chooses the starts.</param>
    /// <param name="best">The best pose.</param>
    /// <returns>m.</returns>
    public static double Solve(in ReachObjective objective, in JointBox box, Approach approach, out JointVector best)
    {
        double value = Solve(in objective, in box, approach, out PoseLeaders leaders);
        best = leaders.Poses[0];
        return value;
    }

    /// <summary>Least value over a box, with the next best poses of another kind.</summary>
    /// <param name="objective">What to make small.</param>
    /// <param name="box">Limits.</param>
    /// <param name="approach">Chooses the starts.</param>
    /// <param name="leaders">The best pose first.</param>
    /// <returns>m.</returns>
    public static double Solve(in ReachObjective objective, in JointBox box, Approach approach, out PoseLeaders leaders)
    {
        ImmutableArray<JointVector> starts = approach == Approach.Side ? SideAndBehindStarts : Starts(approach);
        // The field is narrowed in steps, because which valley is deepest shows only some way down.
        var minimiser = FourMinimiser.Of(in objective, in box);
        PoseLeaders first = Deeper(minimiser, starts.AsSpan(), FirstRounds);
        PoseLeaders second = Deeper(minimiser, first.Best(SecondKept), SecondRounds);
        leaders = Deeper(minimiser, second.Best(ThirdKept), ThirdRounds);
        leaders.Poses[0] = box.FromFloats(in leaders.Poses[0]);
        double least = BoxMinimiser.Descend(in objective, in box, ref leaders.Poses[0], FineRounds, FineTolerance);
        return Rest(in objective, in box, ref leaders.Poses[0], least);
    }

    /// <summary>Where the elbow is straight the arm may turn as it likes; then it is told as it rests.</summary>
    private static double Rest(in ReachObjective objective, in JointBox box, ref JointVector pose, double least)
    {
        JointVector resting = pose;
        resting[JointVector.Rotation] = Math.Min(Math.Max(0, box.Low[JointVector.Rotation]), box.High[JointVector.Rotation]);
        double value = objective.At(in resting);
        if (value > least + (Indifferent * objective.Unit))
        {
            return least;
        }

        pose = resting;
        return Math.Min(value, least);
    }

    private static PoseLeaders Deeper(FourMinimiser minimiser, ReadOnlySpan<JointVector> poses, int rounds)
    {
        Span<Descent> descents = new Descent[poses.Length];
        for (int i = 0; i < poses.Length; i++)
        {
            descents[i].Pose = poses[i];
        }

        minimiser.Descend(descents, rounds, RoughTolerance);
        PoseLeaders deeper = default;
        foreach (ref readonly Descent descent in descents)
        {
            deeper.Offer(descent.Value, in descent.Pose);
        }

        return deeper;
    }

    /// <summary>Least value near poses that were best for similar persons.</summary>
    /// <param name="objective">What to make small.</param>
    /// <param name="box">Limits.</param>
    /// <param name="middle">Best poses of the middle person.</param>
    /// <param name="followed">How many of those to go down from.</param>
    /// <param name="last">Best pose of the person before; replaced by the best of this one.</param>
    public static double Follow(in ReachObjective objective, in JointBox box, in PoseLeaders middle, int followed, ref JointVector last)
    {
        Span<Descent> descents = new Descent[1 + Math.Min(middle.Held, followed)];
        descents[0].Pose = last;
        for (int i = 1; i < descents.Length; i++)
        {
            descents[i].Pose = middle.Poses[i - 1];
        }

        FourMinimiser.Of(in objective, in box).Descend(descents, FineRounds, DrawTolerance);
        double value = double.PositiveInfinity;
        foreach (ref readonly Descent descent in descents)
        {
            if (descent.Value < value)
            {
                (value, last) = (descent.Value, descent.Pose);
            }
        }

        return value;
    }

    /// <summary>Least value near a pose that was best for a similar person.</summary>
    public static double Follow(in ReachObjective objective, in JointBox box, ref JointVector pose)
    {
        pose = box.Clamp(in pose);
        return BoxMinimiser.Descend(in objective, in box, ref pose, FineRounds, DrawTolerance);
    }
}
