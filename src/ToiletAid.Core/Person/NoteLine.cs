using System.Globalization;
using System.Text;

namespace ToiletAid.Core.Person;

/// <summary>What may stand in a line of the free note of a visit.</summary>
public static class NoteLine
{
    /// <summary>Longest line, characters. A decision of this project: what is longer belongs on two lines, since each is read aloud in one go.</summary>
    public const int Longest = 300;

    /// <summary>Most lines of one visit. A decision of this project.</summary>
    public const int Most = 20;

    /// <summary>What is wrong with a line, as the end of a sentence that begins with it; null when nothing is.</summary>
    /// <param name="line">The line, without its end.</param>
    public static string? Fault(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        if (string.IsNullOrWhiteSpace(line))
        {
            return "is empty, write something or leave it out";
        }

        int length = 0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (!CanBeRead(rune))
            {
                return "has a character that cannot be read aloud or printed, write it without";
            }

            length++;
        }

        return length > Longest ? $"has {length} characters, at most {Longest} are taken, write it in two lines" : null;
    }

    /// <summary>Control characters would be obeyed by a terminal, marks of direction would turn the words of others round.</summary>
    private static bool CanBeRead(Rune rune) => rune != Rune.ReplacementChar && Rune.GetUnicodeCategory(rune)
        is not (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned);
}
