using System.Text;

namespace ToiletAidTui.Host;

/// <summary>Keys as the console of Windows gives them: as keys, so that none is lost in a code page.</summary>
internal sealed class WindowsKeys : IKeys
{
    private char _high;

    /// <inheritdoc/>
    public bool IsHeld => true;

    /// <inheritdoc/>
    public void Hold()
    {
        // It never edits lines by itself while keys are asked for.
    }

    /// <inheritdoc/>
    public void Release()
    {
        // Nothing was changed.
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        // Nothing is held.
    }

    /// <inheritdoc/>
    public TypedKey? Next(Turn? turn)
    {
        try
        {
            return Of(turn is null ? Console.ReadKey(intercept: true) : turn.Wait(() => Console.ReadKey(intercept: true)));
        }
        catch (InvalidOperationException)
        {
            // There is no console any more.
            return null;
        }
    }

    /// <summary>The key in the words of the program.</summary>
    internal TypedKey Of(ConsoleKeyInfo key)
    {
        // AltGr is Control with Alt, and types characters such as @ on many keyboards.
        bool control = key.Modifiers.HasFlag(ConsoleModifiers.Control) && !key.Modifiers.HasFlag(ConsoleModifiers.Alt);
        char high = _high;
        _high = default;
        switch (key.Key)
        {
            case ConsoleKey.Enter:
                return TypedKey.Enter;
            case ConsoleKey.Backspace:
                return TypedKey.Backspace;
            case ConsoleKey.Escape:
                return new(default, "Esc");
            case >= ConsoleKey.F1 and <= ConsoleKey.F24:
                return new(default, key.Key.ToString());
            case ConsoleKey.Z when control:
                // As Windows has it for the end of what is typed.
                return TypedKey.EndOfInput;
            case >= ConsoleKey.A and <= ConsoleKey.Z when control:
                return TypedKey.Control((char)('A' + (key.Key - ConsoleKey.A)));
            default:
                break;
        }

        char typed = key.KeyChar;
        if (char.IsHighSurrogate(typed))
        {
            _high = typed;
            return TypedKey.Nothing;
        }

        return Rune.TryCreate(high, typed, out var pair) ? new(pair, null)
            : typed >= ' ' && Rune.TryCreate(typed, out var rune) ? new(rune, null) : TypedKey.Nothing;
    }
}
