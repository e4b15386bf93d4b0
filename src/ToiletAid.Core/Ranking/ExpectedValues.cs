namespace ToiletAid.Core.Ranking;

/// <summary>The weighted sum that each alternative has on average, over the weights that an order allows and over the value draws.</summary>
/// <remarks>Weights and values are independent, so the mean of the sum is the sum of mean weight times mean value. The mean weight is known
/// exactly, and no sampling of weights adds to the error.</remarks>
public static class ExpectedValues
{
    /// <summary>Expected values of all alternatives.</summary>
    /// <param name="values">Values of the alternatives.</param>
    /// <param name="weights">What the order allows.</param>
    /// <returns>One number for each alternative, on the scale of the values.</returns>
    /// <exception cref="ArgumentException">Values and weights have different numbers of criteria.</exception>
    public static double[] Of(CriterionValues values, WeightSet weights)
    {
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(weights);
        values.RequireCriteria(weights.Criteria);
        double[] means = values.Means(), expected = new double[values.Alternatives];
        for (int i = 0; i < expected.Length; i++)
        {
            expected[i] = WeightedSum(means.AsSpan(i * values.Criteria, values.Criteria), weights.Centroid);
        }

        return expected;
    }

    /// <summary>The sum of weight times value, in ascending number of the criteria.</summary>
    /// <param name="values">One value for each criterion.</param>
    /// <param name="weights">One weight for each criterion.</param>
    internal static double WeightedSum(ReadOnlySpan<double> values, ReadOnlySpan<double> weights)
    {
        double sum = 0;
        for (int criterion = 0; criterion < weights.Length; criterion++)
        {
            sum += weights[criterion] * values[criterion];
        }

        return sum;
    }
}
