using ToiletAidTui.Keys;

namespace ToiletAidTui.Screens;

/// <summary>A line being typed.</summary>
internal sealed class TypedLine
{
    /// <summary>No answer is longer.</summary>
    private const int LongestLine = 400;

    /// <summary>What is typed so far.</summary>
    internal string Text { get; private set; } = string.Empty;

    /// <summary>Where the next character goes.</summary>
    internal int Caret { get; private set; }

    /// <summary>Takes what is typed out and starts anew.</summary>
    internal string Take()
    {
        string text = Text;
        (Text, Caret) = (string.Empty, 0);
        return text;
    }

    /// <summary>Begins with a text that is there already, at its end.</summary>
    internal void Put(string text) => (Text, Caret) = (text, text.Length);

    /// <summary>Edits, where the key is one that edits; false where it is not.</summary>
    internal bool Edit(KeyPress key)
    {
        switch (key.Action)
        {
            case KeyAction.Text when Text.Length < LongestLine:
                Text = Text.Insert(Caret, key.Text);
                Caret += key.Text.Length;
                return true;
            case KeyAction.Erase when Caret > 0:
                Text = Text.Remove(--Caret, 1);
                return true;
            case KeyAction.Delete when Caret < Text.Length:
                Text = Text.Remove(Caret, 1);
                return true;
            case KeyAction.Left when Caret > 0:
                Caret--;
                return true;
            case KeyAction.Right when Caret < Text.Length:
                Caret++;
                return true;
            case KeyAction.First:
                Caret = 0;
                return true;
            case KeyAction.Last:
                Caret = Text.Length;
                return true;
            default:
                return false;
        }
    }
}
