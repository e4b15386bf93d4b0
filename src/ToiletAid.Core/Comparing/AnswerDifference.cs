using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Comparing;

/// <summary>An answer, or a part of one, that differs between two visits.</summary>
public sealed record AnswerDifference
{
    /// <summary>The question.</summary>
    public required Question Question { get; init; }

    /// <summary>The part, or null for a question without parts.</summary>
    public Part? Part { get; init; }

    /// <summary>The answer at the earlier visit; null when there was none.</summary>
    public required Answer? From { get; init; }

    /// <summary>The answer at the later visit; null when there was none.</summary>
    public required Answer? To { get; init; }

    /// <summary>Later minus earlier, SI; null where there is nothing to subtract.</summary>
    public double? Change { get; init; }

    /// <summary>The limit that decided, SI; for <see cref="VerdictReason.BetweenLimits"/> the lower one. Null when none did.</summary>
    public double? Limit { get; init; }

    /// <summary>The upper limit for <see cref="VerdictReason.BetweenLimits"/>, SI; else null.</summary>
    public double? UpperLimit { get; init; }

    /// <summary>Where the limits come from; null when none is known.</summary>
    public DetectableChange? Rule { get; init; }

    /// <summary>Whether it is a change of the person.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>What the verdict rests on.</summary>
    public required VerdictReason Reason { get; init; }
}
