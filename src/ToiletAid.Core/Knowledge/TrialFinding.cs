using System.Collections.Immutable;

namespace ToiletAid.Core.Knowledge;

/// <summary>Something that a trial can find: a level of help, how clean it got, a problem.</summary>
public sealed record TrialFinding
{
    /// <summary>Stable id; for a level its code.</summary>
    public required string Id { get; init; }

    /// <summary>How it is read.</summary>
    public required string Label { get; init; }

    /// <summary>What it counts for when the try did not fail; empty for nothing.</summary>
    public ImmutableArray<CriterionCount> Counts { get => field.IsDefault ? [] : field; init; }

    /// <summary>The criterion on which it makes the whole try fail; null when it does not.</summary>
    public Criterion? Fails { get; init; }

    /// <summary>What makes the step easier that failed: a plan with an add-on that does so, which the tried plan lacked, is not held to have failed.</summary>
    public ImmutableArray<HandEase> EasedBy { get => field.IsDefault ? [] : field; init; }

    /// <summary>True for a level that says why the plan was not tried.</summary>
    public bool NotTried { get; init; }

    /// <summary>Code of the answer in LOINC; null where there is none.</summary>
    public string? Loinc { get; init; }

    /// <summary>Wording of the answer in LOINC; null where there is none.</summary>
    public string? LoincDisplay { get; init; }
}
