namespace ToiletAid.Core.Reach;

/// <summary>The lengths of one body as the reach model uses them; m (kg for mass).</summary>
public sealed record BodyLengths
{
    /// <summary>Stature.</summary>
    public required double Stature { get; init; }

    /// <summary>Body mass, kg.</summary>
    public required double Mass { get; init; }

    /// <summary>Shoulder joint above the hip joint when sitting upright.</summary>
    public required double ShoulderAboveHip { get; init; }

    /// <summary>Shoulder joint from the midline.</summary>
    public required double ShoulderFromMidline { get; init; }

    /// <summary>Shoulder joint to elbow joint.</summary>
    public required double UpperArm { get; init; }

    /// <summary>Elbow joint to grip centre.</summary>
    public required double Forearm { get; init; }

    /// <summary>Depth of the pelvis with the buttocks.</summary>
    public required double PelvisDepth { get; init; }

    /// <summary>Breadth of the hips when sitting.</summary>
    public required double PelvisBreadth { get; init; }

    /// <summary>Depth of the abdomen when sitting.</summary>
    public required double AbdomenDepth { get; init; }

    /// <summary>Thickness of a thigh.</summary>
    public required double ThighThickness { get; init; }
}
