using System.Collections.Immutable;
using System.Globalization;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.App.Trials;

/// <summary>Findings of a trial as they are read out and typed.</summary>
internal static class TrialTyping
{
    /// <summary>Where the levels come from.</summary>
    internal static readonly ImmutableArray<string> AboutLevels =
    [
        "The levels are those of item GG0130C, toileting hygiene: cleaning oneself and adjusting clothes before and after.",
        "With an aid and without a helper it is level 06.",
    ];

    /// <summary>Levels with their codes.</summary>
    internal static IEnumerable<string> Codes(IEnumerable<TrialFinding> levels) => levels.Select(l => $"{l.Id}. {l.Label}.");

    /// <summary>Findings with their numbers.</summary>
    internal static IEnumerable<string> Numbered(IEnumerable<TrialFinding> findings) => findings.Select((f, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1}. {f.Label}."));

    /// <summary>Levels to choose from.</summary>
    internal static ImmutableArray<TrialChoice> Choices(IEnumerable<TrialFinding> levels) => [.. levels.Select(l => new TrialChoice(l.Id, Said(l).TrimEnd('.')))];

    /// <summary>Findings to choose from.</summary>
    internal static ImmutableArray<TrialChoice> NumberedChoices(IEnumerable<TrialFinding> findings) => [.. findings.Select((f, i) => new TrialChoice((i + 1).ToString(CultureInfo.InvariantCulture), f.Label))];

    /// <summary>The level with the code that was typed, with or without its first zero; null when there is none.</summary>
    internal static TrialFinding? Level(string text, IEnumerable<TrialFinding> levels) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int code) ? levels.FirstOrDefault(l => l.Id == code.ToString("00", CultureInfo.InvariantCulture)) : null;

    /// <summary>The finding whose number or id was typed; null when there is none.</summary>
    internal static TrialFinding? OneOf(string text, ImmutableArray<TrialFinding> findings) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= 1 && number <= findings.Length
            ? findings[number - 1]
            : findings.FirstOrDefault(f => f.Id.Equals(text, StringComparison.OrdinalIgnoreCase));

    /// <summary>A level as it is read back.</summary>
    internal static string Said(TrialFinding level) => $"{level.Id}, {Wording.PlanText.Lower(level.Label)}.";

    /// <summary>What is said when a code is none.</summary>
    internal static string NoLevel(IEnumerable<TrialFinding> levels) => $"Not a valid code. Type one of {string.Join(", ", levels.Select(l => l.Id))}.";
}
