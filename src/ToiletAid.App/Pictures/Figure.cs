using ToiletAid.Core.Person;

namespace ToiletAid.App.Pictures;

/// <summary>A person from the side as joints, posed from a posture: one model for every picture.</summary>
internal sealed record Figure
{
    internal required Spot Hip { get; init; }

    internal required Spot Shoulder { get; init; }

    internal required Spot Head { get; init; }

    internal required Spot Knee { get; init; }

    internal required Spot Ankle { get; init; }

    internal required Spot Toe { get; init; }

    /// <summary>The way the pelvis faces.</summary>
    internal required Spot Forward { get; init; }

    /// <summary>Middle of the skin to be cleaned.</summary>
    internal required Spot Skin { get; init; }

    /// <summary>A figure whose trunk, thigh and lower leg go in directions, in degrees from the right and upward above 0.</summary>
    /// <param name="hip">Hip joint.</param>
    /// <param name="trunk">From hip to shoulder.</param>
    /// <param name="thigh">From hip to knee.</param>
    /// <param name="shank">From knee to ankle.</param>
    /// <param name="foot">From heel to toe.</param>
    /// <param name="head">From shoulder to the middle of the head.</param>
    /// <param name="forward">The way the pelvis faces.</param>
    internal static Figure Of(Spot hip, double trunk, double thigh, double shank, double foot, double head, double forward)
    {
        var shoulder = hip + (Spot.Toward(trunk) * FigureBody.ShoulderAboveHip);
        var knee = hip + (Spot.Toward(thigh) * FigureBody.Thigh);
        var ankle = knee + (Spot.Toward(shank) * FigureBody.Shank);
        var ahead = Spot.Toward(forward);

        // Behind the lowest point of the pelvis, as the reach model has it.
        var skin = hip + ((ahead * -0.35) - (ahead.Left * 0.94)).Unit * FigureBody.Pelvis;
        return new()
        {
            Hip = hip,
            Shoulder = shoulder,
            Head = shoulder + (Spot.Toward(head) * FigureBody.NeckToHead),
            Knee = knee,
            Ankle = ankle,
            Toe = ankle + (Spot.Toward(foot) * FigureBody.Foot) + (Spot.Toward(foot).Left * -3.5),
            Forward = ahead,
            Skin = skin,
        };
    }

    /// <summary>The figure in a posture.</summary>
    /// <param name="posture">The posture.</param>
    /// <param name="lean">How far the trunk leans forward, degrees; less than the posture has by itself counts as that.</param>
    /// <param name="seat">Height of the seat or of the bed, cm.</param>
    /// <param name="onBed">True when the feet lie as high as the seat.</param>
    internal static Figure In(Posture posture, double lean, double seat, bool onBed)
    {
        double hip = seat + FigureBody.HipAboveSeat;
        return posture switch
        {
            Posture.Seated when onBed => Of(new(0, hip + 1), 98 - lean, 22, -30, 55, 96 - lean, 0),
            Posture.SeatedLeaningForward when onBed => Of(new(0, hip + 1), 90 - Math.Max(lean, LeastLean), 22, -30, 55, 78 - Math.Max(lean, LeastLean), 0),
            Posture.Seated => Of(new(0, hip), 88 - lean, -5, -92, 0, 86 - (lean * 0.7), 0),
            Posture.SeatedLeaningForward => Of(new(2, hip + 2), 90 - Math.Max(lean, LeastLean), -7, -94, 0, 80 - (Math.Max(lean, LeastLean) * 0.7), -12),
            Posture.HalfStanding => Of(new(2, 76), 90 - Math.Max(lean, HalfLean), -48, -106, 0, 82 - (Math.Max(lean, HalfLean) * 0.6), -25),
            Posture.Standing => Of(new(38, FigureBody.Ankle + FigureBody.Shank + FigureBody.Thigh), 84 - lean, -88, -92, 0, 84 - (lean * 0.7), -5),
            Posture.SideLying => OnTheSide(lean),
            _ => Of(new(0, hip + 1), 145 - lean, 32, -52, 40, 138 - lean, 40),
        };
    }

    internal const double LeastLean = 40;
    private const double HalfLean = 35;

    /// <summary>Who lies on the side is seen from above as who sits is seen from the side.</summary>
    private static Figure OnTheSide(double lean)
    {
        var f = Of(default, 88 - lean, 12, -100, -12, 80 - lean, 0);
        return new()
        {
            Hip = f.Hip.Turned(90),
            Shoulder = f.Shoulder.Turned(90),
            Head = f.Head.Turned(90),
            Knee = f.Knee.Turned(90),
            Ankle = f.Ankle.Turned(90),
            Toe = f.Toe.Turned(90),
            Forward = f.Forward.Turned(90),
            Skin = f.Skin.Turned(90),
        };
    }

    internal IReadOnlyList<Limb> Body(Spot legOffset = default) =>
    [
        new("head", Head, FigureBody.Head, Head + ((Head - Shoulder).Unit * 2), FigureBody.Head - 1),
        new("neck", Shoulder, 6, Head, 5),
        new("trunk", Hip, FigureBody.Pelvis, Shoulder, 9.5),
        .. Leg(legOffset),
    ];

    internal IReadOnlyList<Limb> Leg(Spot offset = default) =>
    [
        new("thigh", Hip, 9.5, Knee + offset, 6.5),
        new("shank", Knee + offset, 6, Ankle + offset, 4),
        new("foot", Ankle + offset, 4, Toe + offset, 2.8),
    ];

    /// <summary>The elbow of an arm that reaches a place: on the left or the right of the line from the shoulder.</summary>
    internal static Spot Elbow(Spot shoulder, Spot grip, bool left)
    {
        var line = grip - shoulder;
        double d = Math.Clamp(line.Length, Math.Abs(FigureBody.UpperArm - FigureBody.Forearm) + 0.1, FigureBody.UpperArm + FigureBody.Forearm - 0.1);
        double along = ((d * d) + (FigureBody.UpperArm * FigureBody.UpperArm) - (FigureBody.Forearm * FigureBody.Forearm)) / (2 * d);
        double out_ = Math.Sqrt(Math.Max((FigureBody.UpperArm * FigureBody.UpperArm) - (along * along), 0));
        return shoulder + (line.Unit * along) + (line.Unit.Left * (left ? out_ : -out_));
    }

    internal static IReadOnlyList<Limb> Arm(Spot shoulder, Spot elbow, Spot grip) =>
    [
        new("upper-arm", shoulder, 5.5, elbow, 4.2),
        new("forearm", elbow, 4.2, grip, 3.2),
    ];
}
