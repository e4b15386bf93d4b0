using ToiletAid.App.Sessions;
using ToiletAidTui.Host;

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

    private string _topic = string.Empty;

    /// <summary>True when there is a full screen to go to.</summary>
    internal bool CanSwitch { get; init; }

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
            lines.Prompt(wanted);
            string? text = input.ReadLine();
            if (text is null || !echoesTyping)
            {
                lines.EndPrompt();
            }

            if (text is null)
            {
                return InterviewEnd.InputEnded;
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
                case "back":
                    lines.Line(engine.Back() ? "Going back." : "This is the first question.");
                    return null;
                case "unknown":
                    lines.Line(engine.Unknown().Text);
                    return null;
                case "finish":
                    engine.Finish();
                    return InterviewEnd.Done;
                case "screen" or "\u001boq" when CanSwitch:
                    return InterviewEnd.Switch;
                case "quit":
                    return InterviewEnd.Quit;
                default:
                    var reply = engine.Submit(text);
                    lines.Line(reply.Accepted ? reply.Text : $"Error: {reply.Text}");
                    if (reply.Accepted)
                    {
                        return null;
                    }

                    wanted = $"{reply.Retry}: ";
                    continue;
            }

            wanted = $"{QuestionText.Prompt(engine)} ";
        }
    }

    private void Help()
    {
        lines.Lines(QuestionText.Help(engine.Current!.Question));
        lines.Line($"Other words: back, repeat, list, unknown, finish, quit{(CanSwitch ? ", screen for full screen" : string.Empty)}.");
        lines.Line("List reads the answers so far. Finish asks nothing more and gives the result. Quit ends without one.");
    }
}
