using ToiletAidTui.Host;

namespace ToiletAid.Acceptance.Tests.Help;

/// <summary>Completion, as the shells themselves do it.</summary>
public sealed class CompletionTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly Dictionary<string, string?> _environment;

    public CompletionTests()
    {
        string bin = Directory.CreateDirectory(Path.Combine(_folder.Path, "bin")).FullName;
        File.CreateSymbolicLink(Path.Combine(bin, "toiletaid"), BuiltProgram.Path);
        foreach (string shell in (string[])["bash", "zsh", "fish", "powershell"])
        {
            var (code, script, _) = Cli.Run("", "completion", shell);
            Assert.Equal(ExitCode.Good, code);
            _folder.File(shell, script);
        }

        _folder.File("wanted.json", "{}");
        _environment = new() { ["PATH"] = $"{bin}:{Environment.GetEnvironmentVariable("PATH")}", ["HOME"] = _folder.Path };
    }

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("toiletaid ra", "rank")]
    [InlineData("toiletaid calc wa", "water")]
    [InlineData("toiletaid rank --ra", "")]
    [InlineData("toiletaid rank --fo", "--format")]
    [InlineData("toiletaid rank --format nd", "ndjson")]
    [InlineData("toiletaid rank --format=nd", "--format=ndjson")]
    [InlineData("toiletaid why k-014.json --aid paddle", "paddle-lock")]
    [InlineData("toiletaid calc grip --add-on hand", "hand-cuff")]
    [InlineData("toiletaid calc reach --posture half", "half-standing")]
    [InlineData("toiletaid rank ", "")]
    [InlineData("toiletaid rank --aids ", "")]
    public void The_program_names_what_can_follow(string line, string wanted) =>
        Assert.Equal(wanted, string.Join(' ', Suggested(line)));

    [Fact]
    public void What_stands_behind_the_cursor_does_not_count() =>
        Assert.Equal("rank\n", Cli.Run("", "[suggest:12]", "toiletaid ra --format csv").Output);

    [Theory]
    [MemberData(nameof(Lines))]
    public void Bash_completes(string typed, string wanted) => Completes(["bash", "--norc", "--noprofile", "-i"], "source ./bash", typed, wanted);

    [Theory]
    [MemberData(nameof(Lines))]
    public void Zsh_completes(string typed, string wanted) => Completes(["zsh", "-f", "-i"], "autoload -U compinit && compinit -u -D && source ./zsh", typed, wanted);

    [Theory]
    [MemberData(nameof(Lines))]
    public async Task Fish_completes(string typed, string wanted)
    {
        Tools.Need("fish");
        var (code, output, error) = await Batch.Tool.Run("", "env", $"PATH={_environment["PATH"]}", $"HOME={_folder.Path}", "fish", "--no-config", "-c", $"cd {_folder.Path}; source ./fish; complete -C '{typed}'");
        Assert.True(code == 0, error);
        Assert.Contains($"{typed[..(typed.LastIndexOf(' ') + 1)]}{output.Split('\n', '\t')[0]}", wanted, StringComparison.Ordinal);
    }

    /// <summary>Typed up to the Tab key, and how the line reads after it.</summary>
    public static TheoryData<string, string> Lines => new()
    {
        { "toiletaid ra", "toiletaid rank" },
        { "toiletaid rank --fo", "toiletaid rank --format" },
        { "toiletaid rank --format nd", "toiletaid rank --format ndjson" },
        { "toiletaid rank --format=nd", "toiletaid rank --format=ndjson" },
        { "toiletaid calc grip --aid paddle", "toiletaid calc grip --aid paddle-lock" },
        { "toiletaid rank wan", "toiletaid rank wanted.json" },
        { "toiletaid rank --aids wan", "toiletaid rank --aids wanted.json" },
    };

    [Fact]
    public void A_shell_that_is_not_known_is_named() =>
        Assert.Equal((ExitCode.WrongUsage, "Argument tcsh not recognized. Use one of bash, zsh, fish, powershell. Type toiletaid --help for the commands.\n"), (Cli.Run("", "completion", "tcsh").Code, Cli.Run("", "completion", "tcsh").Error));

    private void Completes(string[] shell, string setUp, string typed, string wanted)
    {
        Tools.Need(shell[0]);
        using var terminal = new PtySession(shell, _environment, folder: _folder.Path);
        terminal.Send($"{setUp}; echo set''up\r");
        terminal.Until("setup\r\n");
        terminal.Quiet(300);
        terminal.Send($"{typed}\t");
        terminal.Quiet(700);

        // With echo before it the line is not run, and the shell prints what stands in it.
        terminal.Send("\u0001echo i''s: \r");
        Assert.Contains($"is: {wanted}\r\n", terminal.Until("is: ") + terminal.Quiet(), StringComparison.Ordinal);
    }

    private static string[] Suggested(string line) => Cli.Run("", $"[suggest:{line.Length}]", line).Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
