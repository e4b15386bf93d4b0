using ToiletAid.Core.Person;

namespace ToiletAid.Core.Hand;

/// <summary>One row of a norm table that gives means: one sex, one age band.</summary>
/// <param name="Sex">Female or male.</param>
/// <param name="From">First year of age in the band.</param>
/// <param name="To">Last year of age in the band; null when it has no end.</param>
/// <param name="Mean">Mean, SI, above 0.</param>
/// <param name="Sd">Standard deviation between people, SI, above 0.</param>
public sealed record MeanRow(Sex Sex, int From, int? To, double Mean, double Sd);
