using System.Runtime.InteropServices;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace ToiletAidTui.Host;

/// <summary>
/// Lines typed at a terminal, read key by key and shown by the program itself: the terminal's own editing and the console's reader both let the keys
/// of cursor and function through as strange characters, and the latter asks the terminal questions that nobody answers under a screen reader.
/// </summary>
internal sealed partial class Keyboard : IDisposable
{
    /// <summary>Longest line that people type.</summary>
    private const int Longest = 4096;

    /// <summary>How long the rest of a key's sequence may take after Escape. A person takes longer.</summary>
    private const int MillisecondsOfSequence = 60;

    private const short CanRead = 1;
    private const char Escape = '\u001b';
    private const char Erase = '\u007f';
    private const char EndOfInput = '\u0004';
    private const string TakeBack = "\b \b";

    private readonly FileStream _stream;
    private readonly TextWriter _echo;
    private readonly byte[] _buffer = new byte[Longest];
    private HeldModes? _modes;
    private int _next;
    private int _end;

    private Keyboard(FileStream stream, TextWriter echo) => (_stream, _echo) = (stream, echo);

    /// <summary>The word that a key stands for, such as save for Ctrl+S; null for a key that stands for none.</summary>
    internal Func<string, string?> Word { get; set; } = _ => null;

    /// <summary>So many digits, from 1, are an answer by themselves, without Enter; 0 for none. It holds for the next line only.</summary>
    internal int AtOnce { get; set; }

    /// <summary>True once it reads key by key, until it rests.</summary>
    internal bool IsAwake => _modes is not null;

    /// <summary>The keyboard of standard input; null on Windows, whose own editing of lines has none of these faults.</summary>
    /// <param name="echo">Where what is typed is shown.</param>
    internal static Keyboard? OfInput(TextWriter echo) => OperatingSystem.IsWindows() ? null
        : new(new FileStream(new SafeFileHandle(0, ownsHandle: false), FileAccess.Read, bufferSize: 1), echo);

    /// <summary>The next line; null at the end of input.</summary>
    /// <param name="turn">Passed on while it waits; null where no signal is listened for.</param>
    /// <param name="hidden">True where what is typed is not shown.</param>
    internal string? ReadLine(Turn? turn, bool hidden = false)
    {
        int digits = AtOnce;
        AtOnce = 0;
        try
        {
            Hold();
            return Line(turn, hidden, digits);
        }
        catch (IOException)
        {
            // The terminal is gone, and with it whoever typed.
            return null;
        }
    }

    /// <summary>Reads key by key from now on, before anything is asked: what is typed ahead must not be shown by the terminal itself.</summary>
    internal void Wake()
    {
        try
        {
            Hold();
        }
        catch (IOException)
        {
            // The terminal is gone, as the next line will find.
        }
    }

    /// <summary>Gives the terminal back as it was until the next line is read.</summary>
    internal void Rest()
    {
        _modes?.Dispose();
        _modes = null;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Rest();
        _stream.Dispose();
    }

    private void Hold() => _modes ??= new(0, m => m.ByKey(), () => { }, drops: false);

    private string? Line(Turn? turn, bool hidden, int digits)
    {
        var line = new List<Rune>();
        while (Next(turn) is { } rune)
        {
            char key = rune.IsBmp ? (char)rune.Value : '\0';
            switch (key)
            {
                case '\n' or '\r':
                    Show("\n");
                    return string.Concat(line);
                case Erase or '\b':
                    if (line.Count > 0)
                    {
                        line.RemoveAt(line.Count - 1);
                        Show(hidden ? string.Empty : TakeBack);
                    }

                    break;
                case EndOfInput when line.Count == 0:
                    return null;
                case Escape when !hidden && Sequence() is { } name && Word(name) is { } word:
                    Show("\n");
                    return word;
                case Escape:
                    break;
                case > '\0' and < ' ' when !hidden && Word($"Ctrl+{(char)(key + 'A' - 1)}") is { } word:
                    Show("\n");
                    return word;
                case > '\0' and < ' ':
                    break;
                default:
                    if (line.Count < Longest)
                    {
                        line.Add(rune);
                        Show(hidden ? string.Empty : rune.ToString());
                    }

                    if (line.Count == 1 && key - '0' is > 0 and < 10 and var digit && digit <= digits)
                    {
                        Show("\n");
                        return string.Concat(line);
                    }

                    break;
            }
        }

        return line.Count > 0 ? string.Concat(line) : null;
    }

    private void Show(string text)
    {
        if (text.Length > 0)
        {
            _echo.Write(text);
            _echo.Flush();
        }
    }

    /// <summary>The next character; null at the end of input.</summary>
    private Rune? Next(Turn? turn)
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
