using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>
/// The system calls with which a run of the built program changes files of a folder, as strace tells them, and the same run ended by SIGKILL
/// when it enters one of them.
/// </summary>
/// <param name="arguments">What is typed.</param>
/// <param name="input">Standard input.</param>
/// <param name="secondNames">False for a disk on which a file has one name only, as on a memory stick.</param>
internal sealed partial class KillPoints(string[] arguments, string input, bool secondNames)
{
    private const string Calls = "openat,write,pwrite64,writev,pwritev,rename,renameat,renameat2,link,linkat,symlink,unlink,unlinkat,fchmod,chmod,fchmodat,fchown,chown,ftruncate,truncate,mkdir,mkdirat,fallocate";

    /// <summary>How often a run is tried again: a program opens more or fewer files of its own from one run to the next.</summary>
    private const int Tries = 60;

    private const string Unfinished = "<unfinished ...>";

    /// <summary>Runs to the end and gives every call that changed something in the folder.</summary>
    internal ImmutableArray<Point> All(string folder) => [.. Changes(folder, File.ReadLines(Run(folder, null))).Where(c => c.IsDone).Select((c, i) => new Point(c.Name, c.Number, i, c.What))];

    /// <summary>Runs until a call, which is not made any more.</summary>
    /// <param name="fresh">Gives a folder as it was before.</param>
    /// <param name="point">The call.</param>
    /// <param name="folder">The folder as the killed program left it.</param>
    /// <param name="log">What strace told.</param>
    internal void Kill(Func<string> fresh, Point point, out string folder, out string[] log)
    {
        int number = point.Number;
        for (int i = 0; i < Tries; i++)
        {
            folder = fresh();
            log = File.ReadAllLines(Run(folder, point with { Number = number }));
            var changes = Changes(folder, log).ToList();
            if (changes.Count == point.Place + 1 && !changes[^1].IsDone && changes[^1].Name == point.Name && Array.Exists(log, l => l.EndsWith("+++ killed by SIGKILL +++", StringComparison.Ordinal)))
            {
                return;
            }

            // Killed too late, the log has the number of the call; too early, it comes later.
            number = changes.Count > point.Place ? changes[point.Place].Number : number + 1;
        }

        throw new InvalidOperationException($"not killed at {point}");
    }

    /// <summary>Calls that change something in the folder, those that were not let through too.</summary>
    private static IEnumerable<(string Name, int Number, string What, bool IsDone)> Changes(string folder, IEnumerable<string> log)
    {
        var seen = new Dictionary<(string Thread, string Name), int>();
        foreach (string line in Whole([.. log]))
        {
            if (Call().Match(line) is not { Success: true } call)
            {
                continue;
            }

            string thread = call.Groups["thread"].Value, name = call.Groups["name"].Value, rest = call.Groups["rest"].Value;
            int number = seen[(thread, name)] = seen.GetValueOrDefault((thread, name)) + 1;
            if (rest.Contains(folder + "/", StringComparison.Ordinal) && !rest.Contains(" = -1 ", StringComparison.Ordinal)
                && (name != "openat" || (rest.Contains("O_CREAT", StringComparison.Ordinal) && !rest.Contains(".toiletaid.lock\"", StringComparison.Ordinal))))
            {
                yield return (name, number, rest, char.IsAsciiDigit(rest[^1]) || rest[^1] == '>');
            }
        }
    }

    /// <summary>Puts a call together that another thread cut in two.</summary>
    private static IEnumerable<string> Whole(string[] log)
    {
        for (int i = 0; i < log.Length; i++)
        {
            if (!log[i].EndsWith(Unfinished, StringComparison.Ordinal))
            {
                yield return log[i];
                continue;
            }

            string thread = log[i].Split(' ', 2)[0];
            int rest = Array.FindIndex(log, i + 1, l => l.StartsWith(thread + " ", StringComparison.Ordinal) && l.Contains("<... ", StringComparison.Ordinal));
            yield return rest < 0 ? log[i] : log[i][..^Unfinished.Length] + log[rest][(log[rest].IndexOf("resumed>", StringComparison.Ordinal) + 8)..];
        }
    }

    private string Run(string folder, Point? point)
    {
        string log = folder + ".strace";
        string inject = point is null ? string.Empty : string.Create(CultureInfo.InvariantCulture, $"inject={point.Name}:signal=KILL:when={point.Number}");
        string[] how =
        [
            "-f", "-y", "-s", "1", "-o", log, "-e", $"trace={Calls}",
            .. secondNames ? [] : (string[])["-e", "inject=link:error=EPERM" + (point?.Name == "link" ? ":when=" + string.Create(CultureInfo.InvariantCulture, $"1..{point.Number - 1}") : string.Empty)],
            .. point is null ? [] : (string[])["-e", inject],
            BuiltProgram.Path, .. arguments.Select(a => a.Replace("FOLDER", folder, StringComparison.Ordinal)),
        ];
        var start = new ProcessStartInfo("strace", how) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        start.Environment["XDG_DATA_HOME"] = folder + ".data";

        // So that a run opens the same files of its own in the same order as the one before.
        start.Environment["DOTNET_PROCESSOR_COUNT"] = "1";
        start.Environment["DOTNET_EnableDiagnostics"] = "0";
        start.Environment["DOTNET_TieredPGO"] = "0";
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        try
        {
            process.StandardInput.Write(input);
            process.StandardInput.Close();
        }
        catch (IOException)
        {
            // It was killed before it had read all.
        }

        process.WaitForExit();
        Assert.True(point is not null || process.ExitCode == 0, $"{output.GetAwaiter().GetResult()} {error.GetAwaiter().GetResult()}");
        return log;
    }

    [GeneratedRegex(@"^(?<thread>\d+) +(?<name>[a-z0-9]+)\((?<rest>.*)$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Call();

    /// <summary>A call by its name, its number among those of that name in its thread, and its place among those that change something.</summary>
    internal sealed record Point(string Name, int Number, int Place, string What);
}
