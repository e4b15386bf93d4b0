namespace ToiletAidTui.Batch;

/// <summary>Splits a stream at line ends. A line that is longer than allowed is passed over without being kept, so that no input fills the memory.</summary>
/// <param name="stream">Where lines come from.</param>
/// <param name="longest">Longest line that is kept, bytes.</param>
internal sealed class LineSplitter(Stream stream, int longest)
{
    private readonly byte[] _buffer = new byte[64 * 1024];
    private int _next;
    private int _end;

    /// <summary>The next line without its end, or null for one that was too long; false at the end of input.</summary>
    internal bool Read(out byte[]? line)
    {
        line = null;
        var kept = new List<byte[]>(1);
        int length = 0;
        bool any = false, ended = false, tooLong = false;
        while (!ended && Fill())
        {
            any = true;
            var rest = _buffer.AsSpan(_next, _end - _next);
            int at = rest.IndexOf((byte)'\n');
            ended = at >= 0;
            var piece = ended ? rest[..at] : rest;
            _next += piece.Length + (ended ? 1 : 0);
            tooLong |= piece.Length > longest - length;
            if (tooLong)
            {
                kept.Clear();
                continue;
            }

            length += piece.Length;
            kept.Add(piece.ToArray());
        }

        line = tooLong || !any ? null : kept is [var one] ? one : [.. kept.SelectMany(k => k)];
        return any;
    }

    private bool Fill()
    {
        if (_next == _end)
        {
            _end = stream.Read(_buffer);
            _next = 0;
        }

        return _end > 0;
    }
}
