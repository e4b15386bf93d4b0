using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>Starts the program that saves one session after another (ToiletAid.Saver), and reads what it says.</summary>
internal static class Saver
{
    private const string Draft = "draft";

    private static readonly string Program = BuiltProgram.Find("TOILETAID_SAVER", "ToiletAid.Saver", "ToiletAid.Saver");

    /// <summary>Starts it.</summary>
    /// <param name="path">The profile.</param>
    /// <param name="first">Number of the first session.</param>
    /// <param name="count">How many.</param>
    /// <param name="drafts">True to keep each session in a draft before it is saved, as an interview does, and to say that too.</param>
    internal static Process Start(string path, int first, int count, bool drafts = false)
    {
        var start = new ProcessStartInfo(Program) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        start.ArgumentList.Add(path);
        start.ArgumentList.Add(first.ToString(CultureInfo.InvariantCulture));
        start.ArgumentList.Add(count.ToString(CultureInfo.InvariantCulture));
        if (drafts)
        {
            start.ArgumentList.Add(Draft);
        }

        start.Environment["DOTNET_TieredPGO"] = "0";
        return Process.Start(start)!;
    }

    /// <summary>Numbers that were said to be saved; a line without its end was not said.</summary>
    internal static ImmutableArray<int> Said(string output) => [.. Lines(output).Where(l => char.IsAsciiDigit(l[0])).Select(l => int.Parse(l, CultureInfo.InvariantCulture))];

    /// <summary>The last number that was said to be in the draft; null when there was none.</summary>
    internal static int? SaidDraft(string output) =>
        Lines(output).LastOrDefault(l => l.StartsWith(Draft, StringComparison.Ordinal)) is { } line ? int.Parse(line[(Draft.Length + 1)..], CultureInfo.InvariantCulture) : null;

    private static string[] Lines(string output) => output[..(output.LastIndexOf('\n') + 1)].Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
