using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Knowledge;

/// <summary>How the answer to a question goes with what else is true of a simulated person.</summary>
public sealed record AnswerModel
{
    /// <summary>Id of the question.</summary>
    public required QuestionId Question { get; init; }

    /// <summary>Options from the mildest to the gravest; empty for the order of the question.</summary>
    public ImmutableArray<string> MildFirst { get => field.IsDefault ? [] : field; init; }

    /// <summary>Correlation with each hidden trait, by its name; the sum of the squares is at most 1.</summary>
    public ImmutableSortedDictionary<string, double> Loads { get => field ?? ImmutableSortedDictionary<string, double>.Empty; init; }

    /// <summary>Other shares where an earlier answer asks for them.</summary>
    public ImmutableArray<SharesWhen> Given { get => field.IsDefault ? [] : field; init; }
}
