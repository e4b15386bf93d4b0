using System.CommandLine;
using System.Reflection;
using System.Text.RegularExpressions;
using ToiletAidTui.Commands;
using ToiletAidTui.Commands.Help;
using ToiletAidTui.Host;

namespace ToiletAid.Acceptance.Tests.Help;

/// <summary>What --help says, of the program and of each command.</summary>
public sealed partial class HelpTests
{
    private static readonly RootCommand Root = CliHost.Root(new() { Input = Stream.Null, Output = TextWriter.Null, Error = TextWriter.Null });

    public static TheoryData<string> Commands => [.. HelpPage.All(Root).Select(p => p.Name)];

    [Fact]
    public void Every_page_is_approved() => Golden.Match(string.Join("\n", HelpPage.All(Root).Select(p => Said(p.Name))), "help.txt");

    [Fact]
    public void Every_command_has_notes_and_every_note_a_command() =>
        Assert.Equal(HelpPage.All(Root).Select(p => p.Name).Order(), Notes.All.Keys.Select(k => $"toiletaid {k}".TrimEnd()).Order());

    [Fact]
    public void The_first_page_names_every_command_once() =>
        Assert.Equal(Root.Subcommands.Select(c => c.Name).Order(), Notes.Topics.SelectMany(t => t.Commands).Order());

    [Theory]
    [MemberData(nameof(Commands))]
    public void An_example_can_be_typed_as_it_stands(string name)
    {
        var examples = HelpPage.All(Root).Single(p => p.Name == name).Examples.ToList();
        Assert.NotEmpty(examples);
        Assert.All(examples, e =>
        {
            var parsed = Root.Parse(e.Line.Split(' ')[1..]);
            Assert.Empty(parsed.Errors);
            Assert.Null(UsageFault.OptionAmongArguments(parsed));
            Assert.StartsWith(name, e.Line, StringComparison.Ordinal);
        });
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void A_page_fits_a_screen_and_has_nothing_that_is_only_for_the_eye(string name)
    {
        string[] lines = Said(name).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        int rows = lines.Sum(l => WordWrap.Rows(l, 79).Count());
        Assert.InRange(rows, 4, name == "toiletaid" ? 24 : 40);
        Assert.All(lines, l => Assert.DoesNotMatch(@"[<>\[\]|*_]{2}|[<>\[\]|*]|^\s|\s$", l));
    }

    [Fact]
    public void A_mistyped_option_is_no_file()
    {
        var (code, _, error) = Cli.Run("", "rank", "--fromat", "csv");
        Assert.Equal(ExitCode.WrongUsage, code);
        Assert.Equal("There is no option --fromat. Type toiletaid rank --help for those there are.\n", error);
    }

    [Fact]
    public void A_file_whose_name_begins_with_a_dash_can_be_named()
    {
        var (code, _, error) = Cli.Run("", "rank", "--", "--fromat");
        Assert.Equal(ExitCode.InputRefused, code);
        Assert.Contains("there is no such file", error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_read_me_names_the_same_exit_codes()
    {
        string readMe = File.ReadAllText(Repository.Path("README.md"));
        Assert.All(ExitCode.All.Where(e => e.Code < ExitCode.SignalBase), e => Assert.Contains($"| {e.Code} | {e.Meaning} |", readMe, StringComparison.Ordinal));
        Assert.Contains($"| {ExitCode.Interrupted}, {ExitCode.Ended}, {ExitCode.HungUp} |", readMe, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_variable_that_the_program_reads_is_named()
    {
        var read = Directory.EnumerateFiles(Repository.Path("src"), "*.cs", SearchOption.AllDirectories)
            .SelectMany(f => Read().Matches(File.ReadAllText(f)).Select(m => m.Groups["name"].Value))
            .Distinct();
        Assert.Equal("HOME", Assert.Single(read));
        var constants = typeof(EnvironmentVariables).GetFields(BindingFlags.Static | BindingFlags.NonPublic).Where(f => f.IsLiteral).Select(f => (string)f.GetRawConstantValue()!);
        Assert.Equal(constants.Order(), EnvironmentVariables.All.Select(v => v.Name).Order());
    }

    private static string Said(string name)
    {
        var (code, output, error) = Cli.Run("", [.. name.Split(' ')[1..], "--help"]);
        Assert.Equal(ExitCode.Good, code);
        Assert.Empty(error);
        return output;
    }

    [GeneratedRegex(@"([vV]ariable|environment)\(""(?<name>[A-Z_]+)""\)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Read();
}
