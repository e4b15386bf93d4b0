using System.Diagnostics;

namespace ToiletAid.Terminal.Tests.Terminals;

/// <summary>The built program on a machine that lets it work for a small part of the time only.</summary>
public sealed class SlowMachineTests : IDisposable
{
    private const int SigTerm = 15;
    private const int SigCont = 18;
    private const int SigStop = 19;

    private const string Answered = "would change the first place";

    private readonly Home _home = new();
    private string _settings = string.Empty;

    public void Dispose() => _home.Dispose();

    [Fact]
    public void Long_work_on_the_screen_is_told_once_and_its_end_once()
    {
        using var terminal = AtResult();
        string told = StoppedAtWork(terminal);
        string rest = told + (told.Contains(Answered, StringComparison.Ordinal) ? string.Empty : terminal.Until(Answered, 120_000));
        // When the program is woken it draws the whole screen again, and the words with it.
        Assert.InRange(rest.Split("Working...").Length, 2, 3);
        Assert.InRange(rest.Split("Done.").Length, 2, 3);

        // What was done before may still stand there when the first waking draws the screen again.
        int done = rest.LastIndexOf("Done.", StringComparison.Ordinal);
        Assert.True(rest.IndexOf("Working...", StringComparison.Ordinal) < done);
        Assert.True(done < rest.LastIndexOf("What would change it.", StringComparison.Ordinal));
    }

    [Fact]
    public void A_signal_during_long_work_gives_the_screen_back()
    {
        using var terminal = AtResult();
        terminal.Send(Keys.Enter);
        Slowly(terminal, string.Empty, TimeSpan.FromSeconds(0.5));
        terminal.Kill(SigTerm);
        Slowly(terminal, "\u001b[?1049l");
        Assert.Equal(128 + SigTerm, terminal.Exit(20_000));
        Assert.Equal(_settings, terminal.Stty());
    }

    [Fact]
    public void A_signal_while_the_terminal_takes_nothing_gives_the_screen_back_all_the_same()
    {
        using var terminal = Run("assess");
        terminal.Until("none:", 60_000);
        terminal.Quiet(300);
        terminal.Flow(takes: false);
        terminal.Send(Keys.Down);
        Thread.Sleep(500);

        // The loop is stuck in the line that it writes, so after three seconds the program ends without it.
        terminal.Kill(SigTerm);
        Thread.Sleep(4200);
        terminal.Flow(takes: true);
        Assert.Equal(128 + SigTerm, terminal.Exit(20_000));
        terminal.Quiet();
        Assert.Contains("\u001b[?1049l", terminal.All, StringComparison.Ordinal);
        Assert.Equal(_settings, terminal.Stty());
    }

    /// <summary>At the result of a saved profile, with the entry chosen that searches longest.</summary>
    private PtySession AtResult()
    {
        string file = Path.Combine(_home.Path, "k.json");
        File.Copy(DemoPeople.File("k-014-stiff-shoulder"), file);
        var terminal = Run();
        terminal.Until("Number 1 to 8:", 60_000);
        terminal.Send("2" + Keys.Enter);
        terminal.Until("Code or file:");
        terminal.Send("k.json" + Keys.Enter);
        terminal.Until("Result of the latest visit", 60_000);
        terminal.Quiet(300);
        terminal.Send("2" + Keys.Enter);
        terminal.Until("First: short folding holder", 120_000);
        terminal.Quiet(300);
        terminal.Send("6");
        terminal.Until("What would change it");
        terminal.Quiet(300);
        return terminal;
    }

    private PtySession Run(params string[] arguments)
    {
        var terminal = new PtySession([BuiltProgram.Path, .. arguments, "--full-screen"], _home.Environment(), folder: _home.Path);
        _settings = terminal.Stty();
        return terminal;
    }

    /// <summary>Presses Enter and stops the program for longer than it says nothing, at moments ever later until that is in the midst of its work.</summary>
    /// <remarks>A key that was not read before the stop is dropped on waking, as what is typed at a shell is; work that was done before says nothing.</remarks>
    private string StoppedAtWork(PtySession terminal)
    {
        string got = string.Empty;
        for (int milliseconds = 4; milliseconds < 400; milliseconds += 8)
        {
            terminal.Send(Keys.Enter);
            Thread.Sleep(milliseconds);
            terminal.Kill(SigStop);
            Thread.Sleep(2300);
            terminal.Kill(SigCont);
            got = terminal.Quiet(500, 60_000);
            if (got.Contains("Working...", StringComparison.Ordinal))
            {
                return got;
            }

            if (got.Contains(Answered, StringComparison.Ordinal))
            {
                terminal.Send(Keys.Enter);
                terminal.Until("What would change it");
                terminal.Quiet(300);
            }
        }

        Assert.Fail($"'Working...' did not come, but: {got}");
        return got;
    }

    /// <summary>Lets the program work for about a tenth of the time until a text has come and a time has passed.</summary>
    private static string Slowly(PtySession terminal, string wanted, TimeSpan least = default)
    {
        var watch = Stopwatch.StartNew();
        string got = string.Empty;
        while (!got.Contains(wanted, StringComparison.Ordinal) || watch.Elapsed < least)
        {
            Assert.True(watch.Elapsed < TimeSpan.FromSeconds(60), $"'{wanted}' did not come, but: {got}");
            terminal.Kill(SigStop);
            Thread.Sleep(150);
            terminal.Kill(SigCont);
            got += terminal.Quiet(10, 15);
        }

        return got;
    }
}
