using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Catalogue;

/// <summary>One thing a hand must do with an aid.</summary>
public sealed record Operation
{
    /// <summary>Which one.</summary>
    public required OperationKind Kind { get; init; }

    /// <summary>What the hand does in it; null in an older file, where <see cref="HandActs.Usual"/> tells.</summary>
    public HandAct? Act { get; init; }

    /// <summary>Force asked of the hand, N; 0 or more. Holding against the aid's own weight is computed and not counted here.</summary>
    public required Sourced Force { get; init; }

    /// <summary>Grasps that can do it; any one is enough.</summary>
    public required ImmutableArray<Grasp> Grasps { get; init; }

    /// <summary>True when it can also be done by pressing the aid against thigh, hip or seat.</summary>
    public bool AgainstTheBody { get; init; }

    /// <summary>Hands needed, 1 or 2.</summary>
    public int Hands { get => field == 0 ? 1 : field; init; }

    /// <summary>Duration of one go, s; above 0.</summary>
    public required Sourced Duration { get; init; }

    /// <summary>How often it is done in one clean; 1 or more.</summary>
    public int Repetitions { get => field == 0 ? 1 : field; init; }

    /// <summary>Fine handling asked for.</summary>
    public FineHandling Fine { get; init; }
}
