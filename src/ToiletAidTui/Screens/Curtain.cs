using System.Security.Cryptography;
using System.Text;
using ToiletAidTui.Keys;

namespace ToiletAidTui.Screens;

/// <summary>What is shown in place of the screen while nothing of the visit may be seen, and what takes it away: Enter, or the passphrase
/// where the program was given one.</summary>
/// <param name="passphrase">The passphrase as far as it is known; null for none.</param>
internal sealed class Curtain(Func<string?> passphrase)
{
    /// <summary>The text where no passphrase is wanted.</summary>
    internal const string Hidden = "The screen is hidden.";

    private const int LongestTyped = 1000;

    private readonly StringBuilder _typed = new();
    private string? _wanted;
    private bool _wasWrong;

    /// <summary>True while it is closed.</summary>
    internal bool IsClosed { get; private set; }

    /// <summary>The text.</summary>
    internal string Line => _wanted is null ? Hidden : _wasWrong ? "That is not the passphrase. The screen is locked." : "The screen is locked.";

    /// <summary>The answer line. What is typed is not shown.</summary>
    internal string Answer => _wanted is null ? "Enter shows it again." : "Passphrase, then Enter:";

    /// <summary>Closes it.</summary>
    internal void Close()
    {
        IsClosed = true;
        _wasWrong = false;
        _typed.Clear();
        _wanted = passphrase();
    }

    /// <summary>Acts on a key; true when the screen is to be said anew.</summary>
    internal bool Press(KeyPress key)
    {
        switch (key.Action)
        {
            case KeyAction.Text when _typed.Length < LongestTyped:
                _typed.Append(key.Text);
                return false;
            case KeyAction.Erase when _typed.Length > 0:
                _typed.Length--;
                return false;
            case KeyAction.Enter:
                _wasWrong = _wanted is not null && !Same(_typed.ToString(), _wanted);
                IsClosed = _wasWrong;
                _typed.Clear();
                return true;
            default:
                return false;
        }
    }

    /// <summary>Compared in a time that does not tell how much of it was right.</summary>
    private static bool Same(string typed, string wanted) =>
        CryptographicOperations.FixedTimeEquals(SHA256.HashData(Encoding.UTF8.GetBytes(typed)), SHA256.HashData(Encoding.UTF8.GetBytes(wanted)));
}
