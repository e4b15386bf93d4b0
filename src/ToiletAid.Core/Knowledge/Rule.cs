using ToiletAid.Core.Evidence;

namespace ToiletAid.Core.Knowledge;

/// <summary>The words of a rule; its condition is code, joined by id.</summary>
public sealed record Rule
{
    /// <summary>Stable id, kebab-case.</summary>
    public required string Id { get; init; }

    /// <summary>What follows.</summary>
    public required RuleKind Kind { get; init; }

    /// <summary>How serious it is.</summary>
    public required Severity Severity { get; init; }

    /// <summary>What is said. Slots in braces are filled with numbers of the case.</summary>
    public required string Text { get; init; }

    /// <summary>What it is for.</summary>
    public required string Purpose { get; init; }

    /// <summary>What kind of knowledge it rests on.</summary>
    public required Basis Basis { get; init; }

    /// <summary>Where it comes from.</summary>
    public required string Source { get; init; }
}
