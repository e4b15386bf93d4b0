using System.Runtime.InteropServices;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace ToiletAidTui.Host;

/// <summary>Keys as a terminal sends them, in bytes and sequences. While they are read so, nothing is shown by the terminal itself.</summary>
internal sealed partial class TerminalKeys : IKeys
{
    /// <summary>Longest that is read at once, bytes.</summary>
    private const int Longest = 4096;

    /// <summary>How long the rest of a key's sequence may take after Escape. A person takes longer.</summary>
    private const int MillisecondsOfSequence = 60;

    private const short CanRead = 1;
    private const char Escape = '\u001b';

    private readonly FileStream _stream = new(new SafeFileHandle(0, ownsHandle: false), FileAccess.Read, bufferSize: 1);
    private readonly byte[] _buffer = new byte[Longest];
    private HeldModes? _modes;
    private int _next;
    private int _end;

    /// <inheritdoc/>
    public bool IsHeld => _modes is not null;

    /// <inheritdoc/>
    public void Hold() => _modes ??= new(0, m => m.ByKey(), () => { }, drops: false);

    /// <inheritdoc/>
    public void Release()
    {
        _modes?.Dispose();
        _modes = null;
    }

    /// <inheritdoc/>
    public TypedKey? Next(Turn? turn) => Character(turn) switch
    {
        null => null,
        { Value: Escape } => new(default, Sequence() ?? string.Empty),
        { Value: '\n' or '\r' } => TypedKey.Enter,
        { Value: '\u007f' or '\b' } => TypedKey.Backspace,
        { Value: 0 } => TypedKey.Nothing,
        { Value: < ' ' } control => TypedKey.Control((char)(control.Value + 'A' - 1)),
        { } rune => new(rune, null),
    };

    /// <inheritdoc/>
    public void Dispose()
    {
        Release();
        _stream.Dispose();
    }

    /// <summary>The next character; null at the end of input.</summary>
    private Rune? Character(Turn? turn)
    {
        while (Fill(turn))
        {
            var status = Rune.DecodeFromUtf8(_buffer.AsSpan(_next, _end - _next), out var rune, out int used);
            if (status == System.Buffers.OperationStatus.NeedMoreData && More(turn))
            {
                continue;
            }

            _next += used;
            return rune;
        }

        return null;
    }

    /// <summary>True when there is something in the buffer.</summary>
    private bool Fill(Turn? turn)
    {
        if (_next == _end)
        {
            (_next, _end) = (0, 0);
            return More(turn);
        }

        return true;
    }

    private bool More(Turn? turn)
    {
        if (_next > 0)
        {
            _buffer.AsSpan(_next, _end - _next).CopyTo(_buffer);
            (_next, _end) = (0, _end - _next);
        }

        int Read() => _stream.Read(_buffer, _end, _buffer.Length - _end);
        int got = _end == _buffer.Length ? 0 : turn is null ? Read() : turn.Wait(Read);
        _end += got;
        return got > 0;
    }

    /// <summary>The name of the key whose sequence follows an Escape that was just read; null for a key without a name.</summary>
    private string? Sequence()
    {
        if (Follows() is not { } kind)
        {
            return "Esc";
        }

        if (kind is not ('[' or 'O'))
        {
            return null;
        }

        var sequence = new StringBuilder().Append(kind);
        while (Follows() is { } c)
        {
            sequence.Append(c);
            bool isConsole = sequence.Length == 2 && c == '[';
            if (c is >= '@' and <= '~' && !isConsole)
            {
                break;
            }
        }

        return NameOf(sequence.ToString());
    }

    private char? Follows()
    {
        if (_next < _end)
        {
            return (char)_buffer[_next++];
        }

        var waiting = new Waiting { Events = CanRead };
        return Poll(ref waiting, 1, MillisecondsOfSequence) > 0 && Fill(null) ? (char)_buffer[_next++] : null;
    }

    /// <summary>Function keys as xterm, the console of Linux and older terminals send them (their terminfo entries). Others do nothing in a line.</summary>
    private static string? NameOf(string sequence) => sequence switch
    {
        "OP" or "[[A" or "[11~" => "F1",
        "OQ" or "[[B" or "[12~" => "F2",
        "OR" or "[[C" or "[13~" => "F3",
        "OS" or "[[D" or "[14~" => "F4",
        "[15~" or "[[E" => "F5",
        "[17~" => "F6",
        "[18~" => "F7",
        "[19~" => "F8",
        "[20~" => "F9",
        "[21~" => "F10",
        "[23~" => "F11",
        "[24~" => "F12",
        _ => null,
    };

    [StructLayout(LayoutKind.Sequential)]
    private struct Waiting
    {
        public int Descriptor;
        public short Events;
        public short Came;
    }

    [LibraryImport("libc", EntryPoint = "poll")]
    private static partial int Poll(ref Waiting waiting, nuint count, int milliseconds);
}
