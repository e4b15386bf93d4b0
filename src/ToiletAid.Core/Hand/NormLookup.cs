namespace ToiletAid.Core.Hand;

/// <summary>What a norm table says for one age and sex.</summary>
/// <param name="Curve">The spread over people of that age and sex.</param>
/// <param name="IsOutsideTable">True when the age is below the first or above the last band, so that the nearest one stands in.</param>
public sealed record NormLookup(NormCurve Curve, bool IsOutsideTable);
