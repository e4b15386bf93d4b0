using System.CommandLine;

namespace ToiletAidTui.Commands.Completion;

/// <summary>What can follow a command line that is half typed. The library knows; this leaves out what a person would not want, so that every shell's script can show what is left as it comes.</summary>
internal static class Suggestions
{
    /// <summary>The words that the last word can become; none where a file is wanted.</summary>
    /// <param name="root">Every command.</param>
    /// <param name="line">What stands before the cursor, with the name of the program.</param>
    internal static IEnumerable<string> Of(RootCommand root, string line)
    {
        int start = line.IndexOf(' ', StringComparison.Ordinal);
        if (start < 0)
        {
            return [];
        }

        string typed = line[(start + 1)..], word = typed[(typed.LastIndexOf(' ') + 1)..], before = string.Empty;

        // Joined by an equals sign the library fails on a value that is half typed.
        if (word.StartsWith("--", StringComparison.Ordinal) && word.IndexOf('=', StringComparison.Ordinal) is > 0 and var equals)
        {
            before = word[..(equals + 1)];
            typed = $"{typed[..^word.Length]}{word[..equals]} {word[(equals + 1)..]}";
            word = word[(equals + 1)..];
        }

        return root.Parse(typed).GetCompletions(typed.Length)
            .Select(c => c.Label)
            .Where(l => l.StartsWith(word, StringComparison.Ordinal) && (word.Length > 0 ? l.StartsWith("--", StringComparison.Ordinal) || !l.StartsWith('-') : !l.StartsWith('-')))
            .Select(l => before + l);
    }
}
