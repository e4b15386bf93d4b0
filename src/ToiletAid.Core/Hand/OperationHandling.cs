using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Hand;

/// <summary>How one hand copes with one operation.</summary>
public sealed record OperationHandling
{
    /// <summary>Which operation.</summary>
    public required OperationKind Kind { get; init; }

    /// <summary>True when it can be done.</summary>
    public required bool Possible { get; init; }

    /// <summary>Why it cannot be done, or none.</summary>
    public required HandlingObstacle Obstacle { get; init; }

    /// <summary>Force asked for, N.</summary>
    public required double DemandNewtons { get; init; }

    /// <summary>Grasp that does it most easily; none when none is usable, or when a strap does it.</summary>
    public required Grasp GraspUsed { get; init; }

    /// <summary>True when it is done by pressing against thigh, hip or seat with a grasp that could not do it freely.</summary>
    public required bool AgainstTheBody { get; init; }

    /// <summary>Greatest force in that grasp, N; 0 when none is usable or needed.</summary>
    public required double CapacityNewtons { get; init; }

    /// <summary>Force that may be asked of it that long and that often, N.</summary>
    public required double AcceptableNewtons { get; init; }

    /// <summary>Force asked for over acceptable force; infinite when no grasp is usable.</summary>
    public required double ShareOfAcceptable { get; init; }

    /// <summary>How hard that is.</summary>
    public required EffortBand Band { get; init; }

    /// <summary>Chance that it fails in one clean, 0 to 1.</summary>
    public required double FailureChance { get; init; }

    /// <summary>1 no effort and no slip, 0 not possible.</summary>
    public required double Value { get; init; }

    /// <summary>How long it takes this person in one clean, s.</summary>
    public required double Seconds { get; init; }
}
