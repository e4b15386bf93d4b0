using ToiletAid.App.Sessions;
using ToiletAidTui.Keys;

namespace ToiletAidTui.Screens;

/// <summary>One screen: text that stays as it is, and one answer line, the only line that changes while the screen is shown.</summary>
internal abstract class Page
{
    /// <summary>Its name, for tests and captures.</summary>
    internal abstract string Name { get; }

    /// <summary>The text, a sentence or an option a line.</summary>
    internal abstract IReadOnlyList<string> Lines { get; }

    /// <summary>The answer line in words, the fullest first. It makes sense alone: a braille display shows nothing else.</summary>
    internal abstract IEnumerable<string> AnswerForms { get; }

    /// <summary>Why the last answer was not taken, for a line of its own above the answer line; empty when it was.</summary>
    internal virtual string Error => string.Empty;

    /// <summary>Where the cursor stands in the answer line: on its first character, or where a character would be typed.</summary>
    internal virtual int Caret => 0;

    /// <summary>True while characters are typed: then only the typed character is written, as an echo.</summary>
    internal virtual bool IsTyping => false;

    /// <summary>The free note that the page itself takes; null where the one of the visit is meant.</summary>
    internal virtual SessionNote? OwnNote => null;

    /// <summary>Acts on a key. Keys that mean nothing here change nothing.</summary>
    internal abstract void Press(Shell shell, KeyPress key);

    /// <summary>Goes back one step.</summary>
    internal virtual void Back(Shell shell) => shell.Pop();

    /// <summary>What helps with this screen, before the keys are told.</summary>
    internal virtual IEnumerable<string> Help() => [];
}
