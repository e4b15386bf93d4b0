using ToiletAid.Core.Statistics;

namespace ToiletAid.Core.Panels;

/// <summary>A figure with the interval that other cases of the same kind would give.</summary>
/// <param name="Value">The figure; null where it has none.</param>
/// <param name="Range">The interval; null where too few sets of cases have the figure.</param>
public sealed record Estimate(double? Value, Interval? Range);
