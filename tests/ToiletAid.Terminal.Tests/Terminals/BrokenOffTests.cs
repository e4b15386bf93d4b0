using System.Diagnostics;
using ToiletAid.App.Files;
using ToiletAid.App.Store;

namespace ToiletAid.Terminal.Tests.Terminals;

/// <summary>Answers that must survive a kill, and saves that fail at first, on a real terminal and in both modes.</summary>
public sealed class BrokenOffTests : IDisposable
{
    private readonly Home _home = new();
    private readonly string _path;
    private PtySession? _terminal;
    private int _read;

    public BrokenOffTests() => _path = Path.Combine(_home.Path, "K-014.json");

    public void Dispose() => _home.Dispose();

    [Theory]
    [InlineData("--linear", "\n")]
    [InlineData("--full-screen", Keys.Enter)]
    public void Each_answer_of_a_visit_without_a_file_is_kept_and_offered_after_a_kill(string mode, string enter)
    {
        using (var terminal = Run("assess", mode))
        {
            Next(terminal, "1 of ");
            for (int answered = 1; answered <= 4; answered++)
            {
                bool many = Next(terminal, ":").Contains("or none", StringComparison.Ordinal);
                terminal.Send((many ? mode == "--linear" ? "none" : "0" : "1") + enter);
                Next(terminal, $"{answered + 1} of ");
                Assert.Equal(answered, _home.KeptAnswers());
            }

            terminal.Kill(9);
            Assert.NotNull(terminal.Exit(30_000));
        }

        Assert.Equal(4, _home.KeptAnswers());
        using (var terminal = Run("assess", "--linear"))
        {
            Next(terminal, "with 4 answers was not finished.");
            Next(terminal, "Go on with it? yes or no: ");
            terminal.Send("yes\n");
            Next(terminal, "5 of ");
            terminal.Send("quit\n");
            Next(terminal, "Nothing was saved.");
            Assert.Equal(0, terminal.Exit(30_000));
        }

        Assert.Empty(_home.Drafts);
    }

    [Fact]
    public void A_note_survives_a_kill_with_the_answers()
    {
        using (var terminal = Run("assess"))
        {
            Next(terminal, "1 of ");
            terminal.Send(Keys.Control('K'));
            Next(terminal, "Line 1, Enter alone ends:");
            terminal.Send("Prefers the left side" + Keys.Enter);
            Next(terminal, "Line 2, Enter alone ends:");
            terminal.Kill(9);
            Assert.NotNull(terminal.Exit(30_000));
        }

        using (var terminal = Run("assess", "--linear"))
        {
            Next(terminal, "Go on with it? yes or no: ");
            terminal.Send("yes\n");
            Next(terminal, "1 of ");
            terminal.Send("list\n");
            Next(terminal, "Note, line 1. Prefers the left side");
            terminal.Send("quit\n");
            Assert.Equal(0, terminal.Exit(30_000));
        }
    }

    [Fact]
    public void The_first_screen_offers_what_a_kill_left_and_can_throw_it_away()
    {
        using (var terminal = Run("assess"))
        {
            Next(terminal, "1 of ");
            terminal.Send("0" + Keys.Enter);
            Next(terminal, "2 of ");
            terminal.Kill(9);
            Assert.NotNull(terminal.Exit(30_000));
        }

        using (var terminal = Run())
        {
            Next(terminal, "Answers of a visit that was stopped");
            terminal.Send("3" + Keys.Enter);
            Next(terminal, "Thrown away.");
            terminal.Send(Keys.Control('C'));
            Assert.Equal(0, terminal.Exit(30_000));
        }

        Assert.Empty(_home.Drafts);
    }

    [Fact]
    public void A_visit_that_is_under_way_in_another_window_is_not_offered()
    {
        using var first = Run("assess", "--linear");
        Next(first, "1 of ");
        first.Send("none\n");
        Next(first, "2 of ");
        using var second = Run("assess", "--linear");

        Assert.DoesNotContain("not finished", Next(second, "1 of "), StringComparison.Ordinal);
        Assert.Equal(1, _home.KeptAnswers());
    }

    [Fact]
    public void Answers_that_nobody_wants_are_not_offered_again()
    {
        using var terminal = Run("assess");
        Next(terminal, "1 of ");
        terminal.Send("0" + Keys.Enter);
        Next(terminal, "2 of ");
        Assert.Equal(1, _home.KeptAnswers());
        terminal.Send(Keys.Control('C'));
        Next(terminal, "The answers are not saved.");
        terminal.Send("3" + Keys.Enter);

        Assert.Equal(0, terminal.Exit(30_000));
        Assert.Empty(_home.Drafts);
    }

    [Fact]
    public void A_visit_for_a_profile_that_was_killed_is_offered_with_its_answers()
    {
        Store(0);
        using (var terminal = Run("assess", "--linear", "--save", _path))
        {
            Next(terminal, "1 of ");
            terminal.Send("none\n");
            Next(terminal, "2 of ");
            terminal.Kill(9);
            Assert.NotNull(terminal.Exit(30_000));
        }

        using (var terminal = Run("assess", "--linear", "--save", _path))
        {
            Next(terminal, "with 1 answer was not finished.");
            Next(terminal, "yes or no: ");
            terminal.Send("yes\n");
            Next(terminal, "2 of ");
            terminal.Send("finish\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\n");
            Next(terminal, "Saved as K-014");
            terminal.Send("quit\n");
            Assert.Equal(0, terminal.Exit(30_000));
        }

        Assert.Equal(2, new ProfileFile(BuiltIn.Questions()).Read(_path).Value!.Sessions.Length);
        Assert.Empty(Directory.GetFiles(_home.Path, ".*.draft"));
    }

