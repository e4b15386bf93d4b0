using System.Collections.Immutable;
using System.Globalization;
using ToiletAid.App.Files;
using ToiletAid.App.Sessions;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Trials;

/// <summary>What is asked about one try, and what was answered.</summary>
/// <param name="kind">Dry or for real.</param>
/// <param name="knowledge">What trials can find.</param>
internal sealed class RunAnswers(RunKind kind, TrialKnowledge knowledge)
{
    /// <summary>The try with what was answered until now.</summary>
    internal TrialRun Run { get; private set; } = new() { Kind = kind };

    /// <summary>True when the plan was tried this way; null until that was answered.</summary>
    internal bool? WasTried { get; set; }

    private string Prefix => kind == RunKind.Dry ? "dry" : "real";

    private bool Stopped => knowledge.Levels.Any(l => l.Id == Run.Level && l.NotTried);

    /// <summary>The steps that are open as things stand, answered or not.</summary>
    internal IEnumerable<TrialStep> Steps()
    {
        yield return new(
            Prefix,
            [kind == RunKind.Dry ? "Was it tried dry and clothed?" : "Was it tried for real?"],
            "yes or no",
            [kind == RunKind.Dry ? "A dry try shows whether it is got ready, reaches and lets go, without soil." : "A real try is one after using the toilet."],
            YesOrNo,
            MayBeUnknown: false)
        { Choices = [new("yes", "Yes"), new("no", "No")] };
        if (WasTried != true)
        {
            yield break;
        }

        yield return new($"{Prefix}-level", ["How much help was needed?", .. TrialTyping.Codes(knowledge.Levels)], "Code", TrialTyping.AboutLevels, Level) { Choices = TrialTyping.Choices(knowledge.Levels) };
        if (Stopped)
        {
            yield break;
        }

        if (kind == RunKind.Real)
        {
            yield return new("real-cleanliness", ["How clean did it get?", .. TrialTyping.Numbered(knowledge.Cleanliness)], $"Number from 1 to {knowledge.Cleanliness.Length}", ["Look at the last paper, or at the skin with a mirror if the person agrees."], Cleanliness)
            {
                Choices = TrialTyping.NumberedChoices(knowledge.Cleanliness),
            };
        }

        yield return new($"{Prefix}-minutes", ["How many minutes did it take?"], "Minutes", ["From getting ready to washed hands. Minutes are noted and change no ranking."], Minutes);
        yield return new($"{Prefix}-effort", ["How hard was it for the person, from 0 to 10?"], "0 to 10", ["0 is no effort and 10 the most they can think of. The person says the number."], Effort);
        yield return new($"{Prefix}-problems", ["What went wrong?", .. TrialTyping.Numbered(knowledge.Problems)], "Numbers with spaces between them, or none", ["A step that could not be done at all counts as a failed try."], Problems)
        {
            Choices = TrialTyping.NumberedChoices(knowledge.Problems),
            TakesMany = true,
        };
    }

    /// <summary>Forgets the answer to a step.</summary>
    internal void Forget(string step)
    {
        switch (step[(step.IndexOf('-', StringComparison.Ordinal) + 1)..])
        {
            case "level": Run = Run with { Level = null }; break;
            case "cleanliness": Run = Run with { Cleanliness = null }; break;
            case "minutes": Run = Run with { Minutes = null }; break;
            case "effort": Run = Run with { Effort = null }; break;
            case "problems": Run = Run with { Problems = [] }; break;
            default: WasTried = null; break;
        }
    }

    private Reply YesOrNo(string text)
    {
        WasTried = text.ToLowerInvariant() switch { "yes" or "y" => true, "no" or "n" => false, _ => null };
        return WasTried is { } tried ? new(true, tried ? "Yes." : "No.") : new(false, "Type yes or no.");
    }

    private Reply Level(string text)
    {
        if (TrialTyping.Level(text, knowledge.Levels) is not { } level)
        {
            return new(false, TrialTyping.NoLevel(knowledge.Levels));
        }

        Run = Run with { Level = level.Id };
        return new(true, TrialTyping.Said(level));
    }

    private Reply Cleanliness(string text)
    {
        if (TrialTyping.OneOf(text, knowledge.Cleanliness) is not { } found)
        {
            return new(false, $"Not one of these. Type a number from 1 to {knowledge.Cleanliness.Length}.");
        }

        Run = Run with { Cleanliness = found.Id };
        return new(true, $"{found.Label}.");
    }

    private Reply Minutes(string text)
    {
        string number = text.Replace("minutes", string.Empty, StringComparison.OrdinalIgnoreCase).Replace("min", string.Empty, StringComparison.OrdinalIgnoreCase).Trim();
        if (!double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double minutes) || minutes is not (>= 0 and <= TrialReader.MostMinutes))
        {
            return new(false, $"That is not a number of minutes. Type a number from 0 to {TrialReader.MostMinutes}.");
        }

        Run = Run with { Minutes = minutes };
        return new(true, $"{Typed.Spoken.Number(minutes)} {(minutes == 1 ? "minute" : "minutes")}.");
    }

    private Reply Effort(string text)
    {
        if (!int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int effort) || effort > TrialReader.MostEffort)
        {
            return new(false, $"Not a valid number. Type a whole number from 0 to {TrialReader.MostEffort}.");
        }

        Run = Run with { Effort = effort };
        return new(true, $"Effort {effort} of {TrialReader.MostEffort}.");
    }

    private Reply Problems(string text)
    {
        string[] words = text.Split([' ', ',', ';'], StringSplitOptions.RemoveEmptyEntries);
        bool none = words is [var only] && only.Equals("none", StringComparison.OrdinalIgnoreCase);
        ImmutableArray<TrialFinding?> found = none ? [] : [.. words.Select(w => TrialTyping.OneOf(w, knowledge.Problems))];
        if (words.Length == 0 || found.Contains(null))
        {
            return new(false, $"Not one of these. Type numbers from 1 to {knowledge.Problems.Length}, or none.");
        }

        Run = Run with { Problems = [.. knowledge.Problems.Where(found.Contains).Select(p => p.Id)] };
        return new(true, none ? "No problem." : string.Join(' ', knowledge.Problems.Where(found.Contains).Select(p => p.Label + ".")));
    }
}
