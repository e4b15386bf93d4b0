using System.Collections.Immutable;
using ToiletAid.Core.Evidence;

namespace ToiletAid.Core.Statistics;

/// <summary>What is believed beforehand of how far predictions are off.</summary>
/// <param name="Common">Standard deviation of the shift that all groups of a clinic share.</param>
/// <param name="Groups">Standard deviations between groups that are held possible, each with its probability.</param>
public sealed record SpreadPrior(double Common, ImmutableArray<(double Spread, double Probability)> Groups)
{
    /// <summary>The spread between groups is not known either: its most plausible value counts half, the ends of its range a quarter each.</summary>
    /// <param name="common">Spread of what all groups share.</param>
    /// <param name="groups">Spread between groups.</param>
    public static SpreadPrior Of(Sourced common, Sourced groups)
    {
        ArgumentNullException.ThrowIfNull(common);
        ArgumentNullException.ThrowIfNull(groups);
        return new(common.Value, [(groups.Low, 0.25), (groups.Value, 0.5), (groups.High, 0.25)]);
    }
}
