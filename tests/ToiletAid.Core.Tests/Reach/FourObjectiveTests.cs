using System.Runtime.Intrinsics;
using CsCheck;
using ToiletAid.Core.Randomness;
using ToiletAid.Core.Reach;
using Four = System.Runtime.Intrinsics.Vector128<float>;

namespace ToiletAid.Core.Tests.Reach;

/// <summary>Four persons at once in single precision against one at a time in double, whose slopes are held against small differences.</summary>
public sealed class FourObjectiveTests
{
    private const double Millimetre = 1e-3;

    [Fact]
    public void Values_and_slopes_of_four_persons_are_those_of_each()
    {
        var off = new List<double>();
        var gen = Gen.Select(ReachPeople.Draws.Array[4], ReachPeople.Ways, Gen.ULong, (d, w, seed) => (d, w, seed));
        foreach (var x in ReachPeople.Fixed(gen, 600))
        {
            bool isStraight = x.seed % 5 == 0;
            var random = new RandomDraws(x.seed, 0);
            var objectives = new ReachObjective[4];
            var poses = new JointVector[4];
            FourObjective? four = null;
            JointsOf<Four> q = default;
            for (int place = 0; place < 4; place++)
            {
                PersonDraw person = x.d[place];
                _ = PostureSetting.Prepare(ReachPeople.Numbers, ReachPeople.Numbers.Postures[(int)x.w.Posture], x.w.Approach, in person, [], out JointBox box, out Scene scene);
                scene.Straight = isStraight;
                if (x.seed % 5 is 1 or 2)
                {
                    // As landmarks are looked for: from anywhere, with fingers that bend as far as the wrist does, and off the pelvis.
                    (scene.WedgeX, scene.WedgeY, scene.WedgeSine, scene.WedgeCosine) = (0, 0, 0, 0);
                    (scene.Pronation, scene.Supination, scene.Deviation) = (Math.PI, Math.PI, -0.5);
                    scene.TargetOffSkin = x.seed % 5 == 2;
                }

                objectives[place] = new ReachObjective(in person.Body, in scene);
                poses[place] = ReachPeople.Somewhere(in box, ref random);
                four ??= new FourObjective(in scene);
                four.Seat(place, objectives[place].Numbers(in box));
                for (int i = 0; i < JointVector.Count; i++)
                {
                    // Both see the pose that a float can hold.
                    float angle = (float)poses[place][i];
                    poses[place][i] = angle;
                    q[i] = q[i].WithElement(place, angle);
                }
            }

            four!.Try(in q, withSlopes: true);
            for (int place = 0; place < 4; place++)
            {
                Compare(four, in objectives[place], in poses[place], place, off);
            }
        }


        // Where the way and the handle bend, four places take the touching point as lying still in the body; few slopes show it.
        Assert.InRange(off.Count, 10_000, 4 * 600 * JointVector.Count);
        off.Sort();
        Assert.InRange(off[off.Count / 2], 0, 0.002);
        Assert.InRange(off[off.Count * 99 / 100], 0, 0.03);
        Assert.InRange(off[^1], 0, 0.2);
    }

    /// <summary>Compares one place; slopes only where the pose does not lie so near a bend of the value that those on both sides differ.</summary>
    private static void Compare(FourObjective four, in ReachObjective objective, in JointVector pose, int place, List<double> off)
    {
        double value = objective.At(in pose);
        Assert.Equal(value, four.Value[place], Millimetre * 0.01 * (1 + (100 * Math.Abs(value))));
        JointVector slope = BoxMinimiser.Slope(in objective, in pose);
        for (int i = 0; i < JointVector.Count; i++)
        {
            const double Step = 1e-4;
            JointVector up = pose, down = pose;
            up[i] += Step;
            down[i] -= Step;
            if (Math.Abs(objective.At(in up) + objective.At(in down) - (2 * value)) > 1e-6 * (1 + Math.Abs(value)))
            {
                return;
            }
        }

        double norm = Math.Sqrt(JointVector.Dot(in slope, in slope));
        for (int i = 0; i < JointVector.Count; i++)
        {
            off.Add(Math.Abs(slope[i] - four.Slope[i][place]) / (1 + norm));
        }
    }
}