    [Fact]
    public void The_screen_keeps_each_answer_beside_the_profile_and_offers_them_with_its_next_visit()
    {
        Store(0);
        for (int round = 0; round < 2; round++)
        {
            using var terminal = Run();
            Next(terminal, "Open a saved profile");
            terminal.Send("2" + Keys.Enter);
            Next(terminal, "Code or file:");
            terminal.Send(_path + Keys.Enter);
            Next(terminal, "Profile of K-014.");
            terminal.Send("1" + Keys.Enter);
            if (round == 0)
            {
                Next(terminal, "How much is asked?");
                terminal.Send("1" + Keys.Enter);
                Next(terminal, "1 of ");
                terminal.Send("0" + Keys.Enter);
                Next(terminal, "2 of ");
                Assert.Empty(_home.Drafts);
                terminal.Kill(9);
                Assert.NotNull(terminal.Exit(30_000));
                continue;
            }

            Next(terminal, "Answers of a visit that was stopped");
            terminal.Send("1" + Keys.Enter);
            Next(terminal, "2 of ");
            terminal.Send(Keys.Control('S'));
            Next(terminal, "Saved as K-014");
            terminal.Send(Keys.Control('C'));
            Assert.Equal(0, terminal.Exit(30_000));
        }

        Assert.Equal(2, new ProfileFile(BuiltIn.Questions()).Read(_path).Value!.Sessions.Length);
        Assert.Empty(Directory.GetFiles(_home.Path, ".*.draft"));
    }

    [Fact]
    public void A_save_to_a_share_that_is_away_is_offered_again_and_keeps_the_answers()
    {
        string share = Path.Combine(_home.Path, "share"), path = Path.Combine(share, "a.json");
        using var terminal = Run("assess", "--linear", "--save", path, "--person", "K-014");
        Next(terminal, "1 of ");
        terminal.Send("none\n");
        Next(terminal, "The answers are kept in your data folder.");
        Next(terminal, "2 of ");
        terminal.Send("finish\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\n");
        Next(terminal, "its folder does");
        Next(terminal, "The answers are still here.");
        Next(terminal, "Try again? yes or no: ");
        Directory.CreateDirectory(share);
        terminal.Send("yes\n");
        Next(terminal, "Saved as K-014");
        terminal.Send("quit\n");

        Assert.Equal(0, terminal.Exit(30_000));
        Assert.Equal(7, new ProfileFile(BuiltIn.Questions()).Read(path).Value!.Latest.Answers.Ids.Count());
    }

    [Fact]
    public void Answers_that_the_share_does_not_take_are_kept_in_the_own_folder_and_offered()
    {
        string path = Path.Combine(_home.Path, "share", "a.json");
        using (var terminal = Run("assess", "--linear", "--save", path, "--person", "K-014"))
        {
            Next(terminal, "1 of ");
            terminal.Send("none\nfinish\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\n");
            Next(terminal, "Try again? yes or no: ");
            terminal.Send("no\n");
            Next(terminal, "The answers are kept in your data folder.");
            Assert.Equal(3, terminal.Exit(30_000));
        }

        using (var terminal = Run())
        {
            Next(terminal, "Answers of a visit that was stopped");
            terminal.Send("1" + Keys.Enter);
            Next(terminal, "8 of ");
        }
    }

    [Fact]
    public void The_screen_says_why_a_save_failed_and_the_same_key_tries_again()
    {
        string share = Path.Combine(_home.Path, "share"), path = Path.Combine(share, "a.json");
        using var terminal = Run("assess", "--save", path, "--person", "K-014");
        Next(terminal, "1 of ");
        terminal.Send("0" + Keys.Enter);
        Next(terminal, "The answers are kept in your data folder.");
        terminal.Send(Keys.Control('S'));
        Next(terminal, "The answers are still here.");
        Directory.CreateDirectory(share);
        terminal.Send(Keys.Control('S'));
        Next(terminal, "Saved as K-014");
        terminal.Send(Keys.Control('C'));

        Assert.Equal(0, terminal.Exit(30_000));
        Assert.Single(new ProfileFile(BuiltIn.Questions()).Read(path).Value!.Latest.Answers.Ids);
    }

    /// <summary>Waits for text that comes after all that was waited for before; gives what came with it.</summary>
    private string Next(PtySession terminal, string wanted)
    {
        if (terminal != _terminal)
        {
            (_terminal, _read) = (terminal, 0);
        }

        var watch = Stopwatch.StartNew();
        int at;
        while ((at = terminal.All.IndexOf(wanted, _read, StringComparison.Ordinal)) < 0)
        {
            Assert.True(watch.Elapsed < TimeSpan.FromMinutes(1), $"'{wanted}' did not come after: {terminal.All[_read..]}");
            terminal.Quiet(40, 1000);
        }

        string got = terminal.All[_read..at];
        _read = at + wanted.Length;
        return got;
    }

    private void Store(int number) => new ProfileStore(BuiltIn.Questions()).Add(_path, "K-014", NumberedVisit.Session(number), seen: null);

    private PtySession Run(params string[] arguments) => new([BuiltProgram.Path, .. arguments], _home.Environment());
}
