using ToiletAidTui.Host;

namespace ToiletAid.Acceptance.Tests.Modes;

/// <summary>The first signal that speaks chooses the mode; a value that means nothing is said.</summary>
public sealed class ModeChoiceTests
{
    [Theory]
    [InlineData("--linear", "full-screen", "", true, "xterm", false, "Linear")]
    [InlineData("--full-screen", "linear", "1", false, "dumb", true, "FullScreen")]
    [InlineData("", "linear", "", true, "xterm", false, "Linear")]
    [InlineData("", "full-screen", "1", false, "dumb", true, "FullScreen")]
    [InlineData("", "", "1", true, "xterm", false, "Linear")]
    [InlineData("", "", "yes", true, "xterm", false, "Linear")]
    [InlineData("", "", "0", true, "xterm", false, "setting")]
    [InlineData("", "", "false", true, "xterm", false, "setting")]
    [InlineData("", "", "No", true, "xterm", false, "setting")]
    [InlineData("", "", "", true, "xterm", false, "setting")]
    [InlineData("", "", "", false, "xterm", false, "Linear")]
    [InlineData("", "", "", true, "xterm", true, "Linear")]
    public void The_first_that_speaks_wins(string option, string mode, string accessible, bool isTerminal, string term, bool reader, string chosen)
    {
        var choice = ModeChoice.Of(Inputs(option, mode, accessible, isTerminal, term, reader));
        Assert.Null(choice.Fault);
        Assert.Equal(chosen, choice.Mode?.ToString() ?? "setting");
    }

    [Theory]
    [InlineData("dumb")]
    [InlineData("")]
    public void A_terminal_that_cannot_draw_is_linear(string term)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no TERM");
        Assert.Equal(Mode.Linear, ModeChoice.Of(Inputs(string.Empty, string.Empty, string.Empty, true, term, false)).Mode);
    }

    [Theory]
    [InlineData("plain")]
    [InlineData("LINEAR")]
    [InlineData("1")]
    public void A_wrong_value_is_an_error_even_beside_an_option(string mode)
    {
        Assert.Equal($"TOILETAID_MODE is {mode} and takes linear or full-screen.", ModeChoice.Of(Inputs("--linear", mode, string.Empty, true, "xterm", false)).Fault);
    }

    [Fact]
    public void Wrong_values_end_the_program_with_code_2()
    {
        Assert.Equal((2, string.Empty, "Give --linear or --full-screen, not both.\n"), Cli.Run(string.Empty, "assess", "--linear", "--full-screen"));
        var (code, output, error) = Cli.Run(string.Empty);
        Assert.Equal((2, string.Empty), (code, output));
        Assert.Equal("Give a command, or run toiletaid alone on a terminal. Type toiletaid --help for the commands.\n", error);
    }

    [Fact]
    public void Full_screen_without_a_terminal_goes_on_line_by_line_and_says_so()
    {
        var (_, output, error) = Cli.Run("quit\n", "assess", "--full-screen");
        Assert.Equal("The full screen needs a terminal that can show it. Going on line by line.\n", error);
        Assert.StartsWith("Linear mode.", output, StringComparison.Ordinal);
    }

    private static ModeInputs Inputs(string option, string mode, string accessible, bool isTerminal, string term, bool reader) => new()
    {
        LinearOption = option == "--linear",
        FullScreenOption = option == "--full-screen",
        IsTerminal = isTerminal,
        ReaderRuns = () => reader,
        Variable = name => name switch { "TOILETAID_MODE" => mode, "ACCESSIBLE" => accessible, "TERM" => term, _ => null },
    };
}
