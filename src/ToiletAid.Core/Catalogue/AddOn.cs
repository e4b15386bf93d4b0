using System.Collections.Immutable;
using ToiletAid.Core.Evidence;

namespace ToiletAid.Core.Catalogue;

/// <summary>Something added to an aid or to the toilet.</summary>
public sealed record AddOn
{
    /// <summary>Stable id, kebab-case.</summary>
    public required string Id { get; init; }

    /// <summary>Descriptive name.</summary>
    public required string Name { get; init; }

    /// <summary>What it is, in short sentences.</summary>
    public required string Summary { get; init; }

    /// <summary>True when holding asks for no grip any more.</summary>
    public bool HoldsTheHand { get; init; }

    /// <summary>Share of the grip force that is still asked for with it, 0 to 1; null where it changes nothing.</summary>
    public Sourced? GripShare { get; init; }

    /// <summary>Thickness that it gives a handle, m; a handle that is as thick needs no such add-on. Null where it changes nothing.</summary>
    public Sourced? Thickness { get; init; }

    /// <summary>True when paper is folded ahead of time, so that loading asks for no fine handling and one hand.</summary>
    public bool PreparesPaper { get; init; }

    /// <summary>Room gained between body and seat, m; null where it changes nothing.</summary>
    public Sourced? RoomGained { get; init; }

    /// <summary>True when it steadies the person.</summary>
    public bool Steadies { get; init; }

    /// <summary>True when skin that cannot be felt can be seen with it.</summary>
    public bool ShowsTheSkin { get; init; }

    /// <summary>True when it must be mounted or changes fixtures.</summary>
    public bool ChangesFixtures { get; init; }

    /// <summary>Steps it adds to those the user must remember.</summary>
    public int ExtraSteps { get; init; }

    /// <summary>Materials that touch skin and can cause allergy.</summary>
    public required ImmutableArray<string> Materials { get; init; }

    /// <summary>True when it makes handling easier; false when it is there for safety.</summary>
    public bool OnlyHelps => HoldsTheHand || GripShare is not null || PreparesPaper;

    /// <summary>Costs.</summary>
    public required Upkeep Upkeep { get; init; }
}
