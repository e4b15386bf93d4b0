using CsCheck;
using ToiletAid.Core.Person;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Tests.Reach;

/// <summary>Laws that hold for everybody: more freedom never needs a longer aid.</summary>
/// <remarks>The objective obeys them exactly, its found minimum almost: the way between the thighs has many valleys, and for about one
/// person in a hundred, mostly very heavy and very stiff ones, the solver ends a little above the deepest. From behind and from the
/// side nobody of the thousand may break a law; from the front five may.</remarks>
public sealed class ReachLawTests
{
    // Two searches of the same person may end a little apart in a flat valley.
    private const double Flat = 0.001;
    private const int FrontBreaks = 5;

    [Fact]
    public void More_joint_range_never_needs_a_longer_aid() =>
        Wider((ref PersonDraw person, double share, int motion) =>
            person.Ranges[motion] *= (JointMotion)motion == JointMotion.ElbowExtensionLag ? 1 / (1 + share) : 1 + share);

    [Fact]
    public void More_lean_never_needs_a_longer_aid() =>
        Wider((ref PersonDraw person, double share, int motion) =>
        {
            person.LeanForward *= 1 + share;
            person.LeanSideways *= 1 + share;
        });

    [Fact]
    public void A_smaller_body_on_a_smaller_seat_never_needs_a_longer_aid() =>
        Wider((ref PersonDraw person, double share, int motion) => person.Body = person.Body.Scaled(1 / (1 + share)));

    private delegate void Ease(ref PersonDraw person, double share, int motion);

    private static void Wider(Ease ease)
    {
        var longer = new List<string>();
        int front = 0;
        var gen = Gen.Select(
            ReachPeople.Draws,
            ReachPeople.Ways,
            Gen.Double[0.02, 0.5],
            Gen.Int[0, JointRanges.Count - 1],
            (d, w, share, motion) => (d, w, share, motion));
        foreach (var x in ReachPeople.Fixed(gen, 1000))
        {
            PersonDraw person = x.d, freer = x.d;
            ease(ref freer, x.share, x.motion);
            double before = ReachPeople.Way(in person, x.w.Posture, x.w.Approach);
            double after = ReachPeople.Way(in freer, x.w.Posture, x.w.Approach);
            if (after > before + Flat && x.w.Approach == Approach.Front)
            {
                front++;
            }
            else if (after > before + Flat)
            {
                longer.Add($"{x.w.Posture} {x.w.Approach} {(JointMotion)x.motion} by {x.share:0.00}: {before:0.0000} then {after:0.0000}");
            }
        }

        Assert.InRange(front, 0, FrontBreaks);
        Assert.True(longer.Count == 0, $"{longer.Count}\n" + string.Join('\n', longer));
    }
}
