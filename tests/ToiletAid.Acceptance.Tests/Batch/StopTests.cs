using System.Globalization;

namespace ToiletAid.Acceptance.Tests.Batch;

public sealed class StopTests
{
    [Theory(Timeout = 120_000)]
    [InlineData("INT", 130)]
    [InlineData("TERM", 143)]
    public async Task A_signal_finishes_what_is_under_way_and_says_how_to_go_on(string signal, int code)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "signals are sent with kill");
        string whole = Cli.Run(People.Ndjson, "rank", "-", "--format", "ndjson", "--samples", "500").Output;

        // The input stays open, so that the program waits for more when the signal comes.
        using var process = Tool.StartStoppable(Tool.Program, "rank", "-", "--format", "ndjson", "--samples", "500");
        await process.StandardInput.WriteAsync(string.Join('\n', People.Lines.Take(5)) + "\n");
        await process.StandardInput.FlushAsync(TestContext.Current.CancellationToken);
        string first = await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) + "\n";
        await Tool.Run("", "kill", "-" + signal, process.Id.ToString(CultureInfo.InvariantCulture));
        string rest = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        string error = await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);

        int done = (first + rest).Count(c => c == '\n');
        Assert.Equal(code, process.ExitCode);
        Assert.InRange(done, 1, 5);
        Assert.Equal($"Stopped after {(done == 1 ? "1 profile" : $"{done} profiles")}. To go on, give the same command with --resume {done} and add its output to this one.\n", error);
        string resumed = Cli.Run(People.Ndjson, "rank", "-", "--format", "ndjson", "--samples", "500", "--resume", done.ToString(CultureInfo.InvariantCulture)).Output;
        Assert.Equal(whole, first + rest + resumed);
    }
}
