using System.Text;

namespace ToiletAidTui.Host;

/// <summary>
/// Lines typed at a terminal, read key by key and shown by the program itself: the terminal's own editing and the console's reader both let the keys
/// of cursor and function through as strange characters, and the latter asks the terminal questions that nobody answers under a screen reader.
/// </summary>
/// <param name="keys">Where keys come from.</param>
/// <param name="echo">Where what is typed is shown.</param>
internal sealed class Keyboard(IKeys keys, TextWriter echo) : IDisposable
{
    /// <summary>Longest line that people type.</summary>
    private const int Longest = 4096;

    private const string TakeBack = "\b \b";

    /// <summary>The word that a key stands for, such as save for Ctrl+S; null for a key that stands for none.</summary>
    internal Func<string, string?> Word { get; set; } = _ => null;

    /// <summary>So many digits, from 1, are an answer by themselves, without Enter; 0 for none. It holds for the next line only.</summary>
    internal int AtOnce { get; set; }

    /// <summary>True once it reads key by key, until it rests.</summary>
    internal bool IsAwake => keys.IsHeld;

    /// <summary>The keyboard of standard input.</summary>
    /// <param name="echo">Where what is typed is shown.</param>
    internal static Keyboard OfInput(TextWriter echo) => new(OperatingSystem.IsWindows() ? new WindowsKeys() : new TerminalKeys(), echo);

    /// <summary>The next line; null at the end of input.</summary>
    /// <param name="turn">Passed on while it waits; null where no signal is listened for.</param>
    /// <param name="hidden">True where what is typed is not shown.</param>
    internal string? ReadLine(Turn? turn, bool hidden = false)
    {
        int digits = AtOnce;
        AtOnce = 0;
        try
        {
            keys.Hold();
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
            keys.Hold();
        }
        catch (IOException)
        {
            // The terminal is gone, as the next line will find.
        }
    }

    /// <summary>Gives the terminal back as it was until the next line is read.</summary>
    internal void Rest() => keys.Release();

    /// <inheritdoc/>
    public void Dispose() => keys.Dispose();

    private string? Line(Turn? turn, bool hidden, int digits)
    {
        var line = new List<Rune>();
        while (keys.Next(turn) is { } key)
        {
            if (key == TypedKey.Enter)
            {
                Show("\n");
                return string.Concat(line);
            }

            if (key == TypedKey.EndOfInput && line.Count == 0)
            {
                return null;
            }

            if (key == TypedKey.Backspace)
            {
                TakeBackLast(line, hidden);
            }
            else if (key.Name is { } name)
            {
                if (!hidden && Word(name) is { } word)
                {
                    Show("\n");
                    return word;
                }
            }
            else if (line.Count < Longest)
            {
                line.Add(key.Character);
                Show(hidden ? string.Empty : key.Character.ToString());
                if (line.Count == 1 && key.Character.Value - '0' is > 0 and < 10 and var digit && digit <= digits)
                {
                    Show("\n");
                    return string.Concat(line);
                }
            }
        }

        return line.Count > 0 ? string.Concat(line) : null;
    }

    private void TakeBackLast(List<Rune> line, bool hidden)
    {
        if (line.Count > 0)
        {
            line.RemoveAt(line.Count - 1);
            Show(hidden ? string.Empty : TakeBack);
        }
    }

    private void Show(string text)
    {
        if (text.Length > 0)
        {
            echo.Write(text);
            echo.Flush();
        }
    }
}
