using ToiletAid.App.Files;
using ToiletAid.App.Typed;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.App.Wording;

/// <summary>Trials as sentences to be read aloud.</summary>
/// <param name="knowledge">What trials can find, and the kinds of aid.</param>
public sealed class TrialText(KnowledgeBase knowledge)
{
    /// <summary>The trial as it was noted.</summary>
    public IEnumerable<string> Lines(PastTrial past)
    {
        yield return $"Tried on {IsoDay.Of(past.Date)}: {PlanText.Lower(Plan(past.Trial.Plan))}.";
        if (past.Trial.Before is { } before)
        {
            yield return $"Until then: {Level(before)}.";
        }

        foreach (var run in past.Trial.Runs)
        {
            yield return Run(run);
        }

        if (past.Trial.Goal is { } goal)
        {
            yield return $"Goal: {Level(goal)}.";
        }
    }

    /// <summary>One try in sentences.</summary>
    public string Run(TrialRun run) => $"{(run.Kind == RunKind.Dry ? "Dry and clothed" : "For real")}: {string.Join(' ', Findings(run))}";

    /// <summary>What a try found, a sentence each.</summary>
    public IEnumerable<string> Findings(TrialRun run) =>
    [
        .. run.Level is { } level ? [Spoken.Capital(Level(level)) + "."] : (string[])[],
        .. knowledge.Trials.Cleanliness.Where(c => c.Id == run.Cleanliness).Select(c => c.Label + "."),
        .. run.Minutes is { } minutes ? [$"{Spoken.Number(minutes)} {(minutes == 1 ? "minute" : "minutes")}."] : (string[])[],
        .. run.Effort is { } effort ? [$"Effort {effort} of 10."] : (string[])[],
        .. run.Problems.IsEmpty ? ["No problems noted."] : knowledge.Trials.Problems.Where(p => run.Problems.Contains(p.Id)).Select(p => p.Label + "."),
    ];

    /// <summary>A level with its code.</summary>
    public string Level(string code) => knowledge.Trials.Levels.FirstOrDefault(l => l.Id == code) is { } level ? $"level {code}, {PlanText.Lower(level.Label)}" : $"level {code}";

    /// <summary>The plan in words; one of a stock that is not at hand by the id of its method.</summary>
    public string Plan(TriedPlan plan) => plan.In(knowledge.Catalogue) is { } known ? PlanText.Name(known) : plan.Aid;

    /// <summary>How the ranking moved because of a trial.</summary>
    public static IEnumerable<string> Moved(RankedPlan tried, Advice after)
    {
        string name = PlanText.Method(tried.Plan);
        var now = after.Ranked.FirstOrDefault(r => r.Plan.Aid.KindId == tried.Plan.Aid.KindId);
        yield return now is null ? $"{Spoken.Capital(name)} can no longer be offered."
            : now.Rank == tried.Rank ? $"The trial counts for more than the calculation. {Spoken.Capital(name)} stays in place {now.Rank}."
            : $"The trial counts for more than the calculation. {Spoken.Capital(name)} moves from place {tried.Rank} to place {now.Rank}.";
        if (now is not null)
        {
            if (now.Plan.Key != tried.Plan.Key)
            {
                yield return $"The best plan with it is now: {PlanText.Lower(PlanText.Name(now.Plan))}.";
            }

            yield return $"Its value was {SlotText.OfHundred(tried.Value)} of 100 and is now {SlotText.OfHundred(now.Value)}.";
        }

        if (after.Ranked.FirstOrDefault() is { } first)
        {
            yield return $"First now: {PlanText.Lower(PlanText.Name(first.Plan))}.";
        }
    }
}
