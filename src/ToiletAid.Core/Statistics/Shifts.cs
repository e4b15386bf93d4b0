using System.Collections.Immutable;

namespace ToiletAid.Core.Statistics;

/// <summary>How far groups lie from what was predicted: what they share, and each by itself.</summary>
/// <param name="Common">What all groups share.</param>
/// <param name="Groups">Each group, with what all share in it.</param>
/// <param name="Unseen">A group of which nothing was seen.</param>
public sealed record Shifts(Shift Common, ImmutableArray<Shift> Groups, Shift Unseen)
{
    /// <summary>Beliefs under several spreads between groups, of which one holds, as one.</summary>
    internal static Shifts Mixed(IReadOnlyCollection<(double LogProbability, Shifts Shifts)> beliefs)
    {
        double most = beliefs.Max(b => b.LogProbability), all = beliefs.Sum(b => Math.Exp(b.LogProbability - most));
        (double Probability, Shifts Shifts)[] weighted = [.. beliefs.Select(b => (Math.Exp(b.LogProbability - most) / all, b.Shifts))];
        return new(
            Of(s => s.Common),
            [.. Enumerable.Range(0, weighted[0].Shifts.Groups.Length).Select(g => Of(s => s.Groups[g]))],
            Of(s => s.Unseen));

        Shift Of(Func<Shifts, Shift> which) => Shift.Mixed([.. weighted.Select(w => (w.Probability, which(w.Shifts)))]);
    }
}
