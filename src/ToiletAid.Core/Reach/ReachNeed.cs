using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>How long an aid must be for one posture and one approach.</summary>
public sealed record ReachNeed
{
    /// <summary>The posture.</summary>
    public required Posture Posture { get; init; }

    /// <summary>The approach.</summary>
    public required Approach Approach { get; init; }

    /// <summary>True when neither a precaution nor what the person can hold forbids it.</summary>
    public required bool Allowed { get; init; }

    /// <summary>Why it is forbidden, kebab-case id; null when allowed.</summary>
    public string? ForbiddenBecause { get; init; }

    /// <summary>Needed length of the middle person, grip centre to target along the body with the stroke, m; +infinity where there is no way.</summary>
    public double MiddleLength { get; init; } = double.PositiveInfinity;

    /// <summary>Median needed length, m; +infinity where there is no way.</summary>
    public double MedianLength { get; init; } = double.PositiveInfinity;

    /// <summary>Length that 10 in 100 plausible persons do not exceed, m.</summary>
    public double LowLength { get; init; } = double.PositiveInfinity;

    /// <summary>Length that 90 in 100 plausible persons do not exceed, m.</summary>
    public double HighLength { get; init; } = double.PositiveInfinity;

    /// <summary>Needed lengths, m, +infinity where there is no way; index i is the same plausible person in every posture and approach.</summary>
    public ImmutableArray<double> Draws { get; init; } = [];

    /// <summary>The same lengths, shortest first, so that counting how many are short enough is quick.</summary>
    internal ImmutableArray<double> Sorted { get; init; } = [];

    /// <summary>How far the bare hand reaches past its grip centre in each draw, m; shared by all needs of one report.</summary>
    public ImmutableArray<double> HandReach { get; init; } = [];

    /// <summary>Stroke allowance contained in the lengths, m.</summary>
    public double Stroke { get; init; }

    /// <summary>Share of the draws in which there is a way at all, 0 to 1.</summary>
    public double SharePossible { get; init; }

    /// <summary>Best pose of the middle person.</summary>
    public ReachPose Pose { get; init; }

    /// <summary>That pose as points to be drawn; null when it is forbidden.</summary>
    public ReachSketch? Sketch => Detail?.Sketch;

    /// <summary>What a straight aid pays on top, m; 0 or more, +infinity where a straight one cannot get there.</summary>
    public double StraightExtra => Detail?.StraightExtra ?? 0;

    /// <summary>Joints that limit the middle person, most limiting first.</summary>
    public ImmutableArray<LimitingJoint> Limiting => Detail?.Limiting ?? [];

    /// <summary>What else can be told of the pose; null when it is forbidden.</summary>
    internal PoseDetail? Detail { get; init; }

    /// <summary>Length that the bare hand lacks in the middle person, m; 0 when the hand is enough.</summary>
    public double MissingForBareHand { get; init; } = double.PositiveInfinity;

    /// <summary>Probability that an aid is long enough.</summary>
    /// <param name="length">Length along its centreline from grip centre to the middle of the wiping face, m; 0 or more.</param>
    /// <param name="shape">Its shape; a straight one pays for not following the body.</param>
    /// <returns>0 to 1; rises with the length; 0 when forbidden.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="length"/> is negative or not a number.</exception>
    public double ProbabilityLongEnough(double length, AidShape shape)
    {
        if (!(length >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(length), length, "the length of an aid is 0 m or more");
        }

        double usable = shape == AidShape.Straight ? length - StraightExtra : length;
        return Share(NotLongerThan(usable), MiddleLength <= usable);
    }

    /// <summary>Probability that the bare hand gets there: the path is no longer than the hand reaches past its grip centre.</summary>
    /// <returns>0 to 1; 0 when forbidden.</returns>
    public double ProbabilityBareHand()
    {
        int count = 0;
        for (int i = 0; i < Draws.Length; i++)
        {
            count += Draws[i] - Stroke <= HandReach[i] ? 1 : 0;
        }

        return Share(count, MissingForBareHand <= 0);
    }

    private double Share(int count, bool middleHolds) =>
        !Allowed ? 0
        : Draws.IsEmpty ? (middleHolds ? 1 : 0)
        : (double)count / Draws.Length;

    private int NotLongerThan(double length)
    {
        int low = 0, high = Sorted.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = Sorted[middle] <= length ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
