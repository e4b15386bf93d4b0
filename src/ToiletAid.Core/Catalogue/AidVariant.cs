using System.Collections.Immutable;
using ToiletAid.Core.Evidence;

namespace ToiletAid.Core.Catalogue;

/// <summary>One way in which articles of a kind differ from the usual one: what is not given here is as usual.</summary>
public sealed record AidVariant
{
    /// <summary>Stable id, kebab-case; different for each variant of a kind.</summary>
    public required string Id { get; init; }

    /// <summary>Replaces <see cref="Aid.Name"/>, so that whatever names the plan names the variant.</summary>
    public required string Name { get; init; }

    /// <summary>What it has, in plain words, to be said after any name of the kind: "with a narrow head".</summary>
    public required string Has { get; init; }

    /// <summary>Replaces <see cref="Aid.Length"/>.</summary>
    public Sourced? Length { get; init; }

    /// <summary>Replaces <see cref="Aid.Shape"/>.</summary>
    public AidShape? Shape { get; init; }

    /// <summary>Replaces <see cref="Aid.Tip"/>.</summary>
    public Tip? Tip { get; init; }

    /// <summary>Replaces <see cref="Aid.TipWidth"/>.</summary>
    public Sourced? TipWidth { get; init; }

    /// <summary>Replaces <see cref="Aid.Mass"/>.</summary>
    public Sourced? Mass { get; init; }

    /// <summary>Replaces <see cref="Aid.FoldedLength"/>.</summary>
    public Sourced? FoldedLength { get; init; }

    /// <summary>Each replaces the steps of its kind.</summary>
    public ImmutableArray<Operation> Operations { get => field.IsDefault ? [] : field; init; }

    /// <summary>Replaces <see cref="Aid.Coverage"/>.</summary>
    public Sourced? Coverage { get; init; }

    /// <summary>Replaces <see cref="Aid.Rubbing"/>.</summary>
    public Sourced? Rubbing { get; init; }

    /// <summary>Replaces <see cref="Aid.SoilTouched"/>.</summary>
    public Sourced? SoilTouched { get; init; }

    /// <summary>Replaces <see cref="Aid.EasyToClean"/>.</summary>
    public Sourced? EasyToClean { get; init; }

    /// <summary>Replaces <see cref="Aid.Noticeable"/>.</summary>
    public Sourced? Noticeable { get; init; }

    /// <summary>Replaces <see cref="Aid.Steps"/>.</summary>
    public int? Steps { get; init; }

    /// <summary>Materials at the skin besides those of the kind.</summary>
    public ImmutableArray<string> Materials { get => field.IsDefault ? [] : field; init; }

    /// <summary>Replaces what the kind costs to buy.</summary>
    public Sourced? Price { get; init; }

    /// <summary>Replaces what the kind uses up in a month.</summary>
    public Sourced? MonthlyConsumables { get; init; }
}
