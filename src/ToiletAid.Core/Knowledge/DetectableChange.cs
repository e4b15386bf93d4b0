using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Knowledge;

/// <summary>How far two measurements of the same person must lie apart before the difference is more than measuring error.</summary>
public sealed record DetectableChange
{
    /// <summary>The question.</summary>
    public required QuestionId Question { get; init; }

    /// <summary>The part of it, or null for a question without parts.</summary>
    public string? Part { get; init; }

    /// <summary>True when the limits are shares of the first measurement.</summary>
    public bool Relative { get; init; }

    /// <summary>A smaller difference is within measurement error. SI, or a share.</summary>
    public required Sourced Least { get; init; }

    /// <summary>A difference as large as this is real; between the two it cannot be told. Null when <see cref="Least"/> settles it.</summary>
    public Sourced? Sure { get; init; }

    /// <summary>Why the two differ.</summary>
    public LimitSpread Spread { get; init; }

    /// <summary>The limits for a first measurement.</summary>
    /// <param name="first">The first measurement, SI.</param>
    /// <param name="sameRater">True when the same person measured both times, false when not, null when that is not known.</param>
    /// <returns>Less than the one is not a change, and from the other on it is real; SI.</returns>
    public (double Least, double Sure) Limits(double first, bool? sameRater)
    {
        double scale = Relative ? Math.Abs(first) : 1, least = Least.Value * scale, sure = Sure is { } wide ? wide.Value * scale : least;
        return Spread != LimitSpread.Rater || sameRater is not { } same ? (least, sure)
            : same ? (least, least)
            : (sure, sure);
    }
}
