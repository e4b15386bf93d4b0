using ToiletAid.Core.Person;

namespace ToiletAidTui.Host;

/// <summary>Writes lines wrapped at words, so that no word is cut at the edge of the terminal.</summary>
/// <param name="writer">Where they go.</param>
/// <param name="width">Characters in a line; 0 for no wrapping.</param>
public sealed class SpeechLines(TextWriter writer, int width)
{
    /// <summary>Writes a line.</summary>
    public void Line(string text)
    {
        text = ReadableText.Shown(text);
        if (width < 20 || text.Length < width)
        {
            writer.WriteLine(text);
            return;
        }

        foreach (string row in WordWrap.Rows(text, width - 1))
        {
            writer.WriteLine(row);
        }
    }

    /// <summary>Writes a line that must be heard before the next one comes.</summary>
    public void LineNow(string text)
    {
        Line(text);
        writer.Flush();
    }

    /// <summary>Writes several lines.</summary>
    public void Lines(IEnumerable<string> lines)
    {
        foreach (string line in lines)
        {
            Line(line);
        }
    }

    /// <summary>Writes the line in which the answer is typed and leaves the cursor on it.</summary>
    public void Prompt(string text)
    {
        writer.Write(ReadableText.Shown(text));
        writer.Flush();
    }

    /// <summary>Asks for yes or no until one of them is typed; the end of input is no.</summary>
    /// <param name="question">The question, without its answers.</param>
    /// <param name="input">Where it is typed.</param>
    public bool AskYes(string question, LineReader input)
    {
        ArgumentNullException.ThrowIfNull(input);
        while (true)
        {
            Prompt($"{question} yes or no: ");
            switch (input.ReadLine()?.Trim().ToLowerInvariant())
            {
                case "yes" or "y":
                    return true;
                case "no" or "n":
                    return false;
                case null:
                    writer.WriteLine();
                    return false;
                default:
                    Line("Type yes or no.");
                    break;
            }
        }
    }

    /// <summary>Prompts and waits for a line; null when the input ended. Where nobody's Enter ended the line with the cursor, it is ended.</summary>
    /// <param name="prompt">The prompt.</param>
    /// <param name="input">Where it is typed.</param>
    /// <param name="echoesTyping">True when the terminal shows what is typed, with its line end.</param>
    public string? Ask(string prompt, LineReader input, bool echoesTyping)
    {
        ArgumentNullException.ThrowIfNull(input);
        Prompt(prompt);
        string? typed = input.ReadLine();
        if (typed is null || !echoesTyping)
        {
            writer.WriteLine();
        }

        return typed;
    }
}
