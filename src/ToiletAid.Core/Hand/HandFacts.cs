using ToiletAid.Core.Person;

namespace ToiletAid.Core.Hand;

/// <summary>What is known of the hand that cleans.</summary>
public sealed record HandFacts
{
    /// <summary>Age, years; above 0.</summary>
    public required double AgeYears { get; init; }

    /// <summary>Sex, for norms only.</summary>
    public required Sex Sex { get; init; }

    /// <summary>Best usable grasp.</summary>
    public required Grasp BestGrasp { get; init; }

    /// <summary>How the best grasp is known; what was told is less certain than what was seen.</summary>
    public HowObtained GraspObtained { get; init; }

    /// <summary>Hands free while cleaning, 1 or 2.</summary>
    public required int HandsFree { get; init; }

    /// <summary>Handling of small things.</summary>
    public Dexterity Dexterity { get; init; }

    /// <summary>Tremor of that hand.</summary>
    public Tremor Tremor { get; init; }

    /// <summary>Grip on the dynamometer, N, 0 or more; null when not measured.</summary>
    public double? GripNewtons { get; init; }

    /// <summary>Pinch on the gauge, N, 0 or more; null when not measured.</summary>
    public double? PinchNewtons { get; init; }

    /// <summary>Time of the nine-hole peg test, s, above 0; null when not measured. Counts instead of <see cref="Dexterity"/>.</summary>
    public double? PegSeconds { get; init; }

    /// <summary>Cleans a day; above 0. Effort repeated over the day tires.</summary>
    public required double CleansPerDay { get; init; }
}
