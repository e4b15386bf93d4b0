using ToiletAid.App.Sessions;
using ToiletAid.App.Trials;
using ToiletAidTui.Host;

namespace ToiletAidTui.Linear;

/// <summary>Asks about a trial line by line, with the words of the interview. What the command line answered is not asked.</summary>
/// <param name="interview">What is asked.</param>
/// <param name="lines">Where lines go.</param>
/// <param name="input">Where answers come from.</param>
/// <param name="echoesTyping">True when the terminal shows what is typed, with its line end.</param>
/// <param name="given">The answer that the command line gives to a step, or null.</param>
internal sealed class TrialDialogue(TrialInterview interview, SpeechLines lines, LineReader input, bool echoesTyping, Func<string, string?> given)
{
    private readonly HashSet<string> _fromOptions = new(StringComparer.Ordinal);

    /// <summary>Why an option was not taken, a sentence; null while all were.</summary>
    internal string? Refusal { get; private set; }

    /// <summary>Asks until all is asked, or the person stops. Ends early with <see cref="Refusal"/> set when an option makes no sense.</summary>
    internal InterviewEnd Run()
    {
        bool show = true;
        while (interview.Asked is { } step)
        {
            if (given(step) is { } option && _fromOptions.Add(step))
            {
                var reply = interview.Submit(option);
                if (!reply.Accepted)
                {
                    Refusal = $"The value of --{step} is not taken. {reply.Text}";
                    return InterviewEnd.Quit;
                }

                continue;
            }

            if (show)
            {
                lines.Lines(interview.Asking());
            }

            lines.Prompt($"{interview.Position}. {interview.Wanted}: ");
            string? text = input.ReadLine();
            if (text is null || !echoesTyping)
            {
                lines.EndPrompt();
            }

            if (text is null)
            {
                return InterviewEnd.InputEnded;
            }

            if (text.Trim().Equals("quit", StringComparison.OrdinalIgnoreCase))
            {
                return InterviewEnd.Quit;
            }

            show = Take(text);
        }

        return InterviewEnd.Done;
    }

    /// <summary>Takes a line; true when the next question is to be read out.</summary>
    private bool Take(string text)
    {
        switch (text.Trim().ToLowerInvariant())
        {
            case "help" or "?":
                lines.Lines(interview.Help());
                lines.Line("Other words: back, repeat, unknown, quit. Quit saves nothing.");
                return false;
            case "repeat":
                return true;
            case "back":
                lines.Line(interview.Back() ? "Going back." : "This is the first question.");
                return true;
            default:
                return Say(interview.Submit(text));
        }
    }

    private bool Say(Reply reply)
    {
        lines.Line(reply.Accepted ? reply.Text : $"Error: {reply.Text}");
        return reply.Accepted;
    }
}
