using ToiletAid.App.Wording;
using ToiletAidTui.Keys;

namespace ToiletAidTui.Screens;

/// <summary>Screens that can be reached from every other one.</summary>
internal static class CommonPages
{
    internal const string HelpName = "help";
    internal const string MenuName = "menu";

    /// <summary>Help: first for the screen in front, then the keys.</summary>
    internal static Page Help(Shell shell) => new TextPage(HelpName,
    [
        "Help.",
        .. shell.Current.Help(),
        "Up and Down go from one entry to the next and back. Home and End go to the first and the last.",
        "A digit goes to the entry with that number, a letter to the next entry that begins with it.",
        "In the menu a letter does its action at once.",
        "Enter takes the entry. Page Down and Page Up show text that does not fit.",
        .. shell.Services.Keys.Bindings.Select(b => $"{b.Label}: {shell.Services.Keys.Ways(b)}."),
    ]);

    /// <summary>Every action, for keys that a terminal or a reader keeps for itself.</summary>
    internal static Page Menu(Shell shell) => new ListPage(MenuName, "Menu.", [], [.. shell.Services.Keys.Bindings
        .Where(b => b.Action != KeyAction.Menu)
        .Select(b => new Entry($"{b.Label}, {b.Letter} or {KeyMap.Words(b.Keys[0])}", s => Run(s, b.Action)) { Letter = b.Letter }),
        new Entry("Start screen", StartPages.Home)]);

    /// <summary>What was answered so far.</summary>
    internal static Page Answers(Shell shell) => new TextPage("answers", ["Answers so far.", .. shell.Visit is { } visit ? QuestionText.Given(visit.Engine) : ["No answers yet."]]);

    /// <summary>Leaves, after a question when something is not saved.</summary>
    internal static void Leave(Shell shell) => Unless(shell, "leave", "Leave and lose the answers", s =>
    {
        s.Visit?.Forget();
        s.Ending = Ending.Left;
    });

    /// <summary>Asks before answers are lost.</summary>
    internal static void Unless(Shell shell, string name, string losing, Action<Shell> then)
    {
        if (shell.HasUnsavedTrial)
        {
            shell.Push(new ListPage(name, "The trial is not finished, so it is not saved.", [],
            [
                new("Go back to the trial", s => s.Pop()),
                new("Leave without saving the trial", then),
            ]));
            return;
        }

        if (shell.Visit is not { IsUnsaved: true } visit)
        {
            then(shell);
            return;
        }

        bool onlyNote = !visit.Engine.AnswersSoFar.Ids.Any();
        shell.Push(new ListPage(name, onlyNote ? "The note is not saved." : "The answers are not saved.", [],
        [
            new(onlyNote ? "Go back to the note" : "Go back to the answers", s => s.Pop()),
            new(onlyNote ? "Save it first" : "Save them first", s =>
            {
                s.Pop();
                SavePages.Save(s);
            }),
            new(losing, then),
        ]));
    }

    /// <summary>From the menu: back to the screen it came from, and the key there.</summary>
    private static void Run(Shell shell, KeyAction act)
    {
        shell.Pop();
        shell.Press(new(act));
    }
}
