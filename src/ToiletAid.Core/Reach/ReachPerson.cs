using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>What is known about a person for the reach computation; everything may be unknown.</summary>
public sealed record ReachPerson
{
    /// <summary>Sex; unstated averages both.</summary>
    public Sex Sex { get; init; } = Sex.Unstated;

    /// <summary>Age, years; null when not known.</summary>
    public double? AgeYears { get; init; }

    /// <summary>Stature, m; null when not known.</summary>
    public ReachInput? Stature { get; init; }

    /// <summary>Body mass, kg; null when not known.</summary>
    public ReachInput? Mass { get; init; }

    /// <summary>Hand used for cleaning.</summary>
    public WorkingHand Hand { get; init; } = WorkingHand.Right;

    /// <summary>Highest point the hand gets to behind; null when not known.</summary>
    public LandmarkBehind? Behind { get; init; }

    /// <summary>How that was obtained.</summary>
    public HowObtained BehindHow { get; init; } = HowObtained.Observed;

    /// <summary>How far the hand gets between the thighs; null when not known.</summary>
    public LandmarkFront? Front { get; init; }

    /// <summary>How that was obtained.</summary>
    public HowObtained FrontHow { get; init; } = HowObtained.Observed;

    /// <summary>How far the person can lean without losing balance; null when not known.</summary>
    public Lean? Lean { get; init; }

    /// <summary>Lean forward, rad; overrides <see cref="Lean"/> for the forward direction.</summary>
    public ReachInput? LeanForward { get; init; }

    /// <summary>Lean to a side, rad; overrides <see cref="Lean"/> for the sideways direction.</summary>
    public ReachInput? LeanSideways { get; init; }

    /// <summary>Joint ranges that were obtained in degrees, kept in rad.</summary>
    public ImmutableDictionary<JointMotion, ReachInput> Joints { get; init; } = ImmutableDictionary<JointMotion, ReachInput>.Empty;

    /// <summary>Body lengths that were measured, m; they override the estimate.</summary>
    public ImmutableDictionary<BodyMeasure, ReachInput> Lengths { get; init; } = ImmutableDictionary<BodyMeasure, ReachInput>.Empty;

    /// <summary>Precautions in force.</summary>
    public ImmutableArray<ReachPrecaution> Precautions { get; init; } = [];
}
