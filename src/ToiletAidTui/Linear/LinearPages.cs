using System.Globalization;
using ToiletAidTui.Host;
using ToiletAidTui.Keys;
using ToiletAidTui.Screens;
using ToiletAidTui.Visits;

namespace ToiletAidTui.Linear;

/// <summary>The same screens line by line.</summary>
/// <param name="shell">The screens.</param>
/// <param name="lines">Where lines go.</param>
/// <param name="input">Where answers come from.</param>
internal sealed class LinearPages(Shell shell, SpeechLines lines, LineReader input)
{
    private readonly Dictionary<string, KeyAction> _words = new(StringComparer.OrdinalIgnoreCase)
    {
        ["back"] = KeyAction.Back,
        ["repeat"] = KeyAction.Repeat,
        ["list"] = KeyAction.Answers,
        ["note"] = KeyAction.Note,
        ["trial"] = KeyAction.Trial,
        ["save"] = KeyAction.Save,
        ["hide"] = KeyAction.Hide,
        ["quit"] = KeyAction.Leave,
        ["screen"] = KeyAction.Linear,
        [LinearInterview.F2] = KeyAction.Linear,
    };

    /// <summary>True when there is a full screen to go to.</summary>
    internal bool CanSwitch { get; init; } = true;

    /// <summary>True when the mode was told before.</summary>
    internal bool IsGreeted { get; init; }

    /// <summary>Called once when the result was said; false ends it there.</summary>
    internal Func<bool>? AfterResult { get; set; }

    /// <summary>Clears what the terminal shows and has shown.</summary>
    internal Action Clear { get; init; } = () => { };

    /// <summary>Runs until the person leaves or goes on in full screen.</summary>
    internal void Run()
    {
        if (!IsGreeted)
        {
            lines.Line($"Linear mode. Type help at any question{(CanSwitch ? ", screen for full screen" : string.Empty)}.");
        }

        int telling = shell.Telling - 1;
        while (shell.Ending == Ending.None)
        {
            var page = shell.Current;
            if (shell.IsHidden)
            {
                Uncover();
                continue;
            }

            if (page is QuestionPage)
            {
                Say(shell.Opening);
                Interview();
                telling = shell.Telling - 1;
                continue;
            }

            if (telling != shell.Telling)
            {
                telling = shell.Telling;
                lines.Lines(shell.Lines);
                if (page.Name == ResultPages.PageName && AfterResult is { } after)
                {
                    AfterResult = null;
                    if (!after())
                    {
                        shell.Ending = Ending.Left;
                        continue;
                    }
                }
            }

            Ask(page);
        }
    }

    private void Say(string text)
    {
        if (text.Length > 0)
        {
            lines.Line(text);
        }
    }

    private void Interview()
    {
        var visit = shell.Visit!;
        var interview = new LinearInterview(visit.Engine, lines, input, echoesTyping: true) { CanSwitch = CanSwitch, HasPages = true, OneKey = shell.Services.OneKey };
        switch (interview.Run())
        {
            case InterviewEnd.Done:
                Work(() => ResultPages.Open(shell, visit));
                break;
            case InterviewEnd.Switch:
                Return(visit);
                shell.Ending = Ending.OtherMode;
                break;
            case InterviewEnd.Page:
                Return(visit);
                Work(() => shell.Press(new(interview.Wanted)));
                break;
            case InterviewEnd.Quit:
                shell.Replace(QuestionPage.Make(visit, withTopic: true));
                CommonPages.Leave(shell);
                break;
            default:
                shell.Ending = Ending.Stopped;
                break;
        }
    }

    private void Return(Visit visit)
    {
        if (visit.Engine.Current is null)
        {
            ResultPages.Open(shell, visit);
            return;
        }

        shell.Replace(QuestionPage.Make(visit, withTopic: true));
    }

