using System.Text;

namespace ToiletAidTui.Host;

/// <summary>One key that was pressed.</summary>
/// <param name="Character">What it types; nothing where it has a name.</param>
/// <param name="Name">Its name, such as F2, Esc or Ctrl+S; empty for a key that does nothing in a line; null for a character.</param>
internal readonly record struct TypedKey(Rune Character, string? Name)
{
    internal static readonly TypedKey Enter = new(default, nameof(Enter));
    internal static readonly TypedKey Backspace = new(default, nameof(Backspace));
    internal static readonly TypedKey Nothing = new(default, string.Empty);

    /// <summary>Control D, as terminals have it for the end of what is typed.</summary>
    internal static readonly TypedKey EndOfInput = Control('D');

    /// <summary>A letter or sign with Control.</summary>
    internal static TypedKey Control(char letter) => new(default, $"Ctrl+{letter}");
}
