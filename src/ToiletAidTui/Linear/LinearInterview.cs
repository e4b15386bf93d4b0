using ToiletAid.App.Sessions;
using ToiletAid.App.Wording;
using ToiletAid.Core.Interview;
using ToiletAidTui.Host;
using ToiletAidTui.Keys;

namespace ToiletAidTui.Linear;

/// <summary>The interview line by line: nothing is ever redrawn, each line is written once.</summary>
/// <param name="engine">The interview.</param>
/// <param name="lines">Where lines go.</param>
/// <param name="input">Where answers come from.</param>
/// <param name="echoesTyping">True when the terminal shows what is typed, with its line end.</param>
public sealed class LinearInterview(InterviewEngine engine, SpeechLines lines, LineReader input, bool echoesTyping)
{
    /// <summary>F2 as most terminals send it. In a line it takes effect with Enter.</summary>
    internal const string F2 = "\u001bOQ";

    /// <summary>The same in small letters, as what is typed is compared.</summary>
    internal const string F2InSmall = "\u001boq";

    private string _topic = string.Empty;

    /// <summary>True when there is a full screen to go to.</summary>
    internal bool CanSwitch { get; init; }

    /// <summary>True when save, hide and trial can be asked for at a question.</summary>
    internal bool HasPages { get; init; }

    /// <summary>What was asked for when the interview ended with <see cref="InterviewEnd.Page"/>.</summary>
    internal KeyAction Wanted { get; private set; }

    /// <summary>Takes an answer out of several by its digit alone, where keys are read one by one.</summary>
    internal bool OneKey { get; init; }

    /// <summary>Asks until nothing is left to ask, or the person stops.</summary>
    public InterviewEnd Run()
    {
        while (engine.Current is { } step)
        {
            Show(step);
            if (Ask() is { } end)
            {
                return end;
            }
        }

        return InterviewEnd.Done;
    }

    private void Show(Step step)
    {
        string topic = step.Question.Topic;
        lines.Lines(QuestionText.Lines(engine, topic != _topic));
        _topic = topic;
    }

    /// <summary>One question until it is answered; not null when the interview ends here.</summary>
    private InterviewEnd? Ask()
    {
        string wanted = $"{QuestionText.Prompt(engine)} ";
        while (true)
        {
            if (Typed(wanted) is not { } text)
            {
                return InterviewEnd.InputEnded;
            }

            if (NoteDialogue.OneLine(text) is { } noted)
            {
                wanted = Note(noted);
                continue;
            }

            switch (text.Trim().ToLowerInvariant())
            {
                case "help" or "?":
                    Help();
                    break;
                case "repeat":
                    Show(engine.Current!);
                    break;
                case "list":
                    lines.Lines(QuestionText.Given(engine));
                    break;
                case "note" when !new NoteDialogue(engine.Note, lines, input, echoesTyping).Run():
                    return InterviewEnd.InputEnded;
                case "note":
                    break;
                case "back":
                    lines.WentBack(engine.Back());
                    return null;
                case "unknown":
                    lines.Line(engine.Unknown().Text);
                    return null;
                case "finish" when engine.Finish() is { Length: > 0 } rest:
                    lines.Line(rest);
                    return null;
                case "finish":
                    return InterviewEnd.Done;
                case "screen" or F2InSmall when CanSwitch:
                    return InterviewEnd.Switch;
                case "quit":
                    return InterviewEnd.Quit;
                case "save" or "hide" or "trial" when HasPages:
                    Wanted = Enum.Parse<KeyAction>(text.Trim(), ignoreCase: true);
                    return InterviewEnd.Page;
                default:
                    if (Answer(text) is not { } retry)
                    {
                        return null;
                    }

                    wanted = retry;
                    continue;
            }

            wanted = $"{QuestionText.Prompt(engine)} ";
        }
    }

    private string? Typed(string wanted)
    {
        if (OneKey && engine.Current!.Question is { Kind: QuestionKind.Choice } choice)
        {
            input.Keyboard?.AtOnce = choice.Options.Length;
        }

        return lines.Ask(wanted, input, echoesTyping);
    }

    /// <summary>Takes an answer; gives the next prompt when it was not taken.</summary>
    private string? Answer(string text)
    {
        Reply reply;
        using (echoesTyping ? new WorkNotice(lines.LineNow, TimeProvider.System) : null)
        {
            reply = engine.Submit(text);
        }

        return lines.Say(reply) ? null : $"{reply.Retry}: ";
    }

    /// <summary>Takes a line of the note; gives the next prompt.</summary>
    private string Note(string line) =>
        lines.Say(engine.Note.Add(line)) ? $"{QuestionText.Prompt(engine)} " : $"Not noted. {engine.Wanted()}: ";

    private void Help()
    {
        lines.Lines(QuestionText.Help(engine.Current!.Question));
        lines.Line($"Other words: back, repeat, list, note, unknown, finish, {(HasPages ? "save, hide, trial, " : string.Empty)}quit{(CanSwitch ? ", screen for full screen" : string.Empty)}.");
        lines.Line("List reads out the answers so far. Note adds a note of your own. Finish asks only the open safety questions, then gives the result. Quit ends without a result.");
    }
}