    /// <summary>Nothing of the visit is left on the terminal until Enter, or the passphrase.</summary>
    private void Uncover()
    {
        Clear();
        while (shell.IsHidden)
        {
            Say(shell.Lines[0]);
            lines.Prompt($"{shell.HiddenAnswer} ");
            if (ReadHidden() is not { } typed)
            {
                shell.Ending = Ending.Stopped;
                return;
            }

            foreach (char c in typed)
            {
                shell.Press(new(KeyAction.Text, c.ToString()));
            }

            shell.Press(new(KeyAction.Enter));
        }

        shell.Show();
    }

    private string? ReadHidden() => input.Keyboard is { } keyboard ? keyboard.ReadLine(null, hidden: true) : input.ReadLine();

    private void Ask(Page page)
    {
        if (page is TextPage text)
        {
            text.Press(shell, new(KeyAction.Enter));
            return;
        }

        if (page is NotePage noting)
        {
            Note(noting);
            return;
        }

        if (page is TrialPage trying)
        {
            Try(trying);
            return;
        }

        var edit = page as EditPage;
        if (edit is { IsHidden: true })
        {
            Hidden(edit);
            return;
        }

        string wanted = edit is null ? ((ListPage)page).Wanted : edit.Prompt;
        if (lines.Ask($"{wanted}: ", input, echoesTyping: true) is not { } line)
        {
            shell.Ending = Ending.Stopped;
            return;
        }

        string typed = line.Trim();
        if (typed.Equals("help", StringComparison.OrdinalIgnoreCase) || typed == "?")
        {
            lines.Line($"Type the number or the name of an entry. Other words: back, repeat, list, note, trial, save, hide,{(CanSwitch ? " screen," : string.Empty)} quit.");
        }
        else if (_words.TryGetValue(typed, out var act) && (CanSwitch || act != KeyAction.Linear))
        {
            Work(() => shell.Press(new(act)));
        }
        else if (edit is null)
        {
            Choose((ListPage)page, typed);
        }
        else
        {
            Work(() => edit.Take(shell, typed));
            Say(edit.Error);
        }
    }

    private void Hidden(EditPage page)
    {
        lines.Prompt($"{page.Prompt}: ");
        if (ReadHidden() is not { } typed)
        {
            shell.Ending = Ending.Stopped;
            return;
        }

        if (typed.Trim().Equals("back", StringComparison.OrdinalIgnoreCase))
        {
            page.Back(shell);
            return;
        }

        Work(() => page.Take(shell, typed));
        Say(page.Error);
    }

    private void Note(NotePage page)
    {
        if (!new NoteDialogue(page.Note, lines, input, echoesTyping: true).Run(isShown: true))
        {
            shell.Ending = Ending.Stopped;
            return;
        }

        page.Back(shell);
    }

    private void Try(TrialPage page)
    {
        switch (new TrialDialogue(page.Recording, lines, input, echoesTyping: true, _ => null) { CanSwitch = CanSwitch }.Run(isShown: true))
        {
            case InterviewEnd.Done:
                Work(() => TrialPages.Finish(shell, page.Recording));
                break;
            case InterviewEnd.Quit:
                shell.Pop("Nothing was saved.");
                break;
            case InterviewEnd.Switch:
                page.Anew();
                shell.Ending = Ending.OtherMode;
                break;
            default:
                shell.Ending = Ending.Stopped;
                break;
        }
    }

    private void Choose(ListPage page, string text)
    {
        var entry = int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            ? page.Entries.ElementAtOrDefault(number - 1)
            : page.Entries.FirstOrDefault(e => text.Length > 0 && e.Label.StartsWith(text, StringComparison.OrdinalIgnoreCase));
        if (entry is null)
        {
            lines.Line(text.Length == 0 ? "Error: Nothing was typed." : $"Error: {text} is not a number from 1 to {page.Entries.Count} and not a name from the list.");
            return;
        }

        Work(() => entry.Choose(shell));
    }

    /// <summary>Work that may last: it is told when it does.</summary>
    private void Work(Action work)
    {
        using var notice = new WorkNotice(lines.LineNow, TimeProvider.System);
        work();
    }
}
