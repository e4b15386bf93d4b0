namespace ToiletAidTui.Screens;

/// <summary>What the options of a command are called on a screen: the trade's words, where the name of an option is short to be typed.</summary>
internal static class FormWords
{
    private static readonly Dictionary<string, string> Words = new(StringComparer.Ordinal)
    {
        ["age"] = "Age",
        ["sex"] = "Sex, for the norms",
        ["grip"] = "Grip strength",
        ["pinch"] = "Pinch strength",
        ["grasp"] = "Best usable grasp",
        ["dexterity"] = "Handling of small things, or peg test",
        ["tremor"] = "Tremor",
        ["hands-free"] = "Hands free while cleaning",
        ["cleans"] = "Cleans a day",
        ["aid"] = "Kind of aid",
        ["add-on"] = "Add-ons used with it",
        ["sheets"] = "Sheets in the strip",
        ["folds"] = "Times the strip is folded in half",
        ["girth"] = "Way once round the head",
        ["stool"] = "Usual stool, Bristol type",
        ["reservoir"] = "Reservoir holds",
        ["flow"] = "Flow of water",
        ["per-clean"] = "Water for one clean",
        ["water.mass"] = "Weight without water",
        ["hot"] = "Hot water at the tap",
        ["cold"] = "Cold water at the tap",
        ["target"] = "Temperature wished for",
        ["feeling"] = "Feeling of the skin",
        ["stature"] = "Stature",
        ["mass"] = "Body mass",
        ["hand"] = "Hand used for cleaning",
        ["posture"] = "Posture while cleaning",
        ["lean"] = "Lean on the seat without losing balance",
        ["reach-behind"] = "Highest point the hand gets to behind",
        ["reach-front"] = "How far the hand gets between the thighs",
        ["precautions"] = "Precautions in force",
        ["shoulder-flexion"] = "Shoulder flexion",
        ["shoulder-extension"] = "Shoulder extension",
        ["shoulder-abduction"] = "Shoulder abduction",
        ["internal-rotation"] = "Shoulder internal rotation",
        ["external-rotation"] = "Shoulder external rotation",
        ["elbow-flexion"] = "Elbow flexion",
        ["trunk-flexion"] = "Trunk flexion",
        ["side-bend"] = "Trunk side bend",
        ["trunk-rotation"] = "Trunk rotation",
        ["forearm-pronation"] = "Forearm pronation",
        ["forearm-supination"] = "Forearm supination",
        ["wrist-flexion"] = "Wrist flexion",
        ["wrist-extension"] = "Wrist extension",
        ["approach"] = "Approach of the hand",
        ["picture"] = "File for a drawing",
        ["draws"] = "Plausible persons drawn",
        ["report.kind"] = "Which paper",
        ["report.for"] = "Whom the sheet is for",
        ["report.format"] = "Form of the paper",
        ["report.plan"] = "Plan that was taken",
        ["report.language"] = "Language",
        ["report.out"] = "File to write",
    };

    /// <summary>What an option is called.</summary>
    /// <param name="command">Its command, for a name that means different things.</param>
    /// <param name="option">Its name, with its dashes.</param>
    /// <exception cref="KeyNotFoundException">It has no word yet.</exception>
    internal static string Of(string command, string option)
    {
        string name = option.TrimStart('-');
        return Words.GetValueOrDefault($"{command}.{name}") ?? Words[name];
    }
}
