using System.Collections.Immutable;

namespace ToiletAid.Core.Ranking;

/// <summary>Exact shares of the allowed weights, up to rounding.</summary>
public sealed class ExactShares
{
    private readonly double[] _ranks;
    private readonly ImmutableArray<double>?[] _central;

    internal ExactShares(int alternatives, int criteria, double[] rankVolumes, Dictionary<int, double[]> firstMoments)
    {
        Alternatives = alternatives;
        double whole = 0;
        for (int rank = 0; rank < alternatives; rank++)
        {
            whole += rankVolumes[rank];
        }

        _ranks = new double[rankVolumes.Length];
        for (int i = 0; i < _ranks.Length; i++)
        {
            _ranks[i] = rankVolumes[i] / whole;
        }

        _central = new ImmutableArray<double>?[alternatives];
        foreach (var (alternative, moment) in firstMoments)
        {
            var central = ImmutableArray.CreateBuilder<double>(criteria);
            for (int criterion = 0; criterion < criteria; criterion++)
            {
                central.Add(moment[criterion] / rankVolumes[alternative * alternatives]);
            }

            _central[alternative] = central.MoveToImmutable();
        }
    }

    /// <summary>Number of alternatives.</summary>
    public int Alternatives { get; }

    /// <summary>Share of the weights with which an alternative has a rank; tied alternatives divide the ranks that they cover.</summary>
    /// <param name="alternative">Number of the alternative, from 0.</param>
    /// <param name="rank">0 for first.</param>
    public double RankShare(int alternative, int rank)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)alternative, (uint)Alternatives, nameof(alternative));
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)rank, (uint)Alternatives, nameof(rank));
        return _ranks[(alternative * Alternatives) + rank];
    }

    /// <summary>Mean of the weights with which an alternative comes first; null when it never does.</summary>
    /// <param name="alternative">Number of the alternative, from 0.</param>
    public ImmutableArray<double>? CentralWeights(int alternative) => _central[alternative];
}
