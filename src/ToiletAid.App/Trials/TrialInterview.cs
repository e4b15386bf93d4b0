using System.Collections.Immutable;
using System.Globalization;
using ToiletAid.App.Sessions;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.App.Trials;

/// <summary>Asks about a trial, one thing after another: which plan, how much help before and wanted, then the dry and the real try.</summary>
public sealed class TrialInterview
{
    private readonly ImmutableArray<RankedPlan> _plans;
    private readonly TrialKnowledge _knowledge;
    private readonly RunAnswers _dry;
    private readonly RunAnswers _real;
    private readonly List<string> _answered = [];
    private RankedPlan? _plan;
    private string? _before;
    private string? _goal;

    /// <summary>Begins.</summary>
    /// <param name="plans">Plans that can be tried, best first.</param>
    /// <param name="knowledge">What trials can find.</param>
    public TrialInterview(ImmutableArray<RankedPlan> plans, TrialKnowledge knowledge)
    {
        _plans = plans;
        _knowledge = knowledge;
        _dry = new(RunKind.Dry, knowledge);
        _real = new(RunKind.Real, knowledge);
    }

    /// <summary>Ids of everything that can be asked.</summary>
    public static ImmutableArray<string> Ids { get; } =
    [
        "plan", "before", "goal", "dry", "dry-level", "dry-minutes", "dry-effort", "dry-problems", "real", "real-level", "real-cleanliness", "real-minutes", "real-effort", "real-problems",
    ];

    /// <summary>Number of the current step, from 1.</summary>
    public int Position => _answered.Count + 1;

    /// <summary>True when nothing is left to ask.</summary>
    public bool IsDone => Current is null;

    /// <summary>Id of what is asked now; null at the end.</summary>
    public string? Asked => Current?.Id;

    /// <summary>What may be typed, short.</summary>
    public string Wanted => Current is { } step ? step.MayBeUnknown ? $"{step.Wanted}, or unknown" : step.Wanted : string.Empty;

    /// <summary>The answers that are offered; empty where a number is asked.</summary>
    public ImmutableArray<TrialChoice> Choices => Current?.Choices ?? [];

    /// <summary>True when several of them can be given at once.</summary>
    public bool TakesMany => Current is { TakesMany: true };

    /// <summary>The plan that was tried; null until it is chosen.</summary>
    public RankedPlan? Plan => _plan;

    /// <summary>The trial; null when nothing was tried.</summary>
    public Trial? Result => _plan is { } plan && Runs.ToImmutableArray() is { IsEmpty: false } runs
        ? new() { Plan = TriedPlan.Of(plan.Plan), Before = _before, Goal = _goal, Runs = runs }
        : null;

    private IEnumerable<TrialRun> Runs => ((RunAnswers[])[_dry, _real]).Where(r => r.WasTried == true).Select(r => r.Run);

    private ImmutableArray<TrialFinding> Goals => _knowledge.Levels.RemoveAll(l => l.NotTried);

    private TrialStep? Current => Steps().FirstOrDefault(s => !_answered.Contains(s.Id));

    /// <summary>What is asked, as lines.</summary>
    public IEnumerable<string> Asking() => Current?.Asking ?? [];

    /// <summary>How to find out, as lines.</summary>
    public IEnumerable<string> Help() => Current?.Help ?? [];

    /// <summary>Takes an answer.</summary>
    public Reply Submit(string text)
    {
        var step = Current!;
        string typed = text.Trim();
        if (step.MayBeUnknown && typed.Equals("unknown", StringComparison.OrdinalIgnoreCase))
        {
            _answered.Add(step.Id);
            return new(true, "Not known.");
        }

        var reply = step.Take(typed);
        if (reply.Accepted)
        {
            _answered.Add(step.Id);
        }

        return reply;
    }

    /// <summary>Goes back to the step before; false at the first one.</summary>
    public bool Back()
    {
        if (_answered.Count == 0)
        {
            return false;
        }

        string step = _answered[^1];
        _answered.RemoveAt(_answered.Count - 1);
        switch (step)
        {
            case "plan": _plan = null; break;
            case "before": _before = null; break;
            case "goal": _goal = null; break;
            default: (step.StartsWith("dry", StringComparison.Ordinal) ? _dry : _real).Forget(step); break;
        }

        return true;
    }

    private IEnumerable<TrialStep> Steps() =>
    [
        new(
            "plan",
            ["Which plan is tried?", .. _plans.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Rank}. {PlanText.Name(p.Plan)}."))],
            $"Number from 1 to {_plans.Length}",
            ["The numbers are the places of the shortlist. An aid that is ruled out is not tried."],
            ChoosePlan,
            MayBeUnknown: false)
        { Choices = [.. _plans.Select(p => new TrialChoice(p.Rank.ToString(CultureInfo.InvariantCulture), PlanText.Name(p.Plan)) { Brief = p.Plan.Aid.Name })] },
        new("before", ["How much help was needed until now?", .. TrialTyping.Codes(_knowledge.Levels)], "Code", TrialTyping.AboutLevels, t => Level(t, _knowledge.Levels, id => _before = id)) { Choices = TrialTyping.Choices(_knowledge.Levels) },
        new("goal", ["What is the goal, the most help that should be needed?", .. TrialTyping.Codes(Goals)], "Code", ["The goal that was agreed with the person, on the same levels."], t => Level(t, Goals, id => _goal = id)) { Choices = TrialTyping.Choices(Goals) },
        .. _dry.Steps(),
        .. _real.Steps(),
    ];

    private Reply ChoosePlan(string text)
    {
        _plan = int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int place)
            ? _plans.FirstOrDefault(p => p.Rank == place)
            : _plans.FirstOrDefault(p => p.Plan.Aid.Id.Equals(text, StringComparison.OrdinalIgnoreCase) || p.Plan.Aid.KindId.Equals(text, StringComparison.OrdinalIgnoreCase));
        return _plan is { } plan ? new(true, $"{PlanText.Name(plan.Plan)}.") : new(false, $"Not one of the plans on offer. Type a number from 1 to {_plans.Length}.");
    }

    private static Reply Level(string text, ImmutableArray<TrialFinding> levels, Action<string> keep)
    {
        if (TrialTyping.Level(text, levels) is not { } level)
        {
            return new(false, TrialTyping.NoLevel(levels));
        }

        keep(level.Id);
        return new(true, TrialTyping.Said(level));
    }
}
