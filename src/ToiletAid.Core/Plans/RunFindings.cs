using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Plans;

/// <summary>What a run says about the values of the plan.</summary>
/// <param name="WasTried">False when it says nothing.</param>
/// <param name="Failures">What made it fail; empty when it did not.</param>
/// <param name="Seen">The value that was seen on each criterion, in their order; null where the run says no more than was predicted.</param>
public sealed record RunFindings(bool WasTried, ImmutableArray<TrialFinding> Failures, ImmutableArray<double?> Seen)
{
    /// <summary>What a run says.</summary>
    /// <param name="trials">What findings count for.</param>
    /// <param name="evidence">What effort counts for.</param>
    /// <param name="run">The run.</param>
    /// <param name="byHelper">True when another person does the cleaning.</param>
    public static RunFindings Of(TrialKnowledge trials, EvidenceTable evidence, TrialRun run, bool byHelper)
    {
        ArgumentNullException.ThrowIfNull(trials);
        ArgumentNullException.ThrowIfNull(evidence);
        ArgumentNullException.ThrowIfNull(run);
        TrialFinding[] findings = [.. trials.Of(run, byHelper)];
        double?[] seen = new double?[Criteria.Count];
        if (findings.Any(f => f.NotTried))
        {
            return new(false, [], [.. seen]);
        }

        // What did not fail has got to the skin.
        See(seen, Criterion.Reach, 1);
        foreach (var count in findings.SelectMany(f => f.Counts))
        {
            See(seen, count.Criterion, count.Value.Value);
        }

        if (run.Effort is { } effort)
        {
            See(seen, Criterion.Handling, Effort(evidence, effort));
        }

        return new(true, [.. findings.Where(f => f.Fails is not null)], [.. seen]);
    }

    /// <summary>The worst that was seen counts.</summary>
    private static void See(double?[] seen, Criterion criterion, double value) => seen[(int)criterion] = Math.Min(seen[(int)criterion] ?? 1, value);

    private static double Effort(EvidenceTable evidence, int effort) =>
        effort <= evidence.Value(EvidenceIds.TrialEffortLight) ? 1
        : effort < evidence.Value(EvidenceIds.TrialEffortHard) ? evidence.Value(EvidenceIds.TrialEffortMiddleCounts)
        : evidence.Value(EvidenceIds.TrialEffortHardCounts);
}
