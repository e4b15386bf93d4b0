using System.Collections.Immutable;

namespace ToiletAid.Core.Person;

/// <summary>What the built-in values predicted of a plan before it was tried.</summary>
/// <param name="Criteria">Expected values in the order of the criteria, 0 to 1.</param>
public sealed record TrialPrediction(ImmutableArray<double> Criteria)
{
    /// <summary>Decimals that are kept: more would tell nothing.</summary>
    private const int Decimals = 4;

    /// <summary>A prediction with the decimals that a file keeps.</summary>
    /// <param name="criteria">Expected values in the order of the criteria.</param>
    public static TrialPrediction Of(IEnumerable<double> criteria) => new([.. criteria.Select(c => Math.Round(Math.Clamp(c, 0, 1), Decimals))]);
}
