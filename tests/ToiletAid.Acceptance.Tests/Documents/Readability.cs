using System.Text.RegularExpressions;

namespace ToiletAid.Acceptance.Tests.Documents;

/// <summary>Grade formulas. Flesch-Kincaid (Kincaid 1975): 0.39 words a sentence + 11.8 syllables a word - 15.59.
/// SMOG (McLaughlin 1969): 1.0430 root of (polysyllables times 30 over sentences) + 3.1291; valid from 30 sentences on.</summary>
internal static partial class Readability
{
    internal static double FleschKincaid(double words, double sentences, double syllables) => (0.39 * words / sentences) + (11.8 * syllables / words) - 15.59;

    internal static double Smog(double sentences, double polysyllables) => (1.0430 * Math.Sqrt(polysyllables * 30 / sentences)) + 3.1291;

    /// <summary>Coleman and Liau 1975: letters and sentences for 100 words.</summary>
    internal static double ColemanLiau(double letters, double words, double sentences) => (0.0588 * letters * 100 / words) - (0.296 * sentences * 100 / words) - 15.8;

    /// <summary>The same of running text. It has no smallest length, as SMOG has; a number counts by its digits.</summary>
    internal static double ColemanLiau(string text) => ColemanLiau(text.Count(char.IsLetterOrDigit), Word().Count(text), SentenceEnd().Count(text));

    /// <summary>Grades of running text: every sentence ends in a full stop, and a number counts as the word it is read as.</summary>
    internal static (double FleschKincaid, double Smog) Of(string text)
    {
        int sentences = SentenceEnd().Count(text);
        int[] words = [.. Word().Matches(text).Select(m => Syllables(m.Value))];
        return (FleschKincaid(words.Length, sentences, words.Sum()), Smog(sentences, words.Count(s => s >= 3)));
    }

    internal static IEnumerable<string> Sentences(string text) => SentenceEnd().Split(text).Where(s => Words(s) > 0);

    internal static int Words(string text) => Word().Count(text);

    /// <summary>Groups of vowels, but for a silent e at the end and for -es and -ed that are not spoken.</summary>
    internal static int Syllables(string word)
    {
        string w = word.ToLowerInvariant();
        if (char.IsAsciiDigit(w[0]))
        {
            return DigitSyllables(w);
        }

        int count = Vowels().Count(w);
        bool silent = (w.EndsWith('e') && !w.EndsWith("le", StringComparison.Ordinal) && !w.EndsWith("ee", StringComparison.Ordinal) && !SpokenRe().IsMatch(w))
            || (SilentEs().IsMatch(w) && !SpokenRe().IsMatch(w)) || SilentEd().IsMatch(w) || SilentInside().IsMatch(w);
        return Math.Max(1, count - (silent ? 1 : 0));
    }

    private static int DigitSyllables(string number)
    {
        // Seven and nought have two; tens two; the hundred and each further group two more.
        int value = int.Parse(number, System.Globalization.CultureInfo.InvariantCulture);
        return value switch
        {
            7 or 0 or (>= 13 and <= 16) or 18 or 19 or 20 or 30 or 40 or 50 or 60 or 80 or 90 => 2,
            11 or 17 or 70 => 3,
            < 13 => 1,
            < 100 => DigitSyllables($"{value / 10 * 10}") + DigitSyllables($"{value % 10}"),
            < 1000 => DigitSyllables($"{value / 100}") + 2 + (value % 100 == 0 ? 0 : 1 + DigitSyllables($"{value % 100}")),
            _ => 6,
        };
    }

    [GeneratedRegex(@"[.!?](?=\s|$)", RegexOptions.None, 10_000)]
    private static partial Regex SentenceEnd();

    [GeneratedRegex(@"\d+|[A-Za-z]+", RegexOptions.None, 10_000)]
    private static partial Regex Word();

    [GeneratedRegex("[aeiouy]+", RegexOptions.None, 10_000)]
    private static partial Regex Vowels();

    [GeneratedRegex("[^aeiouy]res?$", RegexOptions.None, 10_000)]
    private static partial Regex SpokenRe();

    [GeneratedRegex("[^aeiouysxzcgh]es$", RegexOptions.None, 10_000)]
    private static partial Regex SilentEs();

    [GeneratedRegex("[^aeiouytd]ed$", RegexOptions.None, 10_000)]
    private static partial Regex SilentEd();

    [GeneratedRegex("^(some|there|here|where|safe|care|life|home|time)[a-z]{3,}$", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex SilentInside();
}
