using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Store;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>
/// A program that saves one session after another and says the number of each once the store has returned.
/// It is this test assembly itself, started with a variable that ordinary runs do not have, so that nothing of it is in the product.
/// </summary>
internal static class Saver
{
    private const string Variable = "TOILETAID_TEST_SAVER";
    private const string Person = "K-014";
    private const string Draft = "draft";

    /// <summary>Starts it.</summary>
    /// <param name="path">The profile.</param>
    /// <param name="first">Number of the first session.</param>
    /// <param name="count">How many.</param>
    /// <param name="drafts">True to keep each session in a draft before it is saved, as an interview does, and to say that too.</param>
    internal static Process Start(string path, int first, int count, bool drafts = false)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        if (Path.GetFileNameWithoutExtension(Environment.ProcessPath) == "dotnet")
        {
            start.ArgumentList.Add(typeof(Saver).Assembly.Location);
        }

        start.Environment[Variable] = string.Create(CultureInfo.InvariantCulture, $"{first} {count} {(drafts ? Draft : "save")} {path}");
        start.Environment["DOTNET_TieredPGO"] = "0";
        return Process.Start(start)!;
    }

    /// <summary>Runs before anything else of the assembly, so a saver never becomes a test run.</summary>
    [ModuleInitializer]
    internal static void RunAndExitIfAsked()
    {
        if (Environment.GetEnvironmentVariable(Variable) is not { } wanted)
        {
            return;
        }

        string[] parts = wanted.Split(' ', 4);
        int first = int.Parse(parts[0], CultureInfo.InvariantCulture), count = int.Parse(parts[1], CultureInfo.InvariantCulture);
        var store = new ProfileStore(BuiltIn.Questions());
        using var output = new StreamWriter(Console.OpenStandardOutput()) { AutoFlush = true };
        string path = parts[3];
        StoredProfile? seen = File.Exists(path) ? store.Open(path).Value : null;
        WarmUp(store);
        using var journal = parts[2] == Draft ? AnswerJournal.Start(path, BuiltIn.Questions(), passphrase: null) : null;
        output.WriteLine("ready");
        for (int i = first; i < first + count; i++)
        {
            if (journal is not null)
            {
                journal.Save(NumberedVisit.Session(i));
                output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Draft} {i}"));
            }

            var saved = Patiently(() => store.Add(path, Person, NumberedVisit.Session(i), seen));
            if (!saved.TryGet(out var now) || now.WasThere)
            {
                Console.Error.WriteLine(saved.Value is null ? saved.Issues[0].Sentence(path) : $"session {i} was there already");
                Environment.Exit(1);
            }

            seen = saved.Value!.Stored;
            output.WriteLine(i.ToString(CultureInfo.InvariantCulture));
        }

        Environment.Exit(0);
    }

    /// <summary>A save elsewhere, so that the first one that counts is not spent on compiling.</summary>
    private static void WarmUp(ProfileStore store)
    {
        using var folder = new TempFolder();
        store.Add(folder.File("K-1.json"), "K-1", NumberedVisit.Session(0), seen: null);
        store.Add(folder.File("K-1.json"), "K-1", NumberedVisit.Session(1), store.Open(folder.File("K-1.json")).Value);
        using var journal = AnswerJournal.Start(folder.File("K-1.json"), BuiltIn.Questions(), passphrase: null);
        journal.Save(NumberedVisit.Session(0));
    }

    /// <summary>On a slow machine the folder may stay locked for longer than a save waits. A person would try again, and so does this.</summary>
    private static Checked<Saved> Patiently(Func<Checked<Saved>> save)
    {
        while (true)
        {
            try
            {
                return save();
            }
            catch (FolderBusyException)
            {
                // Again.
            }
        }
    }

    /// <summary>Numbers that were said to be saved; a line without its end was not said.</summary>
    internal static ImmutableArray<int> Said(string output) => [.. Lines(output).Where(l => char.IsAsciiDigit(l[0])).Select(l => int.Parse(l, CultureInfo.InvariantCulture))];

    /// <summary>The last number that was said to be in the draft; null when there was none.</summary>
    internal static int? SaidDraft(string output) =>
        Lines(output).LastOrDefault(l => l.StartsWith(Draft, StringComparison.Ordinal)) is { } line ? int.Parse(line[(Draft.Length + 1)..], CultureInfo.InvariantCulture) : null;

    private static string[] Lines(string output) => output[..(output.LastIndexOf('\n') + 1)].Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
