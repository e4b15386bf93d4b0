using System.Collections.Immutable;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Outcomes;

/// <summary>The first try of a kind of aid with a person: what was predicted, and what came out.</summary>
/// <remarks>Only the first counts, so that nobody counts twice in a kind and no prediction holds what was seen of that kind before. Where a dry and a real
/// run were made, the real one decides.</remarks>
public sealed record FirstTry
{
    /// <summary>Id of the kind.</summary>
    public required string Aid { get; init; }

    /// <summary>What the built-in values predicted.</summary>
    public required TrialPrediction Predicted { get; init; }

    /// <summary>How the run that decides was made.</summary>
    public required RunKind Decided { get; init; }

    /// <summary>What it says.</summary>
    public required RunFindings Findings { get; init; }

    /// <summary>Ids of what went wrong in it.</summary>
    public required ImmutableArray<string> Problems { get; init; }

    /// <summary>The answers at the time.</summary>
    public required Answers Known { get; init; }

    /// <summary>Predicted share of such persons with whom it works: it is long enough and the hand can do every step.</summary>
    public double Works => Predicted.Criteria[(int)Criterion.Reach];

    /// <summary>True when it failed.</summary>
    public bool Failed => !Findings.Failures.IsEmpty;
}
