using System.Globalization;
using System.Text;

namespace ToiletAid.App.Typed;

/// <summary>Takes typed text apart into numbers and the words behind them. Total: any text gives a result.</summary>
/// <remarks>A comma is a decimal mark, as in "1,5 kg", unless exactly three digits follow it ("1,500 g"): then it could set
/// thousands apart, the two readings differ a thousandfold, and the text is refused (decision).</remarks>
internal static class QuantityScanner
{
    private const int LongestText = 60;
    private const int MostParts = 2;

    /// <summary>Takes <paramref name="text"/> apart.</summary>
    public static ScannedText Scan(string text)
    {
        string plain = Plain(text);
        if (plain.Length == 0)
        {
            return new(ScanFault.Empty, []);
        }

        if (plain.Length > LongestText)
        {
            return new(ScanFault.TooLong, []);
        }

        var parts = new List<TypedPart>(MostParts);
        int i = 0;
        while (i < plain.Length)
        {
            int start = i;
            i = EndOfNumber(plain, i);
            if (i == start)
            {
                return new(ScanFault.NoNumber, parts);
            }

            string digits = plain[start..i].Replace(" ", string.Empty, StringComparison.Ordinal).TrimEnd('.', ',');
            int wordStart = i;
            i = EndOfWord(plain, i);
            string word = Word(plain[wordStart..i]);
            var fault = Read(digits, out double number, out double other);
            if (fault == ScanFault.None && parts.Count == MostParts)
            {
                fault = ScanFault.TooManyNumbers;
            }

            if (fault != ScanFault.None)
            {
                parts.Add(new(number, word));
                return new(fault, parts, new TypedPart(other, word));
            }

            parts.Add(new(number, word));
        }

        return new(ScanFault.None, parts);
    }

    private static string Plain(string text)
    {
        var plain = new StringBuilder(Math.Min(text.Length, LongestText + 1));
        foreach (char c in text.Trim())
        {
            char mapped = char.IsWhiteSpace(c) ? ' ' : Mapped(c);
            bool repeatsSpace = mapped == ' ' && plain.Length > 0 && plain[^1] == ' ';
            if (!repeatsSpace && plain.Length <= LongestText)
            {
                plain.Append(char.ToLowerInvariant(mapped));
            }
        }

        return plain.ToString();
    }

    /// <summary>Typographic marks as a plain keyboard writes them.</summary>
    private static char Mapped(char c) => c switch
    {
        '\u2018' or '\u2019' or '\u2032' or '\u00B4' or '`' => '\'',
        '\u201C' or '\u201D' or '\u2033' => '"',
        '\u2212' or '\u2013' => '-',
        _ => c,
    };

    private static bool IsFraction(char c) => c is '\u00BC' or '\u00BD' or '\u00BE';

    private static bool StartsNumber(string s, int i)
    {
        char c = s[i];
        if (char.IsAsciiDigit(c) || IsFraction(c))
        {
            return true;
        }

        bool beforeNumber = i + 1 < s.Length && (char.IsAsciiDigit(s[i + 1]) || IsFraction(s[i + 1]));
        bool afterDigit = i > 0 && char.IsAsciiDigit(s[i - 1]);
        return beforeNumber && ((c is '.' or ',' && !afterDigit) || c is '-' or '+');
    }

    private static int EndOfNumber(string s, int i)
    {
        if (!StartsNumber(s, i))
        {
            return i;
        }

        if (s[i] is '-' or '+')
        {
            i++;
        }

        while (i < s.Length && (char.IsAsciiDigit(s[i]) || s[i] is '.' or ','))
        {
            i++;
        }

        int beyondSpace = i < s.Length && s[i] == ' ' ? i + 1 : i;
        return beyondSpace < s.Length && IsFraction(s[beyondSpace]) ? beyondSpace + 1 : i;
    }

    private static int EndOfWord(string s, int i)
    {
        while (i < s.Length && !StartsNumber(s, i))
        {
            i++;
        }

        return i;
    }

    private static string Word(string raw)
    {
        string word = raw.Trim(' ', ',', '.', ';');
        return word == "and" ? string.Empty
            : word.EndsWith(" and", StringComparison.Ordinal) ? word[..^4].TrimEnd(' ', ',', '.')
            : word;
    }

    private static ScanFault Read(string digits, out double number, out double other)
    {
        other = 0;
        double fraction = 0;
        if (digits.Length > 0 && IsFraction(digits[^1]))
        {
            fraction = digits[^1] switch { '\u00BC' => 0.25, '\u00BD' => 0.5, _ => 0.75 };
            digits = digits[..^1];
        }

        double sign = digits.StartsWith('-') ? -1 : 1;
        string body = digits.TrimStart('-', '+');
        int marks = body.Count(c => c is '.' or ',');
        if (fraction > 0)
        {
            number = sign * (fraction + (body.Length == 0 ? 0 : Parse(body)));
            return marks == 0 ? ScanFault.None : ScanFault.NoNumber;
        }

        if (marks > 1)
        {
            return ReadThousands(body, sign, out number);
        }

        number = sign * Parse(body.Replace(',', '.'));
        int comma = body.IndexOf(',', StringComparison.Ordinal);
        if (comma is >= 1 and <= 3 && body.Length - comma == 4 && body[0] != '0')
        {
            other = number;
            number = sign * Parse(body.Remove(comma, 1));
            return ScanFault.CommaOfTwoMeanings;
        }

        return ScanFault.None;
    }

    /// <summary>"1,234.5", "1.234,5" or "1,234,567"; anything else with several marks is not a number.</summary>
    private static ScanFault ReadThousands(string body, double sign, out double number)
    {
        number = 0;
        int last = body.LastIndexOfAny(['.', ',']);
        bool lastIsDecimal = body.AsSpan(0, last).IndexOf(body[last]) < 0;
        string whole = lastIsDecimal ? body[..last] : body;
        string[] groups = whole.Split('.', ',');
        bool oneMark = !(whole.Contains('.', StringComparison.Ordinal) && whole.Contains(',', StringComparison.Ordinal));
        if (!oneMark || groups[0].Length is 0 or > 3 || groups.Skip(1).Any(g => g.Length != 3))
        {
            return ScanFault.NoNumber;
        }

        number = sign * Parse(string.Concat(groups) + (lastIsDecimal ? "." + body[(last + 1)..] : string.Empty));
        return ScanFault.ThousandsSetApart;
    }

    private static double Parse(string digits) =>
        double.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) ? value : 0;
}
