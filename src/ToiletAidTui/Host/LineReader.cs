using System.Text;

namespace ToiletAidTui.Host;

/// <summary>Reads lines straight from the stream. The console's own reader writes escape sequences that screen readers speak.</summary>
/// <param name="stream">Where lines come from.</param>
/// <param name="turn">Passed on while it waits for input; null where no signal is listened for.</param>
/// <param name="longest">Longest line that is taken, bytes; what follows in a longer one is dropped.</param>
public sealed class LineReader(Stream stream, Turn? turn = null, int longest = LineReader.LongestTyped)
{
    /// <summary>Longest line that people type, bytes.</summary>
    private const int LongestTyped = 4096;

    private readonly byte[] _buffer = new byte[4096];
    private int _next;
    private int _end;

    /// <summary>The next line without its end, or null at the end of input.</summary>
    public string? ReadLine() => ReadBytes() is { } line ? Encoding.UTF8.GetString(line).TrimEnd('\r') : null;

    /// <summary>The bytes of the next line without its end, or null at the end of input.</summary>
    public byte[]? ReadBytes()
    {
        using var line = new MemoryStream();
        bool any = false;
        while (Fill())
        {
            any = true;
            var rest = _buffer.AsSpan(_next, _end - _next);
            int end = rest.IndexOf((byte)'\n');
            var piece = end < 0 ? rest : rest[..end];
            line.Write(piece[..(int)Math.Min(piece.Length, longest - line.Length)]);
            _next += end < 0 ? rest.Length : end + 1;
            if (end >= 0)
            {
                break;
            }
        }

        return any ? line.ToArray() : null;
    }

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
