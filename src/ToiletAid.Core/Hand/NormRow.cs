using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Hand;

/// <summary>One row of a norm table: one sex, one age band.</summary>
/// <param name="Sex">Female or male.</param>
/// <param name="From">First year of age in the band.</param>
/// <param name="To">Last year of age in the band; null when it has no end.</param>
/// <param name="Values">Values at the table's percentiles, SI, rising, all above 0.</param>
public sealed record NormRow(Sex Sex, int From, int? To, ImmutableArray<double> Values);
