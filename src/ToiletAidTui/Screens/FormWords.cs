using ToiletAid.App.Documents;
using ToiletAid.App.Files;

namespace ToiletAidTui.Screens;

/// <summary>What the options of a command are called on a screen: the trade's words, where the name of an option is short to be typed.</summary>
internal static class FormWords
{
    private static readonly Dictionary<string, string> Words = new(StringComparer.Ordinal)
    {
        ["sex"] = "Sex, for the norms",
        ["dexterity"] = "Handling of small things, or peg test",
        ["aid"] = "Kind of aid",
        ["add-on"] = "Add-ons used with it",
        ["sheets"] = "Sheets in the strip",
        ["folds"] = "Times the strip is folded in half",
        ["girth"] = "Girth of the head",
        ["reservoir"] = "Reservoir holds",
        ["flow"] = "Flow of water",
        ["per-clean"] = "Water for one clean",
        ["water.mass"] = "Weight without water",
        ["hot"] = "Hot water at the tap",
        ["cold"] = "Cold water at the tap",
        ["target"] = "Target temperature",
        ["approach"] = "Approach of the hand",
        ["picture"] = "File for a drawing",
        ["draws"] = "Simulated people",
        ["report.kind"] = "Which document",
        ["report.for"] = "Whom the sheet is for",
        ["report.sheet"] = "Words or pictures",
        ["report.format"] = "Format of the document",
        ["report.plan"] = "Plan that was taken",
        ["report.language"] = "Language",
        ["report.out"] = "File to write",
    };

    /// <summary>What the options are called that take the answer to a question, or to a part of one: as the question is in the documents.</summary>
    private static readonly Lazy<Dictionary<string, string>> Questions = new(() => new(
        DocumentData.Load().Labels.Concat(BuiltIn.Questions().All.SelectMany(q => q.Parts).Select(p => KeyValuePair.Create(p.Id, p.Label))),
        StringComparer.Ordinal));

    /// <summary>What an option is called.</summary>
    /// <param name="command">Its command, for a name that means different things.</param>
    /// <param name="option">Its name, with its dashes.</param>
    /// <exception cref="KeyNotFoundException">It has no word yet.</exception>
    internal static string Of(string command, string option)
    {
        string name = option.TrimStart('-');
        return Words.GetValueOrDefault($"{command}.{name}") ?? Words.GetValueOrDefault(name) ?? Questions.Value[name];
    }
}
