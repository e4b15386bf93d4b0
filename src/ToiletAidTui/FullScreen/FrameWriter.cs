extern alias TerminalGui;

using System.Globalization;
using System.Text;
using TerminalGui::Terminal.Gui.Drivers;

namespace ToiletAidTui.FullScreen;

/// <summary>
/// Turns a drawn frame into one write: the rows in which something changed, whole, and the place of the cursor. Console
/// readers speak what is written: parts of a row would be heard as parts of words, rows written again as news, and a
/// cursor that passes through another row as a move to it. So the library draws, and nothing but this text is sent.
/// </summary>
/// <param name="colours">Escape sequence for the colours; empty leaves them to the terminal.</param>
internal sealed class FrameWriter(string colours)
{
    private const string ShowCursor = "\u001b[?25h";
    private const string ClearScreen = "\u001b[2J";
    private const string PlainColours = "\u001b[0m";

    private readonly StringBuilder _frame = new();
    private string[]? _before;
    private int _lastEnd;
    private (int Row, int Column)? _cursor;

    /// <summary>Nothing of the last frame is on the terminal any more.</summary>
    internal void Forget() => _before = null;

    /// <summary>What has to be written; empty when nothing changed. The library's own buffer is left with nothing to send.</summary>
    /// <param name="buffer">The frame as drawn.</param>
    /// <param name="rows">What was drawn.</param>
    /// <param name="echo">True while typing: then the changed part of a row is written alone.</param>
    internal string Compose(IOutputBuffer buffer, ScreenRows rows, bool echo)
    {
        var cursor = (rows.CursorRow, rows.CursorColumn);
        string[] now = Texts(buffer);
        _frame.Clear();
        if (now.Length == 0 || now[0].Length == 0)
        {
            return string.Empty;
        }

        if (_before is null || _before.Length != now.Length || _before[0].Length != now[0].Length)
        {
            _frame.Append(colours).Append(ClearScreen).Append(ShowCursor);
            _before = [.. now.Select(r => colours.Length > 0 ? string.Empty : new string(' ', r.Length))];
            _cursor = null;
        }

        for (int y = 0; y < now.Length; y++)
        {
            if (now[y] != _before[y])
            {
                // An answer line of several rows runs on over the edge: with a move between them a reader says it in pieces.
                bool runsOn = y > rows.AnswerRow && now[y - 1] != _before[y - 1] && !string.IsNullOrWhiteSpace(now[y]);
                Row(y, _before[y], now[y], echo, runsOn);
            }
        }

        _before = now;
        if (_frame.Length > 0 || _cursor != cursor)
        {
            Move(cursor.CursorRow, cursor.CursorColumn);
        }

        _cursor = cursor;
        return _frame.Length > 0 && colours.Length > 0 ? $"{colours}{_frame}{PlainColours}" : _frame.ToString();
    }

    /// <summary>The rows of a frame. What the library would send of it is taken from it.</summary>
    internal static string[] Texts(IOutputBuffer buffer)
    {
        var cells = buffer.Contents!;
        var rows = new string[cells.GetLength(0)];
        var row = new StringBuilder();
        for (int y = 0; y < rows.Length; y++)
        {
            row.Clear();
            for (int x = 0; x < cells.GetLength(1); x++)
            {
                row.Append(cells[y, x].Grapheme);
                cells[y, x].IsDirty = false;
            }

            rows[y] = row.ToString();
            buffer.DirtyLines[y] = false;
        }

        return rows;
    }

    private void Row(int y, string before, string now, bool echo, bool runsOn)
    {
        int first = 0;
        if (echo)
        {
            while (first < now.Length - 1 && first < before.Length && before[first] == now[first])
            {
                first++;
            }
        }

        // In colours of our own the whole row is painted; otherwise no blanks are sent beyond what they have to wipe out.
        int end = colours.Length > 0 ? now.Length : Math.Max(now.TrimEnd().Length, before.TrimEnd().Length);
        if (runsOn)
        {
            _frame.Append(' ', now.Length - _lastEnd);
        }
        else
        {
            Move(y, first);
        }

        _lastEnd = end;
        _frame.Append(now.AsSpan(first, Math.Max(end - first, 0)));
    }

    private void Move(int row, int column) => _frame.Append(CultureInfo.InvariantCulture, $"\u001b[{row + 1};{column + 1}H");
}
