using ToiletAid.Core.Evidence;

namespace ToiletAid.Core.Knowledge;

/// <summary>What a finding of a trial counts for on a criterion.</summary>
/// <param name="Criterion">The criterion.</param>
/// <param name="Value">The value that was seen, 0 to 1.</param>
public sealed record CriterionCount(Criterion Criterion, Sourced Value);
