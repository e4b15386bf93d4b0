using System.Text;
using System.Text.Json;
using ToiletAidTui.Commands;

namespace ToiletAid.Acceptance.Tests.Batch;

public sealed class StreamedRankTests
{
    private static readonly string[] Fast = ["--samples", "500"];

    [Theory]
    [InlineData("ndjson")]
    [InlineData("csv")]
    [InlineData("json")]
    [InlineData("text")]
    public void Any_number_of_jobs_gives_the_same_bytes_in_the_order_of_the_input(string format)
    {
        string one = Ranked(People.Ndjson, format, "--jobs", "1");

        Assert.Equal(one, Ranked(People.Ndjson, format, "--jobs", "2"));
        Assert.Equal(one, Ranked(People.Ndjson, format, "--jobs", "7"));
        if (format == "ndjson")
        {
            Assert.Equal(People.Lines.Select(Code), one.TrimEnd('\n').Split('\n').Select(Code));
        }
    }

    [Fact]
    public void Shuffled_input_gives_the_same_lines_after_sorting()
    {
        string[] shuffled = [.. People.Lines.Where((_, i) => i % 3 == 1), .. People.Lines.Where((_, i) => i % 3 == 0).Reverse(), .. People.Lines.Where((_, i) => i % 3 == 2)];

        string[] straight = Ranked(People.Ndjson, "ndjson").Split('\n'), mixed = Ranked(string.Join('\n', shuffled) + "\n", "ndjson").Split('\n');

        Assert.NotEqual(straight, mixed);
        Assert.Equal(straight.Order(StringComparer.Ordinal), mixed.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Another_seed_fewer_samples_and_fewer_draws_change_the_shares()
    {
        string some = Ranked(People.Ndjson, "ndjson");

        Assert.NotEqual(some, Ranked(People.Ndjson, "ndjson", "--seed", "7"));
        Assert.NotEqual(some, Cli.Run(People.Ndjson, "rank", "-", "--format", "ndjson", "--samples", "300").Output);
        Assert.NotEqual(some, Ranked(People.Ndjson, "ndjson", "--draws", "1"));
    }

    [Theory]
    [InlineData("ndjson")]
    [InlineData("csv")]
    [InlineData("text")]
    public void A_resumed_run_adds_exactly_what_was_missing(string format)
    {
        string whole = Ranked(People.Ndjson, format);
        string first = Ranked(string.Join('\n', People.Lines.Take(9)) + "\n", format);

        Assert.Equal(whole, first + Ranked(People.Ndjson, format, "--resume", "9"));
    }

    [Fact]
    public void Refused_lines_go_to_a_file_with_source_place_reason_and_line()
    {
        using var folder = new TempFolder();
        string bad = People.Lines[0].Replace("\"full\"", "\"deep\"", StringComparison.Ordinal);
        string file = folder.File("rejects.ndjson");

        var (code, output, error) = Cli.Run($"{People.Lines[0]}\n\n{bad}\n{{\n{People.Lines[1]}\n", ["rank", "-", "--format", "ndjson", "--rejects", file, .. Fast]);

        Assert.Equal(3, code);
        Assert.Equal(2, output.TrimEnd('\n').Split('\n').Length);
        Assert.Equal($"2 profiles were refused. The reasons are in {file}.\n", error);
        var told = File.ReadAllLines(file).Select(l => JsonDocument.Parse(l).RootElement).ToList();
        Assert.Equal(["-", "-"], told.Select(t => t.GetProperty("source").GetString()));
        Assert.Equal(["line 3, sessions[0].depth", "line 4"], told.Select(t => t.GetProperty("place").GetString()));
        Assert.Equal("deep is not a depth, use quick, full, measured", told[0].GetProperty("reason").GetString());
        Assert.Contains("ends before it should", told[1].GetProperty("reason").GetString()!, StringComparison.Ordinal);
        Assert.Equal(bad, told[0].GetProperty("line").GetString());
    }

    [Fact]
    public void A_file_that_is_read_is_never_written_over()
    {
        using var folder = new TempFolder();
        string file = folder.File("people.ndjson", People.Ndjson), one = folder.File("one.json", People.Lines[0]);

        var (code, output, error) = Cli.Run("", "rank", file, "--rejects", file);

        Assert.Equal((2, ""), (code, output));
        Assert.Equal($"{file}: the command names it for something else too, so nothing was written to it, give another file.\n", error);
        Assert.Equal(2, Cli.Run("", "rank", Path.GetDirectoryName(one)! + "/", "--rejects", one).Code);
        Assert.Equal((People.Ndjson, People.Lines[0]), (File.ReadAllText(file), File.ReadAllText(one)));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Only_its_owner_may_read_what_was_refused(bool wasThere)
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("there are no such modes on Windows");
            return;
        }

        using var folder = new TempFolder();
        string file = folder.File("rejects.ndjson", wasThere ? "" : null);
        if (wasThere)
        {
            File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.OtherRead);
        }

        Cli.Run("{\n", "rank", "-", "--rejects", file);

        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file));
    }

    [Fact]
    public void A_file_with_one_profile_a_line_is_read_as_standard_input_is()
    {
        using var folder = new TempFolder();

        Assert.Equal(Ranked(People.Ndjson, "csv"), Cli.Run("", ["rank", folder.File("people.ndjson", People.Ndjson), "--format", "csv", .. Fast]).Output);
    }

    [Fact]
    public void An_endless_line_is_refused_without_being_kept()
    {
        const long Length = 400L * 1024 * 1024;
        using var output = new StringWriter();
        using var error = new StringWriter();
        using var input = new LongLine(Length);
        long before = GC.GetTotalAllocatedBytes();

        int code = CliHost.Run(["rank", "-", "--jobs", "1"], new() { Input = input, Output = output, Error = error });

        Assert.Equal(3, code);
        Assert.Contains("Standard input line 1: the line is longer than 4 megabytes", error.ToString(), StringComparison.Ordinal);
        Assert.InRange(GC.GetTotalAllocatedBytes() - before, 0, Length / 2);
    }

    [Theory]
    [InlineData(true, true)]
    [InlineData(false, false)]
    public void Progress_is_said_only_on_a_terminal(bool isTerminal, bool isSaid)
    {
        using var output = new StringWriter();
        using var error = new StringWriter { NewLine = "\n" };
        using var input = new MemoryStream(Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat("{\n", 2500))));
        using var folder = new TempFolder();

        CliHost.Run(["rank", "-", "--rejects", folder.File("r.ndjson")], new() { Input = input, Output = output, Error = error, ErrorIsTerminal = isTerminal });

        string[] said = error.ToString().TrimEnd('\n').Split('\n');
        Assert.Equal(isSaid ? ["1,000 profiles are done.", "2,000 profiles are done."] : [], said[..^1]);
    }

    [Fact]
    public void Progress_of_a_resumed_run_counts_what_was_done_before()
    {
        using var output = new StringWriter();
        using var error = new StringWriter { NewLine = "\n" };
        using var input = new MemoryStream(Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat("{\n", 2500))));
        using var folder = new TempFolder();

        CliHost.Run(["rank", "-", "--resume", "1200", "--rejects", folder.File("r.ndjson")], new() { Input = input, Output = output, Error = error, ErrorIsTerminal = true });

        Assert.Equal(["2,000 profiles are done."], error.ToString().TrimEnd('\n').Split('\n')[..^1]);
    }

    [Fact]
    public void Quiet_is_quiet_on_a_terminal_too()
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        using var input = new MemoryStream(Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat("{\n", 1500))));
        using var folder = new TempFolder();

        CliHost.Run(["rank", "-", "--quiet", "--rejects", folder.File("r.ndjson")], new() { Input = input, Output = output, Error = error, ErrorIsTerminal = true });

        Assert.DoesNotContain("are done", error.ToString(), StringComparison.Ordinal);
    }

    private static string Ranked(string input, string format, params string[] more)
    {
        var (code, output, error) = Cli.Run(input, ["rank", "-", "--format", format, .. Fast, .. more]);
        Assert.Equal((0, ""), (code, error));
        return output;
    }

    private static string Code(string line) => JsonDocument.Parse(line).RootElement.GetProperty("person").GetString()!;
}
