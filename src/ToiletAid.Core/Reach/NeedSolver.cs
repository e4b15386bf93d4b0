using System.Collections.Immutable;
using System.Runtime.InteropServices;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>Solves one posture and approach after the other for the middle person and all draws.</summary>
internal sealed class NeedSolver(
    ReachNumbers numbers,
    ImmutableArray<ReachPrecaution> precautions,
    PersonDraw[] draws,
    ImmutableArray<double> hands)
{
    private readonly ReachPrecaution[] _precautions = precautions.IsDefault ? [] : [.. precautions];

    private readonly double _stroke = numbers.Stroke;

    public ReachNeed Solve(in PersonDraw middle, Posture posture, Approach approach)
    {
        PostureNumbers place = numbers.Postures[(int)posture];
        string? reason = PostureSetting.Prepare(numbers, place, approach, in middle, _precautions, out JointBox box, out Scene scene);
        if (reason is not null)
        {
            return new ReachNeed
            {
                Posture = posture,
                Approach = approach,
                Allowed = false,
                ForbiddenBecause = reason,
                Draws = [.. Enumerable.Repeat(double.PositiveInfinity, draws.Length)],
                HandReach = hands,
                Stroke = _stroke,
            };
        }

        var objective = new ReachObjective(in middle.Body, in scene);
        double way = ReachSolver.Solve(in objective, in box, approach, out PoseLeaders leaders);
        JointVector pose = leaders.Poses[0];
        bool possible = way <= middle.Body.LongestWay;
        PersonDraw abler = middle.Abler(LimitingJoints.TenDegrees);
        _ = PostureSetting.Prepare(numbers, place, approach, in abler, _precautions, out JointBox wider, out Scene _);
        ImmutableArray<double> lengths = Sample(place, approach, in leaders);
        double[] sorted = [.. lengths];
        Array.Sort(sorted);
        double length = possible ? way + _stroke : double.PositiveInfinity;
        return new ReachNeed
        {
            Posture = posture,
            Approach = approach,
            Allowed = true,
            MiddleLength = length,
            MedianLength = sorted.Length == 0 ? length : Quantile(sorted, 0.5),
            LowLength = sorted.Length == 0 ? length : Quantile(sorted, 0.1),
            HighLength = sorted.Length == 0 ? length : Quantile(sorted, 0.9),
            Draws = lengths,
            Sorted = ImmutableCollectionsMarshal.AsImmutableArray(sorted),
            HandReach = hands,
            Stroke = _stroke,
            SharePossible = sorted.Length == 0 ? (possible ? 1 : 0) : (double)sorted.Count(double.IsFinite) / sorted.Length,
            Pose = pose.ToPose(),
            Detail = new PoseDetail(in middle.Body, in scene, in box, in wider, approach, in pose, way),
            MissingForBareHand = possible ? Math.Max(way - middle.Body.FaceBeyond, 0) : double.PositiveInfinity,
        };
    }

    private ImmutableArray<double> Sample(PostureNumbers place, Approach approach, in PoseLeaders leaders)
    {
        double[] lengths = new double[draws.Length];
        Array.Fill(lengths, double.PositiveInfinity);
        var persons = new List<DescentNumbers<float>>(draws.Length);
        var who = new List<int>(draws.Length);
        Scene some = default;
        for (int i = 0; i < draws.Length; i++)
        {
            if (PostureSetting.Prepare(numbers, place, approach, in draws[i], _precautions, out JointBox box, out Scene scene) is null)
            {
                persons.Add(DescentNumbers<float>.Of(in draws[i].Body, in scene, in box));
                who.Add(i);
                some = scene;
            }
        }

        if (who.Count > 0)
        {
            var solver = new DrawSolver(in some, [.. persons], approach);
            ReadOnlySpan<double> ways = solver.Solve(in leaders);
            for (int k = 0; k < who.Count; k++)
            {
                int i = who[k];
                lengths[i] = ways[k] <= draws[i].Body.LongestWay ? ways[k] + _stroke : double.PositiveInfinity;
            }
        }

        return ImmutableArray.Create(lengths);
    }

    /// <summary>The least length that at least a share of the draws does not exceed.</summary>
    private static double Quantile(double[] sorted, double share) =>
        sorted[Math.Min(Math.Max((int)Math.Ceiling(share * sorted.Length) - 1, 0), sorted.Length - 1)];
}
