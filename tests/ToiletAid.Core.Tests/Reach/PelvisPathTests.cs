using CsCheck;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Tests.Reach;

public sealed class PelvisPathTests
{
    private static readonly Gen<Vector3D> Outside =
        Gen.Select(Gen.Double[0, Math.PI], Gen.Double[-Math.PI, Math.PI], Gen.Double[1.05, 4], (t, p, r) =>
            new Vector3D(r * Math.Sin(t) * Math.Cos(p), r * Math.Sin(t) * Math.Sin(p), r * Math.Cos(t)));

    /// <summary>A pelvis of a size that people have, the skin to be cleaned, and a hand somewhere outside.</summary>
    private static readonly Gen<(Body Pelvis, Vector3D Target, Vector3D From)> ToAPelvis =
        Gen.Select(Outside, Gen.Double[0.10, 0.18], Gen.Double[0.16, 0.26], (p, a, b) =>
        {
            const double Up = 0.105;
            (double s, double c) = Math.SinCos(25 * ReachPeople.Degree);
            return (Pelvis(a, b, Up), new Vector3D(-a * s, 0, -Up * c), new Vector3D(a * p.X, b * p.Y, Up * p.Z));
        });

    // The way around a ball is known: the tangent and the arc of the great circle.
    [Fact]
    public void Around_a_ball_the_way_is_the_tangent_and_the_arc() =>
        Outside.Sample(
            p =>
            {
                const double Radius = 0.1;
                Body ball = Pelvis(Radius, Radius, Radius);
                var target = new Vector3D(0, 0, -Radius);
                Vector3D from = Radius * p;
                PelvisPath path = PelvisPath.To(in ball, target, from);
                double r = from.Length, angle = Math.Acos(Math.Clamp(-from.Z / r, -1, 1));
                double hidden = angle - Math.Acos(Radius / r);
                double expected = hidden <= 0
                    ? (from - target).Length
                    : Math.Sqrt((r * r) - (Radius * Radius)) + (Radius * hidden);

                // The arc cosine above is good to the root of the machine precision only, near the far side of the ball.
                Assert.Equal(expected, path.Length, 1e-8);
                Assert.True(path.Length >= path.Straight - 1e-12);
            },
            iter: 1000);

    // A string pulled tight outside the ellipsoid, in all three dimensions, is the true shortest way; the way in one plane is never
    // shorter and, for bodies, little longer.
    [Fact]
    public void A_string_pulled_tight_is_never_longer_and_little_shorter() =>
        ToAPelvis.Sample(
            x =>
            {
                (Body pelvis, Vector3D target, Vector3D from) = x;
                double plane = PelvisPath.To(in pelvis, target, from).Length;
                double tight = StringLength(pelvis, target, from);
                Assert.True(plane >= tight - 2e-3, $"plane {plane:0.0000} string {tight:0.0000}");
                Assert.True(plane <= (tight * 1.12) + 2e-3, $"plane {plane:0.0000} string {tight:0.0000}");
            },
            iter: 60);

    // In a ball the deepest point of a straight line is the one nearest to the centre, which is found here by walking along it.
    [Fact]
    public void A_straight_line_through_a_ball_is_as_deep_as_its_deepest_point() =>
        Outside.Sample(
            p =>
            {
                const double Radius = 0.1;
                Body ball = Pelvis(Radius, Radius, Radius);
                var target = new Vector3D(0, 0, -Radius);
                Vector3D from = Radius * p;
                double nearest = Enumerable.Range(0, 4001).Min(i => (((i / 4000.0) * from) + ((1 - (i / 4000.0)) * target)).Length);
                Assert.Equal(Radius - nearest, PelvisPath.StraightDepth(in ball, target, from), 1e-4);
            },
            iter: 300);

    // In a pelvis, pushed out the shortest way, a point of the line may be nearer to the skin than straight out from the centre, never farther.
    [Fact]
    public void A_straight_line_through_a_pelvis_is_about_as_deep_as_its_deepest_point() =>
        ToAPelvis.Sample(
            x =>
            {
                (Body pelvis, Vector3D target, Vector3D from) = x;
                double radial = Enumerable.Range(0, 40001).Max(i =>
                {
                    Vector3D point = ((i / 40000.0) * from) + ((1 - (i / 40000.0)) * target);
                    return (Push(in pelvis, point) - point).Length;
                });
                double depth = PelvisPath.StraightDepth(in pelvis, target, from);
                Assert.InRange(depth, 0.6 * radial - 1e-4, radial + 1e-4);
            },
            iter: 300);

    private static Body Pelvis(double forward, double sideways, double up)
    {
        Body body = default;
        (body.PelvisForward, body.PelvisSideways, body.PelvisUp) = (forward, sideways, up);
        (body.TrunkForward, body.TrunkSideways) = (1, 1);
        body.Invert();
        return body;
    }

    private static double StringLength(in Body body, Vector3D target, Vector3D from)
    {
        const int Beads = 49;
        Vector3D[] beads = new Vector3D[Beads];
        for (int i = 0; i < Beads; i++)
        {
            double t = i / (double)(Beads - 1);
            beads[i] = Push(body, ((1 - t) * target) + (t * from));
        }

        (beads[0], beads[^1]) = (target, from);
        for (int round = 0; round < 4000; round++)
        {
            for (int i = 1; i < Beads - 1; i++)
            {
                beads[i] = Push(body, 0.5 * (beads[i - 1] + beads[i + 1]));
            }
        }

        double length = 0;
        for (int i = 1; i < Beads; i++)
        {
            length += (beads[i] - beads[i - 1]).Length;
        }

        return length;
    }

    private static Vector3D Push(in Body body, Vector3D p)
    {
        double r = new Vector3D(p.X / body.PelvisForward, p.Y / body.PelvisSideways, p.Z / body.PelvisUp).Length;
        return r >= 1 ? p : (1 / r) * p;
    }
}
