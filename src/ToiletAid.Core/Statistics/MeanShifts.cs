using System.Collections.Immutable;

namespace ToiletAid.Core.Statistics;

/// <summary>How far means of groups lie from what was predicted, by groups that learn from each other.</summary>
/// <remarks>The mean of a group is normal around what all share plus its own shift, both normal around 0 (Lindley and Smith 1972, from memory), so everything
/// is in closed form: a group keeps the part of its own mean that its own precision has, and takes the rest from the others.</remarks>
public static class MeanShifts
{
    /// <summary>What is believed after the findings.</summary>
    /// <param name="groups">Mean difference from the prediction and its precision, one over the variance of that mean; above 0.</param>
    /// <param name="prior">What is believed beforehand.</param>
    public static Shifts Fit(ImmutableArray<(double Mean, double Precision)> groups, SpreadPrior prior)
    {
        ArgumentNullException.ThrowIfNull(prior);
        return Shifts.Mixed([.. prior.Groups.Select(p => With(groups, prior.Common, p.Spread, Math.Log(p.Probability)))]);
    }

    private static (double LogProbability, Shifts Shifts) With(ImmutableArray<(double Mean, double Precision)> groups, double commonSpread, double groupSpread, double logPrior)
    {
        double between = groupSpread * groupSpread, start = 1 / (commonSpread * commonSpread);
        double precision = start, sum = 0, squares = 0, logWeights = 0;
        foreach (var (mean, own) in groups)
        {
            double weight = 1 / ((1 / own) + between);
            precision += weight;
            sum += weight * mean;
            squares += weight * mean * mean;
            logWeights += Math.Log(weight);
        }

        double common = sum / precision;
        double logProbability = logPrior + (0.5 * (logWeights + Math.Log(start / precision) - squares + (sum * common)));
        return (logProbability, new(
            new(common, 1 / precision),
            [.. groups.Select(g =>
            {
                double shared = 1 / (1 + (between * g.Precision));
                return new Shift((shared * common) + ((1 - shared) * g.Mean), ((1 - shared) / g.Precision) + (shared * shared / precision));
            })],
            new(common, (1 / precision) + between)));
    }
}
