using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Outcomes;

/// <summary>What came out with one person.</summary>
/// <param name="Tries">First tries, one for each kind that was tried.</param>
/// <param name="Unknown">Tries of plans that the catalogue does not hold.</param>
/// <param name="Before">Code of the level of help before the first trial; null when not noted.</param>
/// <param name="After">Code of the level of help at the last trial; null when not noted.</param>
/// <param name="Goal">Code of the goal that was noted last; null when none was.</param>
/// <param name="DaysFollowed">Days from the first trial to the last visit; null when nothing was tried.</param>
public sealed record PersonOutcome(ImmutableArray<FirstTry> Tries, int Unknown, string? Before, string? After, string? Goal, int? DaysFollowed)
{
    /// <summary>What came out with a person.</summary>
    /// <param name="knowledge">What is known beforehand.</param>
    /// <param name="profile">The person.</param>
    /// <param name="predict">Predicts where the trial does not hold what was predicted.</param>
    public static PersonOutcome Of(KnowledgeBase knowledge, Profile profile, Func<Answers, Plan, TrialPrediction> predict)
    {
        ArgumentNullException.ThrowIfNull(knowledge);
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(predict);
        var tries = ImmutableArray.CreateBuilder<FirstTry>();
        int unknown = 0;
        for (int visit = 0; visit < profile.Sessions.Length; visit++)
        {
            var trials = profile.Sessions[visit].Trials;
            for (int i = 0; i < trials.Length; i++)
            {
                var trial = trials[i];
                if (trial.Plan.In(knowledge.Catalogue) is not { } plan)
                {
                    unknown++;
                    continue;
                }

                if (tries.Any(t => t.Aid == plan.Aid.KindId) || Deciding(knowledge, plan, trial) is not { } run)
                {
                    continue;
                }

                var known = profile.KnownAt(visit).Answers;
                known = known.With(known.Trials[..^(trials.Length - i)]);
                tries.Add(new()
                {
                    Aid = plan.Aid.KindId,
                    Predicted = trial.Predicted ?? predict(known, plan),
                    Decided = run.Run.Kind,
                    Findings = run.Findings,
                    Problems = run.Run.Problems,
                    Known = known,
                });
            }
        }

        var all = profile.Tried;
        return new(
            tries.ToImmutable(),
            unknown,
            all.Select(t => t.Trial.Before).FirstOrDefault(b => b is not null),
            all.Select(t => t.Trial.After).LastOrDefault(a => a is not null),
            all.Select(t => t.Trial.Goal).LastOrDefault(g => g is not null),
            all.IsEmpty ? null : profile.Sessions.Max(s => s.Date).DayNumber - all.Min(t => t.Date).DayNumber);
    }

    /// <summary>The last run in which the plan was really tried; null when there is none.</summary>
    private static (TrialRun Run, RunFindings Findings)? Deciding(KnowledgeBase knowledge, Plan plan, Trial trial)
    {
        foreach (var run in trial.Runs.Reverse())
        {
            var findings = RunFindings.Of(knowledge.Trials, knowledge.Evidence, run, plan.Aid.Method == MethodKind.Helper);
            if (findings.WasTried)
            {
                return (run, findings);
            }
        }

        return null;
    }
}
