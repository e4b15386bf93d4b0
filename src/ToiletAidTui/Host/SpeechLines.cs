using ToiletAid.Core.Person;

namespace ToiletAidTui.Host;

/// <summary>Writes lines wrapped at words, so that no word is cut at the edge of the terminal.</summary>
/// <param name="writer">Where they go.</param>
/// <param name="width">Characters in a line; 0 for no wrapping.</param>
public sealed class SpeechLines(TextWriter writer, int width)
{
    /// <summary>What is typed at the end of a page to leave the rest out.</summary>
    private const string Stop = "stop";

    /// <summary>Rows that stay free: one for the prompt, one for the line that was typed before.</summary>
    private const int Kept = 2;

    /// <summary>How much narrower a text is broken at most so that no row comes again.</summary>
    private const int MostNarrower = 24;

    private readonly Queue<string> _shown = [];
    private LineReader? _input;
    private int _room;
    private int _used;
    private int _page;

    /// <summary>The same, never more rows at once than the screen has: a reader that says what changed on the screen would miss what scrolled off.</summary>
    /// <param name="height">Rows of the terminal; 0 when it tells none.</param>
    /// <param name="input">Where Enter for the next page is typed. What else is typed there is the answer to the next prompt.</param>
    public SpeechLines Paged(int height, LineReader input) => new(writer, width) { _input = input, _room = height <= Kept ? 0 : height - Kept };

    /// <summary>Writes a line.</summary>
    public void Line(string text) => Put(text);

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
            if (!Put(line))
            {
                return;
            }
        }
    }

    /// <summary>Writes the line in which the answer is typed and leaves the cursor on it.</summary>
    public void Prompt(string text)
    {
        Wait(text);
        _page = 0;
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

    /// <summary>Writes a line, page by page; false when the rest is not wanted.</summary>
    private bool Put(string text)
    {
        text = ReadableText.Shown(text);
        if (_room == 0)
        {
            foreach (string row in Rows(text))
            {
                writer.WriteLine(row);
            }

            return true;
        }

        var pieces = Paging.Pieces(text, FreshRows, _room - _used, _room);
        for (int i = 0; i < pieces.Count; i++)
        {
            if (i > 0 && !GoesOn())
            {
                return false;
            }

            Array.ForEach(pieces[i], Write);

            _used += pieces[i].Length;
        }

        return true;
    }

    private IEnumerable<string> Rows(string text) => WordWrap.Lines(text, width);

    /// <summary>
    /// Rows none of which stood on the screen just before. A reader that says what changed leaves out a row that comes again,
    /// so a text of several rows is broken at other words then.
    /// </summary>
    private IEnumerable<string> FreshRows(string text)
    {
        for (int narrower = 0; narrower < Math.Min(width / 2, MostNarrower); narrower++)
        {
            string[] rows = [.. WordWrap.Lines(text, width - narrower)];
            if (rows.Length < 2 || !rows.Any(_shown.Contains))
            {
                return rows;
            }
        }

        return Rows(text);
    }

    private void Write(string row)
    {
        writer.WriteLine(row);
        _shown.Enqueue(row);
        while (_shown.Count > 2 * _room)
        {
            _shown.Dequeue();
        }
    }

    private void Wait(string text)
    {
        writer.Write(ReadableText.Shown(text));
        writer.Flush();
        _used = 0;
    }

    /// <summary>Waits at the end of a page; false when the rest is not wanted.</summary>
    private bool GoesOn()
    {
        // A reader that says what changed on the screen would not say a last line that stays the same.
        Wait($"End of page {++_page}. Enter for more, or {Stop}: ");
        if (_input!.ReadLine() is not { } typed)
        {
            _input.PutBack(null);
            return false;
        }

        if (typed.Trim().Length == 0)
        {
            return true;
        }

        if (!typed.Trim().Equals(Stop, StringComparison.OrdinalIgnoreCase))
        {
            _input.PutBack(typed);
        }

        return false;
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
