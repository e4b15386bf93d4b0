using ToiletAid.App.Trials;
using ToiletAidTui.Host;

namespace ToiletAidTui.Linear;

/// <summary>Asks about a trial line by line, with the words of the interview. What the command line answered is not asked.</summary>
/// <param name="recording">What is asked.</param>
/// <param name="lines">Where lines go.</param>
/// <param name="input">Where answers come from.</param>
/// <param name="echoesTyping">True when the terminal shows what is typed, with its line end.</param>
/// <param name="given">The answer that the command line gives to a step, or null.</param>
internal sealed class TrialDialogue(TrialRecording recording, SpeechLines lines, LineReader input, bool echoesTyping, Func<string, string?> given)
{
    private readonly TrialInterview _interview = recording.Interview;
    private readonly HashSet<string> _fromOptions = new(StringComparer.Ordinal);

    /// <summary>True when there is a full screen to go to.</summary>
    internal bool CanSwitch { get; init; }

    /// <summary>Why an option was not taken, a sentence; null while all were.</summary>
    internal string? Refusal { get; private set; }

    /// <summary>Asks until all is asked, or the person stops. Ends early with <see cref="Refusal"/> set when an option makes no sense.</summary>
    /// <param name="isShown">True when the question was read out just now.</param>
    internal InterviewEnd Run(bool isShown = false)
    {
        bool show = !isShown;
        while (_interview.Asked is { } step)
        {
            if (given(step) is { } option && _fromOptions.Add(step))
            {
                var reply = _interview.Submit(option);
                if (!reply.Accepted)
                {
                    Refusal = $"The value of --{step} is not taken. {reply.Text}";
                    return InterviewEnd.Quit;
                }

                continue;
            }

            if (show)
            {
                lines.Lines(_interview.Asking());
            }

            if (lines.Ask($"{_interview.Position}. {_interview.Wanted}: ", input, echoesTyping) is not { } text)
            {
                return InterviewEnd.InputEnded;
            }

            switch (text.Trim().ToLowerInvariant())
            {
                case "quit":
                    return InterviewEnd.Quit;
                case "screen" or LinearInterview.F2InSmall when CanSwitch:
                    return InterviewEnd.Switch;
                case "note" when !new NoteDialogue(recording.Note, lines, input, echoesTyping).Run():
                    return InterviewEnd.InputEnded;
                case "note":
                    show = false;
                    break;
                default:
                    show = Take(text);
                    break;
            }
        }

        return InterviewEnd.Done;
    }

    /// <summary>Takes a line; true when the next question is to be read out.</summary>
    private bool Take(string text)
    {
        switch (text.Trim().ToLowerInvariant())
        {
            case "help" or "?":
                lines.Lines(_interview.Help());
                lines.Line($"Other words: back, repeat, note, unknown, quit{(CanSwitch ? ", screen for full screen" : string.Empty)}. Quit saves nothing.");
                return false;
            case "repeat":
                return true;
            case var _ when NoteDialogue.OneLine(text) is { } noted:
                lines.Say(recording.Note.Add(noted));
                return false;
            case "back":
                lines.WentBack(_interview.Back());
                return true;
            default:
                return lines.Say(_interview.Submit(text));
        }
    }
}
