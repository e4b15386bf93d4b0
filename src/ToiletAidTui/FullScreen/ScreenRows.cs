using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Keys;
using ToiletAidTui.Screens;

namespace ToiletAidTui.FullScreen;

/// <summary>Where the lines of a screen stand: the mode line, the text or the part of it that fits, the error, the answer line.</summary>
internal sealed class ScreenRows
{
    private ScreenRows(string[] rows, int fixedRows, int answerRow, int cursorColumn, int part, int parts) =>
        (Rows, FixedRows, AnswerRow, CursorRow, CursorColumn, Part, Parts) = (rows, fixedRows, answerRow, answerRow, cursorColumn, part, parts);

    /// <summary>Every row of the terminal, without blanks at the end.</summary>
    internal string[] Rows { get; }

    /// <summary>How many rows at the top are the same on every screen.</summary>
    internal int FixedRows { get; }

    /// <summary>First row of the answer line.</summary>
    internal int AnswerRow { get; }

    /// <summary>Row of the cursor.</summary>
    internal int CursorRow { get; private init; }

    /// <summary>Column of the cursor.</summary>
    internal int CursorColumn { get; }

    /// <summary>Which part of the text is shown, from 0.</summary>
    internal int Part { get; }

    /// <summary>How many parts the text takes.</summary>
    internal int Parts { get; }

    /// <summary>Lays a screen out.</summary>
    /// <param name="shell">The screen.</param>
    /// <param name="width">Columns of the terminal.</param>
    /// <param name="height">Rows of the terminal.</param>
    /// <param name="part">Which part of the text is wanted, from 0.</param>
    internal static ScreenRows Lay(Shell shell, int width, int height, int part) => Lay(ScreenText.Of(shell), shell.Services.Keys, width, height, part);

    /// <summary>Lays out what a screen said at one moment.</summary>
    /// <param name="said">The screen.</param>
    /// <param name="keys">Which key does what.</param>
    /// <param name="width">Columns of the terminal.</param>
    /// <param name="height">Rows of the terminal.</param>
    /// <param name="part">Which part of the text is wanted, from 0.</param>
    internal static ScreenRows Lay(ScreenText said, KeyMap keys, int width, int height, int part)
    {
        // The last column stays free: a character in it makes some terminals start a new row.
        int longest = Math.Max(width - 1, 1);
        string[] head = [.. Wrap(ModeLine(keys, longest), longest)];
        string answerText = said.Answer(longest);
        string[] answer = [.. Wrap(answerText, longest)];
        string[] error = said.Error.Length == 0 ? [string.Empty] : [.. Wrap(said.Error, longest)];
        var pages = Paging.Pages(said.Lines, l => Wrap(l, longest), int.MaxValue);

        // An answer line of two rows has its room from the start, so that moving to it moves nothing else.
        int room = Math.Max(height - head.Length - Math.Max(error.Length + answer.Length, 3), 1);
        string[] text = [.. pages[0]];
        if (text.Length > room)
        {
            pages = Paging.Pages(said.Lines, l => Wrap(l, longest), Math.Max(room - 1, 1));
            part = Math.Clamp(part, 0, pages.Count - 1);
            string more = $"Part {part + 1} of {pages.Count}. {(part + 1 < pages.Count ? "Page Down." : "Page Up.")}";
            text = [.. pages[part], .. Wrap(more, longest).Take(1)];
        }

        int parts = pages.Count;

        string[] all = [.. head, .. text, .. error, .. answer];
        string[] rows = [.. all.Take(height), .. Enumerable.Repeat(string.Empty, Math.Max(height - all.Length, 0))];
        int answerRow = Math.Min(head.Length + text.Length + error.Length, height - 1);
        var (row, column) = Caret(answer, answerText, said.Caret);
        return new(rows, head.Length, answerRow, Math.Min(column, width - 1), parts == 1 ? 0 : part, parts) { CursorRow = Math.Min(answerRow + row, height - 1) };
    }

    private static string ModeLine(KeyMap keys, int longest)
    {
        string brief = $"Full screen. {keys.AllWords(KeyAction.Linear)}: linear. {keys.AllWords(KeyAction.Help)}: help.";
        string more = $"{brief} {keys.AllWords(KeyAction.Menu)}: menu.";
        string whole = $"{more} {keys.AllWords(KeyAction.Leave)}: leave.";
        return whole.Length <= longest ? whole : more.Length <= longest ? more : brief;
    }

    private static IEnumerable<string> Wrap(string text, int longest)
    {
        foreach (string row in WordWrap.Rows(ReadableText.Shown(text), longest))
        {
            for (int i = 0; i < row.Length || i == 0; i += longest)
            {
                yield return row.Substring(i, Math.Min(longest, row.Length - i));
            }
        }
    }

    /// <summary>The row and column of a character of the answer line after wrapping.</summary>
    private static (int Row, int Column) Caret(string[] rows, string text, int caret)
    {
        int at = 0;
        for (int i = 0; i < rows.Length; i++)
        {
            int end = at + rows[i].Length;
            if (caret <= end || i == rows.Length - 1)
            {
                return (i, Math.Max(caret - at, 0));
            }

            at = end < text.Length && text[end] == ' ' ? end + 1 : end;
        }

        return (0, 0);
    }
}
