using System.Collections.Immutable;

namespace ToiletAid.Core.Person;

/// <summary>A plan that was tried, dry, for real or both.</summary>
public sealed record Trial
{
    /// <summary>The plan.</summary>
    public required TriedPlan Plan { get; init; }

    /// <summary>What was predicted of it then; null when not noted.</summary>
    public TrialPrediction? Predicted { get; init; }

    /// <summary>Code of how much help was needed before, on the scale of item GG0130C; null when not noted.</summary>
    public string? Before { get; init; }

    /// <summary>Code of how much help the person wants to need at most; null when not noted.</summary>
    public string? Goal { get; init; }

    /// <summary>The tries, dry before real; at least one.</summary>
    public required ImmutableArray<TrialRun> Runs { get; init; }

    /// <summary>How much help was needed with the plan: at the last try at which it was noted.</summary>
    public string? After => Runs.LastOrDefault(r => r.Level is not null)?.Level;
}
