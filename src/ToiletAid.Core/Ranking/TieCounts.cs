namespace ToiletAid.Core.Ranking;

/// <summary>How often each alternative stood where, kept as whole numbers so that the order of counting cannot matter.</summary>
/// <remarks>An alternative that is tied with others takes an equal part of each rank that they cover together. Counts are kept by the size of
/// the tie and the best rank covered; the parts are worked out once, at the end.</remarks>
internal sealed class TieCounts(int alternatives, int ranks)
{
    private readonly long[]?[] _byTie = new long[]?[alternatives + 1];

    /// <summary>Counts of one size of tie, by alternative and best rank covered (from 0); size 1 is no tie.</summary>
    public long[] Of(int tied) => _byTie[tied] ??= new long[alternatives * ranks];

    public void Add(TieCounts other)
    {
        for (int tied = 1; tied <= alternatives; tied++)
        {
            if (other._byTie[tied] is { } counts)
            {
                long[] mine = Of(tied);
                for (int i = 0; i < counts.Length; i++)
                {
                    mine[i] += counts[i];
                }
            }
        }
    }

    public void Clear()
    {
        foreach (long[]? counts in _byTie)
        {
            counts?.AsSpan().Clear();
        }
    }

    /// <summary>The share of the draws in which an alternative has a rank, parts of ties included.</summary>
    public double Share(int alternative, int rank, long draws)
    {
        double sum = 0;
        for (int tied = 1; tied <= alternatives; tied++)
        {
            if (_byTie[tied] is { } counts)
            {
                long covering = 0;
                for (int best = Math.Max(0, rank - tied + 1); best <= rank; best++)
                {
                    covering += counts[(alternative * ranks) + best];
                }

                sum += covering / (double)tied;
            }
        }

        return sum / draws;
    }
}
