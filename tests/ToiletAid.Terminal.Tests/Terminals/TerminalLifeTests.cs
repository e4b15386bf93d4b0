using System.Text.RegularExpressions;

namespace ToiletAid.Terminal.Tests.Terminals;

/// <summary>What the built program sends to a real terminal, byte by byte, and how it leaves it.</summary>
public sealed partial class TerminalLifeTests : IDisposable
{
    private const string Quick = "Numbers, or none:";

    private readonly Home _home = new();

    public void Dispose() => _home.Dispose();

    [Theory]
    [InlineData("--linear")]
    [InlineData("--full-screen")]
    public void Nothing_is_sent_for_ten_seconds_without_a_key(string mode)
    {
        using var terminal = Run("assess", mode);
        terminal.Until(Quick);
        terminal.Quiet(300);
        Assert.Empty(terminal.Quiet(10_000, 10_000));
    }

    /// <summary>Four places at which the program waits, side by side, since each waits as long.</summary>
    [Fact]
    public void An_answer_is_taken_after_ninety_seconds_without_a_key()
    {
        string file = Path.Combine(_home.Path, "k-014.json");
        File.Copy(DemoPeople.File("k-014-stiff-shoulder"), file);
        (PtySession Terminal, string Answer, string Taken)[] waiting =
        [
            (At(Run("assess", "--linear"), Quick), "none\n", "None of them."),
            (At(Run("assess", "--full-screen"), Quick), "0" + Keys.Enter, "Which precautions"),
            (At(Run("trial", file), "1. Number from 1 to "), "1\n", "How much help was needed until now?"),
            (Typing(), "ft" + Keys.Enter, "1. Left"),
        ];

        Thread.Sleep(TimeSpan.FromSeconds(90));

        foreach (var (terminal, answer, taken) in waiting)
        {
            Assert.Empty(terminal.Quiet(100, 100));
            terminal.Send(answer);
            terminal.Until(taken, 30_000);
            terminal.Dispose();
        }
    }

    [Theory]
    [InlineData("--linear")]
    [InlineData("--full-screen")]
    public void A_program_whose_terminal_is_taken_away_ends_and_does_not_keep_the_machine_busy(string mode)
    {
        using var terminal = Run("assess", mode);
        terminal.Until(Quick);

        int program = terminal.TakeTerminalAway();

        var watch = System.Diagnostics.Stopwatch.StartNew();
        while (Runs(program) && watch.Elapsed < TimeSpan.FromSeconds(30))
        {
            Thread.Sleep(100);
        }

        Assert.False(Runs(program));
    }

    [Fact]
    public void No_title_colour_cursor_shape_or_mouse_is_asked_of_the_terminal()
    {
        using var terminal = Run("assess");
        terminal.Until(Quick);
        foreach (string key in (string[])[Keys.Down, " ", Keys.Enter, Keys.F9, Keys.Escape, Keys.Control('C')])
        {
            terminal.Send(key);
            terminal.Quiet();
        }

        Assert.DoesNotContain("\u001b]", terminal.All, StringComparison.Ordinal);
        Assert.DoesNotMatch(CursorShape(), terminal.All);
        Assert.DoesNotMatch(Colour(), terminal.All);
        Assert.True(terminal.All.LastIndexOf("?1003l", StringComparison.Ordinal) > terminal.All.LastIndexOf("?1003h", StringComparison.Ordinal));
        Assert.True(terminal.All.LastIndexOf("?25h", StringComparison.Ordinal) > terminal.All.LastIndexOf("?25l", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "--full-screen", true)]
    [InlineData("1", "--full-screen", false)]
    [InlineData("", "--no-color", false)]
    public void High_contrast_is_white_on_black_unless_colours_are_refused(string noColour, string option, bool coloured)
    {
        using var terminal = new PtySession([BuiltProgram.Path, "assess", option], _home.Environment(("TOILETAID_CONTRAST", "high"), ("NO_COLOR", noColour)));
        terminal.Until(Quick);
        Assert.Equal(coloured, terminal.All.Contains("\u001b[97;40m", StringComparison.Ordinal));
        Assert.Equal(coloured, Colour().IsMatch(terminal.All));
    }

    [Fact]
    public void A_file_planted_in_the_current_folder_changes_nothing()
    {
        using var folder = new TempFolder();
        Directory.CreateDirectory(Path.Combine(folder.Path, ".tui"));
        folder.File(Path.Combine(".tui", "config.json"), """{"Theme":"Evil","Themes":[{"Evil":{"Schemes":[{"Base":{"Normal":{"Foreground":"Red","Background":"Blue"}}}]}}],"Driver.Force16Colors":true}""");
        folder.File("settings.json", """{"mode":"linear"}""");
        string Screen(string inFolder, params (string, string?)[] environment)
        {
            using var terminal = new PtySession([BuiltProgram.Path, "assess"], _home.Environment(environment), folder: inFolder);
            terminal.Until(Quick);
            terminal.Quiet();
            return terminal.All;
        }

        string clean = Screen(_home.Path);
        Assert.Equal(clean, Screen(folder.Path, ("TUI_CONFIG", """{"Theme":"Evil"}""")));
    }

    [Theory]
    [InlineData("dumb")]
    [InlineData("xterm-256color")]
    public void Linear_mode_sends_no_escape_of_its_own(string term)
    {
        using var terminal = new PtySession([BuiltProgram.Path, "assess", "--linear"], _home.Environment(("TERM", term)));
        terminal.Until(Quick);
        terminal.Send("help\nnote\nLeft side\n\nnone\n99\nback\nlist\nquit\n");
        Assert.Equal(0, terminal.Exit());
        terminal.Quiet();

        // What .NET itself sends on start and at the end, about the keypad: no reader says it.
        string ours = terminal.All.Replace("\u001b[?1h\u001b=", string.Empty, StringComparison.Ordinal).Replace("\u001b[?1l\u001b>", string.Empty, StringComparison.Ordinal);
        Assert.True(term != "dumb" || ours == terminal.All);
        Assert.DoesNotMatch(Odd(), ours);
    }

    [Fact]
    public void Leaving_gives_the_terminal_back_and_clears_it_when_asked()
    {
        using var terminal = Run("assess", "--clear");
        string before = terminal.Stty();
        terminal.Until(Quick);
        terminal.Send(Keys.Control('C'));
        Assert.Equal(0, terminal.Exit());
        terminal.Quiet();
        Assert.Equal(before, terminal.Stty());
        Assert.Contains("\u001b[?1049l", terminal.All, StringComparison.Ordinal);
        Assert.EndsWith("\u001b[H\u001b[2J\u001b[3J", terminal.All, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_home.Data), "nothing was answered, and yet something was kept");
    }

