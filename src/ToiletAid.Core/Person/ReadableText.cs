using System.Globalization;
using System.Text;

namespace ToiletAid.Core.Person;

/// <summary>The one rule for text that comes from outside: nothing that a terminal would obey, that turns the words of others round, or that no reader can say.</summary>
public static class ReadableText
{
    /// <summary>What is wrong with a text, as the end of a sentence that begins with it; null when nothing is.</summary>
    /// <param name="text">Text on one line.</param>
    public static string? Fault(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        foreach (var rune in text.EnumerateRunes())
        {
            if (!CanBeRead(rune))
            {
                return "has a character that cannot be read aloud or printed, write it without";
            }
        }

        return null;
    }

    /// <summary>Text that was not checked, such as the name of a file, as it can be shown: a question mark for each character that a terminal would obey.</summary>
    /// <param name="text">Text on one line.</param>
    public static string Shown(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (!text.Any(IsObeyed))
        {
            return text;
        }

        char[] shown = text.ToCharArray();
        foreach (ref char c in shown.AsSpan())
        {
            c = IsObeyed(c) ? '?' : c;
        }

        return new(shown);
    }

    private static bool IsObeyed(char c) => char.GetUnicodeCategory(c)
        is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;

    /// <summary>Control characters would be obeyed by a terminal, marks of direction would turn the words of others round.</summary>
    private static bool CanBeRead(Rune rune) => rune != Rune.ReplacementChar && Rune.GetUnicodeCategory(rune)
        is not (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned);
}
