using System.Globalization;
using System.Text;

namespace ToiletAid.App.Protection;

/// <summary>
/// The same passphrase as other keyboards and editors write it: a letter with its mark is one character or two (Unicode Standard Annex 15). The base
/// library does this only with language data that the program does without, so <c>letters.txt</c> has the pairs of the Unicode Character Database up to U+1FFF:
/// the letter, and the two characters that it is made of.
/// </summary>
internal static class LetterForms
{
    private const string Source = "letters.txt";

    private static readonly Lazy<Dictionary<char, (char Base, char Mark)>> Parts = new(() => Read().ToDictionary(p => p.Whole, p => (p.Base, p.Mark)));
    private static readonly Lazy<Dictionary<(char, char), char>> Wholes = new(() => Read().ToDictionary(p => (p.Base, p.Mark), p => p.Whole));

    /// <summary>The text as it is, then its other forms, each once.</summary>
    internal static IEnumerable<string> Of(string text) =>
        text.All(char.IsAscii) ? [text] : ((string[])[text, Composed(text), Decomposed(text)]).Distinct(StringComparer.Ordinal);

    /// <summary>Every letter with its marks as one character, as far as there is one.</summary>
    internal static string Composed(string text)
    {
        var whole = new StringBuilder();
        foreach (char c in Decomposed(text))
        {
            if (whole.Length > 0 && Wholes.Value.TryGetValue((whole[^1], c), out char one))
            {
                whole[^1] = one;
            }
            else
            {
                whole.Append(c);
            }
        }

        return whole.ToString();
    }

    /// <summary>Every letter apart from its marks.</summary>
    internal static string Decomposed(string text)
    {
        var apart = new StringBuilder();
        foreach (char c in text)
        {
            Append(apart, c);
        }

        return apart.ToString();
    }

    private static void Append(StringBuilder apart, char c)
    {
        if (Parts.Value.TryGetValue(c, out var parts))
        {
            Append(apart, parts.Base);
            apart.Append(parts.Mark);
        }
        else
        {
            apart.Append(c);
        }
    }

    private static IEnumerable<(char Whole, char Base, char Mark)> Read()
    {
        using var stream = typeof(LetterForms).Assembly.GetManifestResourceStream(Source)!;
        using var reader = new StreamReader(stream);
        while (reader.ReadLine() is { } line)
        {
            char[] codes = [.. line.Split(' ').Select(c => (char)int.Parse(c, NumberStyles.HexNumber, CultureInfo.InvariantCulture))];
            yield return (codes[0], codes[1], codes[2]);
        }
    }
}
