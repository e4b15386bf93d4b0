using System.Collections.Immutable;

namespace ToiletAid.Core.Person;

/// <summary>One try of a plan. What was not noted is null.</summary>
public sealed record TrialRun
{
    /// <summary>How it was tried.</summary>
    public required RunKind Kind { get; init; }

    /// <summary>Code of how much help was needed, on the scale of item GG0130C.</summary>
    public string? Level { get; init; }

    /// <summary>Id of how clean it got; only for a real run.</summary>
    public string? Cleanliness { get; init; }

    /// <summary>How long it took, minutes.</summary>
    public double? Minutes { get; init; }

    /// <summary>How hard it was for the person, 0 no effort to 10 the most.</summary>
    public int? Effort { get; init; }

    /// <summary>Ids of what went wrong, in the order of the list.</summary>
    public ImmutableArray<string> Problems { get => field.IsDefault ? [] : field; init; }
}
