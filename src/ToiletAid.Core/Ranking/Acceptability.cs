namespace ToiletAid.Core.Ranking;

/// <summary>Stochastic multicriteria acceptability analysis: in which share of priorities and uncertain values each alternative ranks where.</summary>
/// <remarks>SMAA-2 of Lahdelma and Salminen (2001), Operations Research 49:444-454 (definitions from memory), with two decisions of this
/// project: tied alternatives divide the ranks that they cover, where the paper gives all of them the best of these ranks; and the
/// expected value uses the exact mean of the weights.</remarks>
public static class Acceptability
{
    /// <summary>Draws that are counted together. Sums are built chunk by chunk in order, so threads cannot change a bit.</summary>
    internal const int ChunkDraws = 1024;

    /// <summary>Ranks the alternatives in every draw.</summary>
    /// <param name="values">Values of the alternatives.</param>
    /// <param name="weights">Sampled weights; weight draw d meets value draw d modulo the number of value draws.</param>
    /// <param name="forEach">Calls its second argument once with every number from 0 up to before its first, in any order and on any threads,
    /// and returns when all are done; null counts on the calling thread. Never changes the result.</param>
    /// <exception cref="ArgumentException">Values and weights have different numbers of criteria.</exception>
    public static AcceptabilityResult Of(CriterionValues values, WeightSample weights, Action<int, Action<int>>? forEach = null)
    {
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(weights);
        values.RequireCriteria(weights.Criteria);
        int chunks = (weights.Count + ChunkDraws - 1) / ChunkDraws;
        RankTally total = new(values, weights);
        if (forEach is null)
        {
            RankTally part = new(values, weights);
            for (int chunk = 0; chunk < chunks; chunk++)
            {
                part.Clear();
                CountChunk(part, chunk, weights.Count);
                total.Add(part);
            }
        }
        else
        {
            var parts = new RankTally[chunks];
            forEach(chunks, chunk =>
            {
                RankTally part = new(values, weights);
                CountChunk(part, chunk, weights.Count);
                parts[chunk] = part;
            });
            foreach (var part in parts)
            {
                total.Add(part);
            }
        }

        return new(values, weights, total);
    }

    private static void CountChunk(RankTally part, int chunk, int draws) =>
        part.Count(chunk * ChunkDraws, Math.Min(draws, (chunk + 1) * ChunkDraws));
}
