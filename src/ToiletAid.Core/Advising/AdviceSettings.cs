namespace ToiletAid.Core.Advising;

/// <summary>How advice is computed. The same settings give the same bits.</summary>
public sealed record AdviceSettings
{
    /// <summary>Seed of every draw.</summary>
    public ulong Seed { get; init; } = 20260101;

    /// <summary>Simulated people for the values of plans, 1 or more.</summary>
    public int ValueDraws { get; init; } = 64;

    /// <summary>How plans are judged while questions are still being asked: fewer persons, so that the next question is there at once. The
    /// result is then computed with all of them.</summary>
    public static AdviceSettings WhileAsking { get; } = new() { ValueDraws = Advisor.AskingDraws };

    /// <summary>Weightings drawn, 1 or more. 9,604 keep a share of the weightings within one in a hundred, 95 times of 100 (Tervonen and Lahdelma 2007,
    /// the bound from memory). A share over persons too rests on <see cref="ValueDraws"/> and is less sure: see
    /// <see cref="Ranking.AcceptabilityResult.FirstRankHalfWidths"/>.</summary>
    public int WeightDraws { get; init; } = 9604;

    /// <summary>True to rank again with a weak and a strong grip where grip was not measured; false where nothing shows it. Never changes places.</summary>
    public bool AsksGrip { get; init; } = true;

    /// <summary>True to draw the numbers of aids, hands and other evidence from their ranges with the persons; false to take the most plausible ones.</summary>
    public bool DrawsNumbers { get; init; } = true;

    /// <summary>Does pieces of work, numbered from 0, that do not depend on each other. The core knows no threads: whoever has cores to spare gives one that
    /// uses them. Never changes advice.</summary>
    public Action<int, Action<int>> ForAll { get; init; } = OneByOne;

    /// <summary>Reaches that are kept, about 70 kB each with 64 persons, 1 or more: as many as one person's what-ifs need, or many where many
    /// people may give the same answers about reach. Never changes advice.</summary>
    public int ReachesKept { get; init; } = 256;

    /// <summary>Samples of weightings that are kept, some kilobytes each besides the drawn shapes that they share, 1 or more. Never changes advice.</summary>
    public int WeightingsKept { get; init; } = 16;

    private static void OneByOne(int count, Action<int> work)
    {
        for (int i = 0; i < count; i++)
        {
            work(i);
        }
    }
}
