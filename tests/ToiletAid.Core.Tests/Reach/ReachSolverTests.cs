using CsCheck;
using ToiletAid.Core.Person;
using ToiletAid.Core.Randomness;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Tests.Reach;

public sealed class ReachSolverTests
{
    // Half a centimetre is the resolution that the search by evolution below reaches in seven joints.
    private const double Resolution = 0.005;

    [Fact]
    public void Slopes_are_those_of_small_differences()
    {
        var gen = Gen.Select(ReachPeople.Draws, ReachPeople.Ways, Gen.ULong, (d, w, seed) => (d, w, seed));
        foreach (var x in ReachPeople.Fixed(gen, 500))
        {
            PersonDraw person = x.d;
            Prepare(in person, x.w.Posture, x.w.Approach, out ReachObjective objective, out JointBox box);
            var random = new RandomDraws(x.seed, 0);
            JointVector q = ReachPeople.Somewhere(in box, ref random);
            JointVector slope = BoxMinimiser.Slope(in objective, in q);
            for (int i = 0; i < JointVector.Count; i++)
            {
                const double Step = 1e-6;
                JointVector up = q, down = q;
                up[i] += Step;
                down[i] -= Step;
                double expected = (objective.At(in up) - objective.At(in down)) / (2 * Step);

                // The second difference bounds how far two slopes at a bend of the value may differ.
                double bend = Math.Abs(objective.At(in up) + objective.At(in down) - (2 * objective.At(in q))) / Step;
                Assert.Equal(expected, slope[i], (2e-4 * (1 + Math.Abs(expected))) + bend);
            }
        }
    }

    // An independent search: differential evolution (Storn and Price 1997, from memory), which knows no slopes and no starts.
    [Fact]
    public void The_solver_is_as_good_as_a_dense_search_without_slopes()
    {
        var worse = new List<string>();
        int compared = 0, people = TestRun.Times(460, 46);
        var gen = Gen.Select(ReachPeople.Draws, ReachPeople.Ways, Gen.ULong, (d, w, seed) => (d, w, seed));
        foreach (var x in ReachPeople.Fixed(gen, people))
        {
            PersonDraw person = x.d;
            if (Prepare(in person, x.w.Posture, x.w.Approach, out ReachObjective objective, out JointBox box))
            {
                double searched = Evolve(in objective, in box, x.seed);
                double solved = ReachSolver.Solve(in objective, in box, x.w.Approach, out JointVector _);
                bool matters = Math.Min(searched, solved) <= person.Body.LongestWay;
                compared += matters ? 1 : 0;
                if (matters && solved > searched + Resolution)
                {
                    worse.Add($"{x.w.Posture} {x.w.Approach}: solved {solved:0.0000} searched {searched:0.0000}");
                }
            }
        }

        Assert.InRange(compared, people * 2 / 5, people);
        // Between the thighs one person in a hundred may be missed, as in the laws; from behind and from the side nobody.
        Assert.True(worse.Count <= compared / 100 && worse.TrueForAll(w => w.Contains("Front", StringComparison.Ordinal)), $"{worse.Count} of {compared}\n" + string.Join('\n', worse));
    }

    [Fact]
    public void A_body_and_seat_twice_as_large_need_exactly_twice_the_length() =>
        Gen.Select(ReachPeople.Draws, ReachPeople.Ways, Gen.Double[0.5, 2], Gen.ULong, (d, w, k, seed) => (d, w, k, seed)).Sample(
            x =>
            {
                PersonDraw person = x.d;
                Prepare(in person, x.w.Posture, x.w.Approach, out ReachObjective objective, out JointBox box);
                PersonDraw larger = person;
                larger.Body = person.Body.Scaled(x.k);
                Prepare(in larger, x.w.Posture, x.w.Approach, out ReachObjective scaled, out JointBox _);
                var random = new RandomDraws(x.seed, 0);
                JointVector q = ReachPeople.Somewhere(in box, ref random);
                double expected = x.k * objective.At(in q);
                Assert.Equal(expected, scaled.At(in q), 1e-9 * (1 + expected));
            },
            iter: 1000);

    [Fact]
    public void The_same_question_gives_the_same_bits() =>
        Gen.Select(ReachPeople.Draws, ReachPeople.Ways, (d, w) => (d, w)).Sample(
            x =>
            {
                PersonDraw person = x.d;
                Assert.Equal(
                    BitConverter.DoubleToInt64Bits(ReachPeople.Way(in person, x.w.Posture, x.w.Approach)),
                    BitConverter.DoubleToInt64Bits(ReachPeople.Way(in person, x.w.Posture, x.w.Approach)));
            },
            iter: 100);

    [Fact]
    public void The_best_pose_stays_within_the_limits() =>
        Gen.Select(ReachPeople.Draws, ReachPeople.Ways, (d, w) => (d, w)).Sample(
            x =>
            {
                PersonDraw person = x.d;
                Prepare(in person, x.w.Posture, x.w.Approach, out ReachObjective objective, out JointBox box);
                ReachSolver.Solve(in objective, in box, x.w.Approach, out JointVector q);
                for (int i = 0; i < JointVector.Count; i++)
                {
                    Assert.InRange(q[i], box.Low[i], box.High[i]);
                }
            },
            iter: 300);

    internal static bool Prepare(in PersonDraw person, Posture posture, Approach approach, out ReachObjective objective, out JointBox box)
    {
        string? reason = PostureSetting.Prepare(
            ReachPeople.Numbers,
            ReachPeople.Numbers.Postures[(int)posture],
            approach,
            in person,
            [],
            out box,
            out Scene scene);
        objective = new ReachObjective(in person.Body, in scene);
        return reason is null;
    }

    private static double Evolve(in ReachObjective objective, in JointBox box, ulong seed)
    {
        const int Crowd = 50, Rounds = 300;
        var random = new RandomDraws(seed, 1);
        var poses = new JointVector[Crowd];
        double[] values = new double[Crowd];
        for (int i = 0; i < Crowd; i++)
        {
            poses[i] = ReachPeople.Somewhere(in box, ref random);
            values[i] = objective.At(in poses[i]);
        }

        for (int round = 0; round < Rounds; round++)
        {
            int best = Array.IndexOf(values, values.Min());
            for (int i = 0; i < Crowd; i++)
            {
                int a = (int)(random.NextUniform() * Crowd), b = (int)(random.NextUniform() * Crowd);
                JointVector child = poses[i];
                for (int k = 0; k < JointVector.Count; k++)
                {
                    if (random.NextUniform() < 0.9)
                    {
                        child[k] = poses[i][k] + (0.5 * (poses[best][k] - poses[i][k])) + (0.6 * (poses[a][k] - poses[b][k]));
                    }
                }

                child = box.Clamp(in child);
                double value = objective.At(in child);
                if (value < values[i])
                {
                    (poses[i], values[i]) = (child, value);
                }
            }
        }

        return values.Min();
    }
}
