using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>What else can be told of the middle person's best pose. Each part is worked out when it is asked for: together they cost about as
/// much as finding the pose, and most are never read.</summary>
internal sealed class PoseDetail
{
    private readonly Lazy<double> _straightExtra;
    private readonly Lazy<ImmutableArray<LimitingJoint>> _limiting;
    private readonly Lazy<ReachSketch> _sketch;

    /// <param name="body">The middle person's body.</param>
    /// <param name="scene">What surrounds it.</param>
    /// <param name="box">Limits within which the pose was found.</param>
    /// <param name="wider">See <see cref="LimitingJoints.Find"/>.</param>
    /// <param name="approach">Chooses the starts of a straight aid.</param>
    /// <param name="pose">The best pose.</param>
    /// <param name="way">Its value, m.</param>
    internal PoseDetail(in Body body, in Scene scene, in JointBox box, in JointBox wider, Approach approach, in JointVector pose, double way)
    {
        var (b, s, limits, more, q) = (body, scene, box, wider, pose);
        bool possible = way <= b.LongestWay;
        _straightExtra = new(() => possible ? Straight(in b, in s, in limits, approach, in q, way) : 0);
        _limiting = new(() => possible ? LimitingJoints.Find(new ReachObjective(in b, in s), in limits, in more, in q, way) : []);
        _sketch = new(() => ReachSketch.Of(in b, in s, in q));
    }

    /// <summary>What a straight aid pays on top, m; +infinity where it cannot get there.</summary>
    internal double StraightExtra => _straightExtra.Value;

    /// <summary>Joints that limit, most limiting first.</summary>
    internal ImmutableArray<LimitingJoint> Limiting => _limiting.Value;

    /// <summary>The pose as points.</summary>
    internal ReachSketch Sketch => _sketch.Value;

    private static double Straight(in Body body, in Scene scene, in JointBox box, Approach approach, in JointVector pose, double way)
    {
        Scene straight = scene;
        straight.Straight = true;
        var objective = new ReachObjective(in body, in straight);
        JointVector q = pose;
        double least = Math.Min(
            ReachSolver.Follow(in objective, in box, ref q),
            ReachSolver.Solve(in objective, in box, approach, out JointVector _));
        return least <= body.LongestWay ? Math.Max(least - way, 0) : double.PositiveInfinity;
    }
}
