using System.Globalization;
using ToiletAidTui.Host;
using ToiletAidTui.Screens;

namespace ToiletAidTui.Linear;

/// <summary>The same screens line by line.</summary>
/// <param name="shell">The screens.</param>
/// <param name="lines">Where lines go.</param>
/// <param name="input">Where answers come from.</param>
internal sealed class LinearPages(Shell shell, SpeechLines lines, LineReader input)
{
    private readonly Dictionary<string, Act> _words = new(StringComparer.OrdinalIgnoreCase)
    {
        ["back"] = Act.Back,
        ["repeat"] = Act.Repeat,
        ["list"] = Act.Answers,
        ["note"] = Act.Note,
        ["trial"] = Act.Trial,
        ["save"] = Act.Save,
        ["quit"] = Act.Leave,
        ["screen"] = Act.Linear,
    };

    /// <summary>Runs until the person leaves or goes on in full screen.</summary>
    internal void Run()
    {
        lines.Line("Linear mode. Type help at any question, screen for full screen.");
        int turn = shell.Turn - 1;
        while (shell.Ending == Ending.None)
        {
            var page = shell.Current;
            if (page is QuestionPage)
            {
                Say(shell.Opening);
                Interview();
                turn = shell.Turn;
                continue;
            }

            if (turn != shell.Turn)
            {
                turn = shell.Turn;
                lines.Lines(shell.Lines);
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
        switch (new LinearInterview(visit.Engine, lines, input, echoesTyping: true) { CanSwitch = true }.Run())
        {
            case InterviewEnd.Done:
                Work(() => shell.Replace(ResultPages.Make(shell, visit)));
                lines.Line("That was the last question.");
                lines.Lines(shell.Lines);
                break;
            case InterviewEnd.Switch:
                shell.Replace(visit.Engine.Current is null ? ResultPages.Make(shell, visit) : QuestionPage.Make(visit, withTopic: true));
                shell.Ending = Ending.OtherMode;
                break;
            case InterviewEnd.Quit:
                shell.Replace(QuestionPage.Make(visit, withTopic: true));
                CommonPages.Leave(shell);
                if (shell.Ending == Ending.None)
                {
                    lines.Lines(shell.Lines);
                }

                break;
            default:
                shell.Ending = Ending.Stopped;
                break;
        }
    }

    private void Ask(Page page)
    {
        if (page is TextPage)
        {
            shell.Pop();
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
        if (lines.Ask(edit is null ? $"Number 1 to {((ListPage)page).Entries.Count}: " : $"{edit.Prompt}: ", input, echoesTyping: true) is not { } typed)
        {
            shell.Ending = Ending.Stopped;
            return;
        }

        string text = typed.Trim();
        if (text.Equals("help", StringComparison.OrdinalIgnoreCase) || text == "?")
        {
            lines.Line("Type the number or the name of an entry. Other words: back, repeat, list, note, trial, save, screen, quit.");
        }
        else if (_words.TryGetValue(text, out var act) || text == LinearInterview.F2)
        {
            Work(() => shell.Press(new(text == LinearInterview.F2 ? Act.Linear : act)));
        }
        else if (edit is null)
        {
            Choose((ListPage)page, text);
        }
        else
        {
            Work(() => edit.Take(shell, text));
            Say(edit.Error);
        }
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
        switch (new TrialDialogue(page.Recording, lines, input, echoesTyping: true, _ => null) { CanSwitch = true }.Run(isShown: true))
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
