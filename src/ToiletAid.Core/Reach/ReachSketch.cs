using System.Collections.Immutable;

namespace ToiletAid.Core.Reach;

/// <summary>The best pose of the middle person as points to be drawn.</summary>
public sealed record ReachSketch
{
    private const int OutlinePoints = 48;

    /// <summary>Middle between the shoulders.</summary>
    public required SketchPoint Neck { get; init; }

    /// <summary>Shoulder joint of the working arm.</summary>
    public required SketchPoint Shoulder { get; init; }

    /// <summary>The other shoulder joint.</summary>
    public required SketchPoint OtherShoulder { get; init; }

    /// <summary>Elbow.</summary>
    public required SketchPoint Elbow { get; init; }

    /// <summary>Grip centre.</summary>
    public required SketchPoint Grip { get; init; }

    /// <summary>Knee of the working side.</summary>
    public required SketchPoint Knee { get; init; }

    /// <summary>The other knee.</summary>
    public required SketchPoint OtherKnee { get; init; }

    /// <summary>The way from the grip centre to the target, both included.</summary>
    public required ImmutableArray<SketchPoint> Way { get; init; }

    /// <summary>Outline of the pelvis seen from the side.</summary>
    public required ImmutableArray<SketchPoint> PelvisFromSide { get; init; }

    /// <summary>Outline of the pelvis seen from behind.</summary>
    public required ImmutableArray<SketchPoint> PelvisFromBehind { get; init; }

    /// <summary>Height of the seat, m; null where there is none.</summary>
    public double? SeatUp { get; init; }

    /// <summary>Opening of the seat behind and before the hip joints, and half its width, m.</summary>
    public (double Behind, double Before, double HalfWidth) Opening { get; init; }

    /// <summary>Makes the sketch of a pose.</summary>
    internal static ReachSketch Of(in Body body, in Scene scene, in JointVector pose)
    {
        JointAngles angles = JointAngles.Of(in pose, scene.PelvisLean, scene.PelvisBend);
        Arm arm = Arm.At(in body, in angles);
        PelvisPath path = PelvisPath.To(in body, scene.Target, arm.ToPelvis(arm.Grip));
        var side = ImmutableArray.CreateBuilder<SketchPoint>(OutlinePoints);
        var behind = ImmutableArray.CreateBuilder<SketchPoint>(OutlinePoints);
        for (int i = 0; i < OutlinePoints; i++)
        {
            (double s, double c) = Math.SinCos(2 * Math.PI * i / OutlinePoints);
            side.Add(Point(arm.FromPelvis(new Vector3D(body.PelvisForward * c, 0, body.PelvisUp * s))));
            behind.Add(Point(arm.FromPelvis(new Vector3D(0, body.PelvisSideways * c, body.PelvisUp * s))));
        }

        return new ReachSketch
        {
            Neck = Point(Arm.FromTrunk(new Vector3D(0, 0, body.ShoulderUp), in angles)),
            Shoulder = Point(Arm.FromTrunk(new Vector3D(0, body.ShoulderOut, body.ShoulderUp), in angles)),
            OtherShoulder = Point(Arm.FromTrunk(new Vector3D(0, -body.ShoulderOut, body.ShoulderUp), in angles)),
            Elbow = Point(arm.Elbow),
            Grip = Point(arm.Grip),
            Knee = Point(new Vector3D(0, body.ThighOut, 0) + (body.ThighLength * scene.Thigh)),
            OtherKnee = Point(new Vector3D(0, -body.ThighOut, 0) + (body.ThighLength * (scene.Thigh with { Y = -scene.Thigh.Y }))),
            Way =
            [
                Point(arm.Grip),
                Point(arm.FromPelvis(path.Touch)),
                Point(arm.FromPelvis(path.SecondThird)),
                Point(arm.FromPelvis(path.FirstThird)),
                Point(arm.FromPelvis(scene.Target)),
            ],
            PelvisFromSide = side.MoveToImmutable(),
            PelvisFromBehind = behind.MoveToImmutable(),
            SeatUp = scene.HasSeat ? scene.SeatUp : null,
            Opening = (body.OpeningBack, body.OpeningFront, body.OpeningHalfWidth),
        };
    }

    private static SketchPoint Point(Vector3D p) => new(p.X, p.Y, p.Z);
}
