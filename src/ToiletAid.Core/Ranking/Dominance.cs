namespace ToiletAid.Core.Ranking;

/// <summary>What holds for every weight vector that an order allows.</summary>
/// <remarks>Kirkwood and Sarin (1985), Operations Research 33:38-48 (from memory): a weighted sum is linear in the weights, so its extremes over the
/// set lie at the corners, and comparing there is exact.</remarks>
public static class Dominance
{
    /// <summary>The least lead of one alternative over another.</summary>
    /// <param name="weights">What the order allows.</param>
    /// <param name="one">Values of the one, by criterion; with uncertain values the lower ends.</param>
    /// <param name="other">Values of the other, by criterion; with uncertain values the upper ends.</param>
    /// <returns>On the scale of the values; negative when some allowed weights put the other ahead.</returns>
    /// <exception cref="ArgumentException">A list does not have one value for each criterion.</exception>
    public static double LeastLead(WeightSet weights, ReadOnlySpan<double> one, ReadOnlySpan<double> other)
    {
        ArgumentNullException.ThrowIfNull(weights);
        return weights.Least(Differences(one, other));
    }

    /// <summary>The greatest lead of one alternative over another.</summary>
    /// <param name="weights">What the order allows.</param>
    /// <param name="one">Values of the one, by criterion; with uncertain values the upper ends.</param>
    /// <param name="other">Values of the other, by criterion; with uncertain values the lower ends.</param>
    /// <returns>On the scale of the values.</returns>
    /// <exception cref="ArgumentException">A list does not have one value for each criterion.</exception>
    public static double GreatestLead(WeightSet weights, ReadOnlySpan<double> one, ReadOnlySpan<double> other)
    {
        ArgumentNullException.ThrowIfNull(weights);
        return weights.Greatest(Differences(one, other));
    }

    /// <summary>Whether one alternative is never behind another, and ahead for some weights, whatever the weights.</summary>
    /// <param name="weights">What the order allows.</param>
    /// <param name="one">Values of the one, by criterion; with uncertain values the lower ends.</param>
    /// <param name="other">Values of the other, by criterion; with uncertain values the upper ends.</param>
    /// <remarks>With the ends of intervals it holds wherever the values lie in them, each criterion on its own. Rounding can only withhold
    /// the claim, and only when the alternatives are equal at a corner to the last digit.</remarks>
    /// <exception cref="ArgumentException">A list does not have one value for each criterion.</exception>
    public static bool Beats(WeightSet weights, ReadOnlySpan<double> one, ReadOnlySpan<double> other) =>
        LeastLead(weights, one, other) >= 0 && GreatestLead(weights, one, other) > 0;

    private static double[] Differences(ReadOnlySpan<double> one, ReadOnlySpan<double> other)
    {
        if (one.Length != other.Length)
        {
            throw new ArgumentException($"{one.Length} values against {other.Length}", nameof(other));
        }

        double[] differences = new double[one.Length];
        for (int criterion = 0; criterion < differences.Length; criterion++)
        {
            differences[criterion] = one[criterion] - other[criterion];
        }

        return differences;
    }
}
