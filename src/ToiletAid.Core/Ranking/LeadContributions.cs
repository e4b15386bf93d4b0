using System.Collections.Immutable;

namespace ToiletAid.Core.Ranking;

/// <summary>How much each criterion gives to the lead of one alternative over another in expected value.</summary>
/// <param name="ByCriterion">Mean weight times the difference of the mean values; negative where the other is better.</param>
/// <param name="Lead">The contributions added in order, so that they add up to it to the last bit.</param>
public sealed record LeadContributions(ImmutableArray<double> ByCriterion, double Lead)
{
    /// <summary>Takes the lead of one alternative over another apart.</summary>
    /// <param name="values">Values of the alternatives.</param>
    /// <param name="weights">What the order allows.</param>
    /// <param name="one">Number of the one.</param>
    /// <param name="other">Number of the other.</param>
    /// <exception cref="ArgumentException">Values and weights have different numbers of criteria.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such alternative.</exception>
    public static LeadContributions Of(CriterionValues values, WeightSet weights, int one, int other)
    {
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(weights);
        values.RequireCriteria(weights.Criteria);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)one, (uint)values.Alternatives, nameof(one));
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)other, (uint)values.Alternatives, nameof(other));
        double[] means = values.Means();
        return Of(weights, means.AsSpan(one * values.Criteria, values.Criteria), means.AsSpan(other * values.Criteria, values.Criteria));
    }

    /// <summary>Takes the lead of one alternative over another apart.</summary>
    /// <param name="weights">What the order allows.</param>
    /// <param name="one">Mean values of the one, by criterion.</param>
    /// <param name="other">Mean values of the other, by criterion.</param>
    public static LeadContributions Of(WeightSet weights, ReadOnlySpan<double> one, ReadOnlySpan<double> other)
    {
        ArgumentNullException.ThrowIfNull(weights);
        var parts = ImmutableArray.CreateBuilder<double>(one.Length);
        double lead = 0;
        for (int criterion = 0; criterion < one.Length; criterion++)
        {
            double part = weights.Centroid[criterion] * (one[criterion] - other[criterion]);
            parts.Add(part);
            lead += part;
        }

        return new(parts.MoveToImmutable(), lead);
    }
}
