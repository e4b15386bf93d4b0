using System.Collections.Immutable;

namespace ToiletAid.Core.Statistics;

/// <summary>How much more often tries fail than was predicted, on the scale of log odds, by groups that learn from each other.</summary>
/// <remarks>A try of group g with the predicted log odds o fails with the log odds o + c + g. The shift c that all groups share is normal with mean 0, and
/// so is the own shift of each group; how far groups differ is one of a few spreads. Few tries leave a shift near 0 and near that of the others,
/// many bring it to what was seen. The mode is found by Newton's method, and the belief is normal around it (Laplace).</remarks>
public static class FailureShifts
{
    private const int MostSteps = 100;
    private const double Near = 1e-10;

    /// <summary>What is believed after the tries.</summary>
    /// <param name="groups">Tries by group; those with the same predicted log odds of failing may be put together.</param>
    /// <param name="prior">What is believed beforehand.</param>
    public static Shifts Fit(ImmutableArray<ImmutableArray<Tries>> groups, SpreadPrior prior)
    {
        ArgumentNullException.ThrowIfNull(prior);
        return Shifts.Mixed([.. prior.Groups.Select(p => With(groups, prior.Common, p.Spread, Math.Log(p.Probability)))]);
    }

    private static (double LogProbability, Shifts Shifts) With(ImmutableArray<ImmutableArray<Tries>> groups, double commonSpread, double groupSpread, double logPrior)
    {
        double commonPrecision = 1 / (commonSpread * commonSpread), groupPrecision = 1 / (groupSpread * groupSpread);
        double common = 0;
        double[] own = new double[groups.Length];
        var at = Slope.Of(groups, common, own, commonPrecision, groupPrecision);
        for (int step = 0; step < MostSteps; step++)
        {
            var (byCommon, byOwn) = at.Newton();

            // The function is concave, so half a step is good enough wherever a whole one goes too far.
            double size = 1;
            var next = Try();
            while (next.LogPosterior < at.LogPosterior && size > Near)
            {
                size /= 2;
                next = Try();
            }

            (common, own) = (common + (size * byCommon), [.. own.Select((o, g) => o + (size * byOwn[g]))]);
            bool there = next.LogPosterior - at.LogPosterior < Near;
            at = next;
            if (there)
            {
                break;
            }

            Slope Try() => Slope.Of(groups, common + (size * byCommon), [.. own.Select((o, g) => o + (size * byOwn[g]))], commonPrecision, groupPrecision);
        }

        double logDeterminant = Math.Log(at.Schur) + at.Diagonal.Sum(Math.Log);
        double logProbability = logPrior + at.LogPosterior + (0.5 * (Math.Log(commonPrecision) + (groups.Length * Math.Log(groupPrecision)) - logDeterminant));
        double ofCommon = 1 / at.Schur;
        return (logProbability, new(
            new(common, ofCommon),
            [.. own.Select((o, g) => new Shift(common + o, (1 / at.Diagonal[g]) + (Math.Pow(1 - (at.Cross[g] / at.Diagonal[g]), 2) * ofCommon)))],
            new(common, ofCommon + (1 / groupPrecision))));
    }

    /// <summary>Value, slope and curvature of the logarithm of the posterior. Own shifts meet only the common one, so the curvature is an arrow.</summary>
    private sealed record Slope(double LogPosterior, double ByCommon, double[] ByOwn, double[] Cross, double[] Diagonal, double Schur)
    {
        internal static Slope Of(ImmutableArray<ImmutableArray<Tries>> groups, double common, double[] own, double commonPrecision, double groupPrecision)
        {
            double value = -0.5 * commonPrecision * common * common, byCommon = -commonPrecision * common, curvature = commonPrecision;
            double[] byOwn = new double[own.Length], cross = new double[own.Length], diagonal = new double[own.Length];
            for (int g = 0; g < own.Length; g++)
            {
                double slope = 0;
                foreach (var tries in groups[g])
                {
                    double odds = tries.LogOdds + common + own[g], chance = 1 / (1 + Math.Exp(-odds));
                    value += (tries.Failed * odds) - (tries.Count * (Math.Max(odds, 0) + Math.Log(1 + Math.Exp(-Math.Abs(odds)))));
                    slope += tries.Failed - (tries.Count * chance);
                    cross[g] += tries.Count * chance * (1 - chance);
                }

                value -= 0.5 * groupPrecision * own[g] * own[g];
                byCommon += slope;
                byOwn[g] = slope - (groupPrecision * own[g]);
                diagonal[g] = cross[g] + groupPrecision;
                curvature += cross[g];
            }

            return new(value, byCommon, byOwn, cross, diagonal, curvature - cross.Zip(diagonal, (c, d) => c * c / d).Sum());
        }

        internal (double Common, double[] Own) Newton()
        {
            double common = (ByCommon - Cross.Select((c, g) => c / Diagonal[g] * ByOwn[g]).Sum()) / Schur;
            return (common, [.. ByOwn.Select((b, g) => (b - (Cross[g] * common)) / Diagonal[g])]);
        }
    }
}
