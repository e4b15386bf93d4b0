using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Knowledge;

/// <summary>What trials can find, and what it counts for.</summary>
/// <param name="Levels">Levels of help, most independent first, then reasons for not trying.</param>
/// <param name="Cleanliness">How clean it got, best first.</param>
/// <param name="Problems">What can go wrong.</param>
public sealed record TrialKnowledge(ImmutableArray<TrialFinding> Levels, ImmutableArray<TrialFinding> Cleanliness, ImmutableArray<TrialFinding> Problems)
{
    /// <summary>Everything that a run found.</summary>
    /// <param name="run">The run.</param>
    /// <param name="byHelper">True when another person does the cleaning, so that the level of help says nothing against the plan.</param>
    public IEnumerable<TrialFinding> Of(TrialRun run, bool byHelper)
    {
        ArgumentNullException.ThrowIfNull(run);
        return [.. Levels.Where(l => l.Id == run.Level && (!byHelper || l.NotTried)), .. Cleanliness.Where(c => c.Id == run.Cleanliness), .. Problems.Where(p => run.Problems.Contains(p.Id))];
    }
}
