namespace ToiletAidTui.Host;

/// <summary>Writes lines wrapped at words, so that no word is cut at the edge of the terminal.</summary>
/// <param name="writer">Where they go.</param>
/// <param name="width">Characters in a line; 0 for no wrapping.</param>
public sealed class SpeechLines(TextWriter writer, int width)
{
    /// <summary>Writes a line.</summary>
    public void Line(string text)
    {
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
        writer.Write(text);
        writer.Flush();
    }

    /// <summary>Ends the line with the cursor, where nobody's Enter did.</summary>
    public void EndPrompt() => writer.WriteLine();
}
