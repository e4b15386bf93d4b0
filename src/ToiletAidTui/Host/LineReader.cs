using System.Text;

namespace ToiletAidTui.Host;

/// <summary>Reads lines as they are typed, straight from the stream or key by key. The console's own reader writes escape sequences that screen readers speak.</summary>
/// <param name="stream">Where lines come from, unless there is a keyboard.</param>
/// <param name="turn">Passed on while it waits for input; null where no signal is listened for.</param>
public sealed class LineReader(Stream stream, Turn? turn = null)
{
    /// <summary>Longest line that people type, bytes; what follows in a longer one is dropped.</summary>
    private const int Longest = 4096;

    private readonly byte[] _buffer = new byte[Longest];
    private int _next;
    private int _end;
    private (bool Is, string? Line) _back;

    /// <summary>The keyboard of a terminal; null for anything else.</summary>
    internal Keyboard? Keyboard { get; init; }

    /// <summary>The next line without its end, or null at the end of input.</summary>
    public string? ReadLine()
    {
        if (_back is (true, var back))
        {
            _back = default;
            return back;
        }

        if (Keyboard is { } keyboard)
        {
            return keyboard.ReadLine(turn);
        }

        using var line = new MemoryStream();
        bool any = false;
        while (Fill())
        {
            any = true;
            var rest = _buffer.AsSpan(_next, _end - _next);
            int end = rest.IndexOf((byte)'\n');
            var piece = end < 0 ? rest : rest[..end];
            line.Write(piece[..(int)Math.Min(piece.Length, Longest - line.Length)]);
            _next += end < 0 ? rest.Length : end + 1;
            if (end >= 0)
            {
                break;
            }
        }

        return any ? Encoding.UTF8.GetString(line.GetBuffer(), 0, (int)line.Length).TrimEnd('\r') : null;
    }

    /// <summary>Gives a line that was read back: it is the next one that is read.</summary>
    /// <param name="line">The line; null for the end of input.</param>
    internal void PutBack(string? line) => _back = (true, line);

    /// <summary>True when there is something in the buffer.</summary>
    private bool Fill()
    {
        if (_next == _end)
        {
            _end = turn is null ? stream.Read(_buffer) : turn.Wait(() => stream.Read(_buffer));
            _next = 0;
        }

        return _end > 0;
    }
}
