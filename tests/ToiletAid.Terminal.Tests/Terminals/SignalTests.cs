using System.Text.RegularExpressions;

namespace ToiletAid.Terminal.Tests.Terminals;

/// <summary>A hundred stops at moments that nobody chose: the terminal is as it was and every answer that was taken is kept.</summary>
public sealed partial class SignalTests
{
    private const int Rounds = 100;
    private static readonly int[] Signals = [1, 2, 15];

    [Fact]
    public async Task Stops_at_random_moments_restore_the_terminal_and_lose_no_answer()
    {
        int seed = (int)(TestRun.Seed % (int.MaxValue - Rounds));
        var faults = new System.Collections.Concurrent.ConcurrentBag<string>();
        var counts = new System.Collections.Concurrent.ConcurrentBag<int>();
        await Parallel.ForEachAsync(Enumerable.Range(0, Rounds), new ParallelOptions { MaxDegreeOfParallelism = 3, CancellationToken = TestContext.Current.CancellationToken }, (round, _) =>
        {
            var random = new Random(seed + round);
            counts.Add(Stop(round, random, Signals[round % Signals.Length], faults));
            return ValueTask.CompletedTask;
        });
        TestContext.Current.TestOutputHelper?.WriteLine($"seed {seed}, {counts.Count(c => c > 0)} of {Rounds} stops came after at least one answer, {counts.Sum()} answers in all");
        Assert.True(faults.IsEmpty, $"seed {seed}: {string.Join('\n', faults)}");
        Assert.True(counts.Count(c => c > 0) > Rounds / 4, "too few stops came after an answer to prove anything");
    }

    /// <summary>One program, some answers, one signal; gives how many answers had been taken.</summary>
    private static int Stop(int round, Random random, int signal, System.Collections.Concurrent.ConcurrentBag<string> faults)
    {
        using var home = new Home();

        // Known from the start: a stop may come before the first line of either mode is read.
        bool line = random.Next(4) == 0;
        using var terminal = new PtySession([BuiltProgram.Path, "assess", line ? "--linear" : "--full-screen"], home.Environment());
        string before = terminal.Stty();
        string pending = string.Empty;
        if (round % 4 != 0)
        {
            // Most stops come during the visit, a quarter of them during the start as well.
            pending = terminal.Until("none:");
        }

        int moment = random.Next(round % 4 == 0 ? 1000 : 3000);
        var end = DateTime.UtcNow.AddMilliseconds(moment);
        while (DateTime.UtcNow < end)
        {
            string got = pending + terminal.Quiet(15, Math.Clamp((int)(end - DateTime.UtcNow).TotalMilliseconds, 1, 60));
            pending = string.Empty;
            // The last questions are left open: a visit that is over has nothing to lose.
            if (Shown().IsMatch(got) && !terminal.All.Contains("6 of", StringComparison.Ordinal))
            {
                bool many = got.Contains("or none", StringComparison.Ordinal);
                terminal.Send(line ? (many ? "none\n" : "1\n") : (many ? "0" : "1") + Keys.Enter);
            }
        }

        terminal.Kill(signal);
        int? code = terminal.Exit(8000);
        terminal.Quiet();
        string what = $"round {round}, signal {signal}, {moment} ms, {(line ? "linear" : "full screen")}";
        bool started = terminal.All.Contains("Topic: ", StringComparison.Ordinal);
        if (code != 128 + signal && (started || code != -signal))
        {
            faults.Add($"{what}: exit code {code}");
        }

        if (terminal.Stty() != before)
        {
            faults.Add($"{what}: the terminal was not restored");
        }

        if (started && !line && !terminal.All.Contains("\u001b[?1049l", StringComparison.Ordinal))
        {
            faults.Add($"{what}: the screen was not given back");
        }

        // Question 5 is shown only after four answers were taken.
        int taken = Shown().Matches(terminal.All).Select(m => int.Parse(m.Groups["number"].ValueSpan, System.Globalization.CultureInfo.InvariantCulture) - 1).DefaultIfEmpty(0).Max();
        int kept = home.KeptAnswers();
        if (kept < taken)
        {
            faults.Add($"{what}: {taken} answers taken, {kept} kept");
        }

        return taken;
    }

    [GeneratedRegex(@"(?<number>\d+) of \d+\. ", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Shown();
}
