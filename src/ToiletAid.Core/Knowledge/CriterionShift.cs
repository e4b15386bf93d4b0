using ToiletAid.Core.Statistics;

namespace ToiletAid.Core.Knowledge;

/// <summary>How far a criterion was seen to lie from what was predicted.</summary>
/// <param name="Criterion">The criterion.</param>
/// <param name="People">With how many people something was seen of it.</param>
/// <param name="Predicted">What was predicted on average, 0 to 1.</param>
/// <param name="Seen">What was seen on average, 0 to 1.</param>
/// <param name="By">What is added to a predicted value.</param>
/// <param name="Range">Where it lies in 80 of 100 cases.</param>
public sealed record CriterionShift(Criterion Criterion, int People, double Predicted, double Seen, double By, Interval Range);
