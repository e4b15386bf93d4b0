using System.Text;

namespace ToiletAidTui.Host;

/// <summary>Reads lines straight from the stream. The console's own reader writes escape sequences that screen readers speak.</summary>
/// <param name="stream">Where lines come from.</param>
/// <param name="turn">Passed on while it waits for input; null where no signal is listened for.</param>
public sealed class LineReader(Stream stream, Turn? turn = null)
{
    /// <summary>Longest line that is taken, bytes; what follows in a longer one is dropped.</summary>
    private const int LongestLine = 4096;

    private readonly byte[] _buffer = new byte[4096];
    private int _next;
    private int _end;

    /// <summary>The next line without its end, or null at the end of input.</summary>
    public string? ReadLine()
    {
        using var line = new MemoryStream();
        bool any = false;
        while (Next() is { } b)
        {
            any = true;
            if (b == (byte)'\n')
            {
                break;
            }

            if (line.Length < LongestLine)
            {
                line.WriteByte(b);
            }
        }

        return any ? Encoding.UTF8.GetString(line.GetBuffer(), 0, (int)line.Length).TrimEnd('\r') : null;
    }

    private byte? Next()
    {
        if (_next == _end)
        {
            _end = turn is null ? stream.Read(_buffer) : turn.Wait(() => stream.Read(_buffer));
            _next = 0;
        }

        return _end <= 0 ? null : _buffer[_next++];
    }
}
