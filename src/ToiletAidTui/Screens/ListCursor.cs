using System.Globalization;
using ToiletAidTui.Keys;

namespace ToiletAidTui.Screens;

/// <summary>The place in a numbered list: moved by keys, digits and first letters.</summary>
/// <param name="labels">The entries as they are read.</param>
internal sealed class ListCursor(IReadOnlyList<string> labels)
{
    private int _typed;

    /// <summary>The entry, from 0; -1 before any was reached.</summary>
    internal int Index { get; set; } = -1;

    /// <summary>True right after a digit: who typed the number need not hear out of how many it is.</summary>
    internal bool IsByNumber => _typed > 0;

    /// <summary>True right after a digit, while another one makes it a longer number.</summary>
    internal bool Continues => _typed > 0 && _typed * 10 <= labels.Count;

    /// <summary>The answer line at the entry, the fullest first: the useful word, then the place. Who typed the number need not hear it again.</summary>
    /// <param name="said">What is said of the entry.</param>
    internal string[] Forms(string said) => IsByNumber ? [said] : [$"{said}, {Index + 1} of {labels.Count}", said];

    /// <summary>True for a digit that is the number of no entry: whoever typed it has to hear so.</summary>
    internal static bool IsDigit(KeyPress key) => key is { Action: KeyAction.Text, Text.Length: 1 } && char.IsAsciiDigit(key.Text[0]);

    /// <summary>Moves, where the key is one that moves; false where it is not.</summary>
    internal bool Move(KeyPress key)
    {
        int typed = _typed;
        _typed = 0;
        switch (key.Action)
        {
            case KeyAction.Down:
                Index = Math.Min(Index + 1, labels.Count - 1);
                return true;
            case KeyAction.Up:
                Index = Index < 0 ? labels.Count - 1 : Math.Max(Index - 1, 0);
                return true;
            case KeyAction.First:
                Index = 0;
                return true;
            case KeyAction.Last:
                Index = labels.Count - 1;
                return true;
            case KeyAction.Text when key.Text.Length == 1 && char.IsAsciiDigit(key.Text[0]):
                return Digit(typed, key.Text[0] - '0');
            case KeyAction.Text when key.Text.Length == 1 && char.IsLetter(key.Text[0]):
                return Letter(key.Text);
            default:
                return false;
        }
    }

    /// <summary>A digit goes to that entry; two digits in a row are one number where the list is long enough.</summary>
    private bool Digit(int typed, int digit)
    {
        int number = (typed * 10) + digit;
        if (number > labels.Count)
        {
            number = digit;
        }

        if (number < 1 || number > labels.Count)
        {
            return false;
        }

        _typed = number;
        Index = number - 1;
        return true;
    }

    /// <summary>A letter goes to the next entry that begins with it.</summary>
    private bool Letter(string letter)
    {
        for (int i = 1; i <= labels.Count; i++)
        {
            int at = (Index + i) % labels.Count;
            if (labels[at].StartsWith(letter, true, CultureInfo.InvariantCulture))
            {
                Index = at;
                return true;
            }
        }

        return false;
    }
}
