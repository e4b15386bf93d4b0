using ToiletAid.App.Stock;
using ToiletAidTui.Host;

namespace ToiletAidTui.Linear;

/// <summary>Guided measuring line by line, with the words of the interview.</summary>
/// <param name="measuring">What is asked.</param>
/// <param name="lines">Where lines go.</param>
/// <param name="input">Where answers come from.</param>
/// <param name="echoesTyping">True when the terminal shows what is typed, with its line end.</param>
internal sealed class MeasureDialogue(IMeasuring measuring, SpeechLines lines, LineReader input, bool echoesTyping)
{
    /// <summary>Asks until all is asked, or the person stops.</summary>
    internal InterviewEnd Run()
    {
        bool show = true;
        while (!measuring.IsDone)
        {
            if (show)
            {
                lines.Lines(measuring.Asking());
            }

            if (lines.Ask($"{measuring.Position + 1}. {measuring.Wanted}: ", input, echoesTyping) is not { } text)
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
                lines.Lines(measuring.Help());
                lines.Line("Other words: back, repeat, list, unknown, quit. Quit saves nothing.");
                return false;
            case "repeat":
                return true;
            case "list":
                lines.Lines(measuring.Count == 0 ? ["Nothing was measured yet."] : measuring.Summary());
                return false;
            case "back":
                lines.WentBack(measuring.Back());
                return true;
            case "unknown":
                return lines.Say(measuring.Unknown());
            default:
                return lines.Say(measuring.Submit(text));
        }
    }
}
