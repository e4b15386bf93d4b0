using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace ToiletAid.TestKit;

/// <summary>A program in a terminal of its own.</summary>
internal sealed class PtySession : IDisposable
{
    private readonly Process _helper;
    private readonly StringBuilder _all = new();

    internal PtySession(IEnumerable<string> command, IReadOnlyDictionary<string, string?> environment, int rows = 24, int columns = 80, string? folder = null)
    {
        Tools.Need("python3");
        var start = new ProcessStartInfo("python3")
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            WorkingDirectory = folder ?? Path.GetTempPath(),
        };
        string script = Repository.Path("tests", "ToiletAid.TestKit", "pty_session.py");
        foreach (string argument in (string[])[script, Text(rows), Text(columns), .. command])
        {
            start.ArgumentList.Add(argument);
        }

        foreach (string name in (string[])["ACCESSIBLE", "TOILETAID_MODE", "NO_COLOR", "TUI_CONFIG", "DisableRealDriverIO"])
        {
            start.Environment.Remove(name);
        }

        start.Environment["TERM"] = "xterm-256color";
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        _helper = Process.Start(start)!;
    }

    /// <summary>Every byte that came so far, as Latin-1.</summary>
    internal string All => _all.ToString();

    /// <summary>Types.</summary>
    internal void Send(string keys) => Ask($"send {Convert.ToHexString(Encoding.UTF8.GetBytes(keys))}");

    /// <summary>What came until nothing more came for a while, as Latin-1.</summary>
    internal string Quiet(int milliseconds = 150, int most = 5000)
    {
        string answer = Ask($"quiet {Text(milliseconds)} {Text(most)}");
        string text = Encoding.Latin1.GetString(Convert.FromHexString(answer.StartsWith("out ", StringComparison.Ordinal) ? answer[4..] : string.Empty));
        _all.Append(text);
        return text;
    }

    /// <summary>Reads until the text has come.</summary>
    internal string Until(string wanted, int most = 60_000)
    {
        var watch = Stopwatch.StartNew();
        string got = string.Empty;
        while (!got.Contains(wanted, StringComparison.Ordinal))
        {
            Assert.True(watch.ElapsedMilliseconds < most, $"'{wanted}' did not come, but: {got}");
            got += Quiet(40, 1000);
        }

        return got;
    }

    internal void Size(int rows, int columns) => Ask($"size {Text(rows)} {Text(columns)}");

    /// <summary>Lets the terminal take what is written to it, or not, as Control S and Control Q do.</summary>
    internal void Flow(bool takes) => Ask($"flow {(takes ? "on" : "off")}");

    internal void Kill(int signal) => Ask($"kill {Text(signal)}");

    internal string Stty() => Ask("stty");

    /// <summary>The exit code; null when the program still runs.</summary>
    internal int? Exit(int milliseconds = 30_000) => Ask($"exit {Text(milliseconds)}") is var answer && answer != "none" ? int.Parse(answer, CultureInfo.InvariantCulture) : null;

    /// <summary>Takes the terminal away without a word, as when a window is closed or a connection breaks; answers the number of the program's process.</summary>
    internal int TakeTerminalAway()
    {
        string children = File.ReadAllText($"/proc/{Text(_helper.Id)}/task/{Text(_helper.Id)}/children");
        _helper.Kill();
        return int.Parse(children.Trim(), CultureInfo.InvariantCulture);
    }

    /// <summary>Ends every program that was started in the terminal. A screen reader hands the other end of its terminal on to its child,
    /// which therefore never learns that the terminal is gone.</summary>
    internal void EndAll()
    {
        foreach (int id in Under(_helper.Id))
        {
            try
            {
                using var process = Process.GetProcessById(id);
                process.Kill();
            }
            catch (ArgumentException)
            {
                // It has ended by itself meanwhile.
            }
        }
    }

    public void Dispose()
    {
        _helper.StandardInput.Close();
        if (!_helper.WaitForExit(5000))
        {
            _helper.Kill();
        }

        _helper.Dispose();
    }

    private static IEnumerable<int> Under(int id)
    {
        string list = $"/proc/{Text(id)}/task/{Text(id)}/children";
        int[] children = File.Exists(list) ? [.. File.ReadAllText(list).Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(c => int.Parse(c, CultureInfo.InvariantCulture))] : [];
        return children.SelectMany(c => Under(c).Prepend(c));
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private string Ask(string line)
    {
        _helper.StandardInput.WriteLine(line);
        _helper.StandardInput.Flush();
        return _helper.StandardOutput.ReadLine() ?? throw new InvalidOperationException("the terminal is gone");
    }
}
