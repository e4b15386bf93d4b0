using System.Numerics;
using CsCheck;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Tests.Reach;

/// <summary>Forward kinematics against System.Numerics, which turns points by quaternions in single precision.</summary>
public sealed class ArmTests
{
    private static readonly Gen<JointVector> Poses =
        Gen.Double[-1.5, 1.5].Array[JointVector.Count].Select(a => new JointVector(a[0], a[1], a[2], a[3], a[4], a[5], a[6]));

    [Fact]
    public void Elbow_and_grip_are_where_an_independent_rotation_library_puts_them() =>
        Gen.Select(ReachPeople.Draws, Poses, (d, q) => (d, q)).Sample(
            x =>
            {
                Body body = x.d.Body;
                JointAngles angles = JointAngles.Of(in x.q, 0.4, 0.5);
                Arm arm = Arm.At(in body, in angles);

                Quaternion trunk = Turn(Vector3.UnitY, x.q[JointVector.Lean])
                    * Turn(Vector3.UnitX, -x.q[JointVector.Bend])
                    * Turn(Vector3.UnitZ, x.q[JointVector.Twist]);
                Quaternion upper = Turn(Vector3.UnitY, -x.q[JointVector.Flexion])
                    * Turn(Vector3.UnitX, x.q[JointVector.Abduction])
                    * Turn(Vector3.UnitZ, -x.q[JointVector.Rotation]);
                Quaternion fore = upper * Turn(Vector3.UnitY, -x.q[JointVector.Elbow]);
                var shoulder = new Vector3(0, (float)body.ShoulderOut, (float)body.ShoulderUp);
                Vector3 elbow = shoulder + ((float)body.UpperArm * Vector3.Transform(-Vector3.UnitZ, upper));
                Vector3 grip = elbow + ((float)body.Forearm * Vector3.Transform(-Vector3.UnitZ, fore));

                Near(Vector3.Transform(elbow, trunk), arm.Elbow);
                Near(Vector3.Transform(grip, trunk), arm.Grip);
                Near(Vector3.Transform(Vector3.UnitX, trunk * fore), arm.Thumb);

                Quaternion pelvis = Turn(Vector3.UnitY, 0.4 * x.q[JointVector.Lean]) * Turn(Vector3.UnitX, -0.5 * x.q[JointVector.Bend]);
                Near(Vector3.Transform(Vector3.Transform(grip, trunk), Quaternion.Inverse(pelvis)), arm.ToPelvis(arm.Grip));
            },
            iter: 1000);

    [Fact]
    public void The_pelvis_sees_what_the_seat_sees_and_back() =>
        Gen.Select(ReachPeople.Draws, Poses, (d, q) => (d, q)).Sample(
            x =>
            {
                JointAngles angles = JointAngles.Of(in x.q, 0.6, 0.3);
                Arm arm = Arm.At(in x.d.Body, in angles);
                Assert.Equal(0, (arm.FromPelvis(arm.ToPelvis(arm.Grip)) - arm.Grip).Length, 1e-14);
            },
            iter: 200);

    private static Quaternion Turn(Vector3 axis, double angle) => Quaternion.CreateFromAxisAngle(axis, (float)angle);

    private static void Near(Vector3 expected, Vector3D actual)
    {
        Assert.Equal(expected.X, actual.X, 1e-5);
        Assert.Equal(expected.Y, actual.Y, 1e-5);
        Assert.Equal(expected.Z, actual.Z, 1e-5);
    }
}