    [Fact]
    public void The_privacy_key_hides_every_answer_at_once()
    {
        using var terminal = Run("assess");
        terminal.Until(Quick);
        terminal.Send(Keys.F12);
        string hidden = terminal.Until("The screen is hidden.");
        terminal.Send("1" + Keys.Down + Keys.F1);
        Assert.Empty(terminal.Quiet());
        Assert.DoesNotContain("Topic: ", hidden, StringComparison.Ordinal);
        terminal.Send(Keys.Enter);
        terminal.Until("1 of");
    }

    [Fact]
    public void Answers_of_a_stopped_visit_are_offered_taken_up_and_gone_once_saved()
    {
        using (var terminal = Run("assess"))
        {
            terminal.Until(Quick);
            terminal.Send("0" + Keys.Enter);
            terminal.Until("2 of");
            terminal.Kill(15);
            Assert.Equal(143, terminal.Exit());
        }

        string draft = Assert.Single(_home.Drafts);
        Assert.True(OperatingSystem.IsWindows() || File.GetUnixFileMode(draft) == (UnixFileMode.UserRead | UnixFileMode.UserWrite));
        using (var terminal = Run())
        {
            terminal.Until("Answers of a visit that was stopped");
            terminal.Send("1" + Keys.Enter);
            terminal.Until("2 of");
            terminal.Send(Keys.Control('S'));
            terminal.Until("Code, such as K-014:");
            terminal.Send("Zoe" + Keys.Enter);
            terminal.Until("looks like a name");
            terminal.Send("K-7" + Keys.Enter);
            terminal.Until("Enter alone saves K-7 in your own folder.");
            terminal.Send("finish" + Keys.Enter);
            terminal.Until("finish is not a code");
            terminal.Send(Path.Combine(_home.Path, "k-7.json") + Keys.Enter);
            terminal.Until("Saved as K-7 in");
            terminal.Send(Keys.Control('C'));
            Assert.Equal(0, terminal.Exit());
        }

        Assert.False(File.Exists(draft));
        Assert.Contains("red-flags", File.ReadAllText(Path.Combine(_home.Path, "k-7.json")), StringComparison.Ordinal);
    }

    [Fact]
    public void Leaving_with_answers_that_are_not_saved_asks_first_and_Escape_never_leaves()
    {
        using var terminal = Run("assess");
        terminal.Until(Quick);
        terminal.Send(Keys.Escape);
        terminal.Until("This is the first question.");
        terminal.Send("0" + Keys.Enter);
        terminal.Until("2 of");
        terminal.Send(Keys.Control('C'));
        terminal.Until("The answers are not saved.");
        terminal.Send(Keys.Escape);
        terminal.Until("2 of");
        terminal.Send(Keys.Control('C') + "3" + Keys.Enter);
        Assert.Equal(0, terminal.Exit());
    }

    private static PtySession At(PtySession terminal, string prompt)
    {
        terminal.Until(prompt, 60_000);
        terminal.Quiet(500);
        return terminal;
    }

    private PtySession Typing()
    {
        var terminal = At(Run("assess", "--full-screen"), Quick);
        terminal.Send(Keys.Control('K'));
        terminal.Until("Line 1, Enter alone ends:");
        terminal.Send("Le");
        terminal.Quiet(500);
        return terminal;
    }

    private PtySession Run(params string[] arguments) => new([BuiltProgram.Path, .. arguments], _home.Environment());

    /// <summary>True while the process is there and not only waiting to be counted.</summary>
    private static bool Runs(int process)
    {
        string stat = $"/proc/{process.ToString(System.Globalization.CultureInfo.InvariantCulture)}/stat";
        return File.Exists(stat) && !File.ReadAllText(stat).Contains(") Z ", StringComparison.Ordinal);
    }

    [GeneratedRegex(@"\u001b\[\d* q", RegexOptions.None, 1000)]
    private static partial Regex CursorShape();

    [GeneratedRegex(@"\u001b\[(?:\d+;)*(?:3[0-8]|4[0-8]|9[0-7]|10[0-7])(?:;\d+)*m", RegexOptions.None, 1000)]
    private static partial Regex Colour();

    [GeneratedRegex(@"[^\u0020-\u007e\r\n]", RegexOptions.None, 1000)]
    private static partial Regex Odd();
}
