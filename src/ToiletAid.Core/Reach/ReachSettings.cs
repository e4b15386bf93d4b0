using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>How a reach computation is run.</summary>
public sealed record ReachSettings
{
    /// <summary>Number of plausible persons drawn; 0 solves the middle person only. Up to 4096.</summary>
    public int Draws { get; init; } = 64;

    /// <summary>Seed of the draws.</summary>
    public ulong Seed { get; init; } = 20260101;

    /// <summary>Postures to solve; empty means all.</summary>
    public ImmutableArray<Posture> Postures { get; init; } = [];

    /// <summary>Approaches to solve; empty means all.</summary>
    public ImmutableArray<Approach> Approaches { get; init; } = [];
}
