using System.Collections.Immutable;
using ToiletAid.Core.Statistics;

namespace ToiletAid.Core.Knowledge;

/// <summary>What a clinic learnt of a kind of aid.</summary>
public sealed record KindCoefficients
{
    /// <summary>Id of the kind; null for all kinds that have no entry of their own.</summary>
    public required string? Aid { get; init; }

    /// <summary>With how many people it was tried; 0, or as many as a cell must have.</summary>
    public required int People { get; init; }

    /// <summary>With how many of them it failed.</summary>
    public required int Failed { get; init; }

    /// <summary>With how many of them it was predicted to fail.</summary>
    public required double Expected { get; init; }

    /// <summary>What every value of a plan with it is multiplied by: how often it works here, over how often it was predicted to.</summary>
    public required double Factor { get; init; }

    /// <summary>Where the factor lies in 80 of 100 cases.</summary>
    public required Interval Range { get; init; }

    /// <summary>What is added to predicted values before that.</summary>
    public required ImmutableArray<CriterionShift> Shifts { get; init; }
}
