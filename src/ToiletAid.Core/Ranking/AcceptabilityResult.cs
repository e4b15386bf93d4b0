using System.Collections.Immutable;

namespace ToiletAid.Core.Ranking;

/// <summary>How alternatives rank over all weights that an order allows and over the value draws.</summary>
/// <remarks>Alternatives and criteria are numbered from 0, ranks from 0 (first) too.</remarks>
public sealed class AcceptabilityResult
{
    private readonly double[] _ranks;
    private readonly double[] _wins;

    internal AcceptabilityResult(CriterionValues values, WeightSample weights, RankTally tally)
    {
        Alternatives = values.Alternatives;
        Draws = weights.Count;
        ValueDraws = Math.Min(values.Draws, weights.Count);
        _ranks = new double[Alternatives * Alternatives];
        _wins = new double[Alternatives * Alternatives];
        for (int i = 0; i < Alternatives; i++)
        {
            for (int k = 0; k < Alternatives; k++)
            {
                _ranks[(i * Alternatives) + k] = tally.Ranks.Share(i, k, Draws);
                _wins[(i * Alternatives) + k] = tally.Wins[(i * Alternatives) + k] / (double)Draws;
            }
        }

        ExpectedValues = [.. Ranking.ExpectedValues.Of(values, weights.Set)];
        CentralWeights = Central(tally, values.Criteria);
        ConfidenceFactors = Confidence(values);
        FirstRankHalfWidths = HalfWidths(tally);
    }

    /// <summary>Number of alternatives.</summary>
    public int Alternatives { get; }

    /// <summary>Number of weight draws that were counted.</summary>
    public int Draws { get; }

    /// <summary>Number of different value draws among them.</summary>
    public int ValueDraws { get; }

    /// <summary>Mean weighted sum of each alternative; free of weight sampling error.</summary>
    public ImmutableArray<double> ExpectedValues { get; }

    /// <summary>For each alternative the mean of the weights with which it comes first; null when it never does.</summary>
    /// <remarks>Rests on <see cref="Draws"/> times the first-rank share: unreliable when that share is very small.</remarks>
    public ImmutableArray<ImmutableArray<double>?> CentralWeights { get; }

    /// <summary>For each alternative the share of all value draws in which it comes first with its central weights; null when it never comes
    /// first. Ties count by their part.</summary>
    public ImmutableArray<double?> ConfidenceFactors { get; }

    /// <summary>95 % half-width of each first-rank share, from what was drawn.</summary>
    /// <remarks>When value draws were used several times, it is taken from the spread between value draws, because those draws are not
    /// independent; then it can be much wider than the number of weight draws suggests.</remarks>
    public ImmutableArray<double> FirstRankHalfWidths { get; }

    /// <summary>Share of the draws in which an alternative has a rank.</summary>
    /// <param name="alternative">Number of the alternative.</param>
    /// <param name="rank">0 for first.</param>
    /// <returns>0 to 1. Shares add up to 1 over the ranks of an alternative and over the alternatives of a rank: alternatives with exactly
    /// equal sums divide the ranks that they cover equally. (Sums that are equal on paper but were added from different values may
    /// differ in the last bit; then that bit decides.)</returns>
    public double RankShare(int alternative, int rank) => _ranks[At(alternative, rank)];

    /// <summary>Share of the draws in which an alternative comes first.</summary>
    /// <param name="alternative">Number of the alternative.</param>
    public double FirstRankShare(int alternative) => RankShare(alternative, 0);

    /// <summary>Share of the draws in which one alternative is strictly better than another.</summary>
    /// <param name="alternative">Number of the one.</param>
    /// <param name="other">Number of the other.</param>
    /// <returns>0 to 1; both ways round and the share of exact ties add up to 1.</returns>
    public double PairwiseWinningShare(int alternative, int other) => _wins[At(alternative, other)];

    private ImmutableArray<ImmutableArray<double>?> Central(RankTally tally, int criteria)
    {
        var central = ImmutableArray.CreateBuilder<ImmutableArray<double>?>(Alternatives);
        for (int i = 0; i < Alternatives; i++)
        {
            double draws = FirstRankShare(i) * Draws;
            var sums = tally.FirstWeights.AsSpan(i * criteria, criteria).ToArray();
            central.Add(draws > 0 ? [.. sums.Select(sum => sum / draws)] : null);
        }

        return central.MoveToImmutable();
    }

    private ImmutableArray<double?> Confidence(CriterionValues values)
    {
        var confidence = ImmutableArray.CreateBuilder<double?>(Alternatives);
        for (int i = 0; i < Alternatives; i++)
        {
            confidence.Add(CentralWeights[i] is { } weights ? FirstRank.SharesAt(values, weights.AsSpan())[i] : null);
        }

        return confidence.MoveToImmutable();
    }

    private ImmutableArray<double> HalfWidths(RankTally tally)
    {
        var widths = ImmutableArray.CreateBuilder<double>(Alternatives);
        int[] trials = new int[ValueDraws];
        for (int draw = 0; draw < trials.Length; draw++)
        {
            trials[draw] = (Draws / ValueDraws) + (draw < Draws % ValueDraws ? 1 : 0);
        }

        bool clustered = ValueDraws > 1 && tally.FirstByValueDraw.Length > 0;
        for (int i = 0; i < Alternatives; i++)
        {
            widths.Add(clustered
                ? SamplingError.ClusteredHalfWidth(tally.FirstByValueDraw.AsSpan(i * ValueDraws, ValueDraws), trials)
                : SamplingError.HalfWidth(Math.Min(1, FirstRankShare(i)), Draws));
        }

        return widths.MoveToImmutable();
    }

    private int At(int alternative, int column)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)alternative, (uint)Alternatives, nameof(alternative));
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)column, (uint)Alternatives, nameof(column));
        return (alternative * Alternatives) + column;
    }
}
