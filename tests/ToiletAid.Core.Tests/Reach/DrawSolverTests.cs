using CsCheck;
using ToiletAid.Core.Person;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Tests.Reach;

public sealed class DrawSolverTests
{
    // Four persons are gone down with at once, and where one is at its end the next takes the place.
    [Fact]
    public void What_a_person_needs_does_not_depend_on_who_is_solved_beside()
    {
        var gen = Gen.Select(ReachPeople.Draws.Array[9], Gen.Enum<Approach>(), (d, a) => (d, a));
        foreach (var x in ReachPeople.Fixed(gen, 12))
        {
            double[] together = Ways(x.d, x.a);
            double[] reversed = Ways([.. x.d.Reverse()], x.a);
            Array.Reverse(reversed);
            Assert.Equal(together, reversed);
            for (int i = 0; i < x.d.Length; i++)
            {
                Assert.Equal([together[i]], Ways([x.d[i]], x.a));
            }
        }
    }

    private static double[] Ways(PersonDraw[] persons, Approach approach)
    {
        var numbers = new DescentNumbers<float>[persons.Length];
        Scene some = default;
        for (int i = 0; i < persons.Length; i++)
        {
            _ = PostureSetting.Prepare(ReachPeople.Numbers, ReachPeople.Numbers.Postures[(int)Posture.Standing], approach, in persons[i], [], out JointBox box, out some);
            numbers[i] = DescentNumbers<float>.Of(in persons[i].Body, in some, in box);
        }

        return new DrawSolver(in some, numbers, approach).Solve(default).ToArray();
    }
}
