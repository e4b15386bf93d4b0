using System.Runtime.Intrinsics;
using CsCheck;
using ToiletAid.Core.Reach;
using Four = System.Runtime.Intrinsics.Vector128<float>;

namespace ToiletAid.Core.Tests.Reach;

/// <summary>Functions and equations of four numbers at once, against the mathematical library of the platform and the solver for one person.</summary>
public sealed class FourMathTests
{
    [Fact]
    public void Sines_and_cosines_are_those_of_the_library() =>
        Gen.Float[-10, 10].Array[4].Sample(
            angles =>
            {
                FourMath.Sines(Vector128.Create(angles), out Four sines, out Four cosines);
                for (int i = 0; i < angles.Length; i++)
                {
                    Assert.Equal(Math.Sin(angles[i]), sines[i], 2e-7);
                    Assert.Equal(Math.Cos(angles[i]), cosines[i], 2e-7);
                }
            },
            iter: 10_000);

    [Fact]
    public void Angles_are_those_of_the_library() =>
        Gen.Select(Gen.Int[0, 2000].Select(y => y / 1000f), Gen.Int[-2000, 2000].Select(x => x / 1000f)).Array[4].Sample(
            points =>
            {
                Four angles = FourMath.Angle(Vector128.Create([.. points.Select(p => p.Item1)]), Vector128.Create([.. points.Select(p => p.Item2)]));
                for (int i = 0; i < points.Length; i++)
                {
                    Assert.Equal(Math.Atan2(points[i].Item1, points[i].Item2), angles[i], 5e-7);
                }
            },
            iter: 10_000);

    [Theory]
    [InlineData(0, 1, 0)]
    [InlineData(1, 0, Math.PI / 2)]
    [InlineData(0, -1, Math.PI)]
    [InlineData(1, 1, Math.PI / 4)]
    [InlineData(1, -1, 3 * Math.PI / 4)]
    [InlineData(0, 0, 0)]
    public void Angles_at_corners_are_right(float y, float x, double angle) =>
        Assert.Equal(angle, FourMath.Angle(Vector128.Create(y), Vector128.Create(x))[0], 3e-7);

    // The double solver passes over what is held; four places do so by masks.
    [Fact]
    public void Four_systems_of_equations_are_solved_as_one_by_one() =>
        Gen.Select(Gen.Double[-1, 1].Array[7 * 8], Gen.Int[0, 127].Array[4], Gen.Double[0.05, 2]).Sample(
            (numbers, held, damping) =>
            {
                var one = default(SymmetricMatrix);
                var four = default(FourCurvature);
                for (int k = 0; k < 8; k++)
                {
                    JointVector row = default;
                    JointsOf<Four> rows = default;
                    for (int i = 0; i < JointVector.Count; i++)
                    {
                        row[i] = (float)numbers[(k * 7) + i];
                        rows[i] = Vector128.Create((float)row[i]);
                    }

                    one.Add(1, in row);
                    four.Add(FourMath.One, in rows);
                }

                JointVector slope = default;
                JointsOf<Four> free = default, right = default;
                for (int i = 0; i < JointVector.Count; i++)
                {
                    slope[i] = (float)numbers[i];
                    right[i] = Vector128.Create((float)-slope[i]);
                    free[i] = ~Vector128.Equals(Vector128.Create(held) >> i & Vector128<int>.One, Vector128<int>.One).AsSingle();
                }

                four.Solve(in free, Vector128.Create((float)damping), ref right);
                for (int place = 0; place < 4; place++)
                {
                    JointVector step = default;
                    one.SolveFree((uint)held[place], (float)damping, in slope, ref step);
                    for (int i = 0; i < JointVector.Count; i++)
                    {
                        Assert.Equal(step[i], right[i][place], 1e-3 * (1 + Math.Abs(step[i])));
                    }
                }
            },
            iter: 1000);
}
