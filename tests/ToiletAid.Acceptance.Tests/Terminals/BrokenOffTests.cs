using ToiletAid.Acceptance.Tests.Readers;
using ToiletAid.Acceptance.Tests.Store;
using ToiletAid.App.Files;
using ToiletAid.App.Store;

namespace ToiletAid.Acceptance.Tests.Terminals;

/// <summary>Answers that must survive a kill, and saves that fail at first, on a real terminal and in both modes.</summary>
[Collection(nameof(Aloud))]
public sealed class BrokenOffTests : IDisposable
{
    private readonly Home _home = new();
    private readonly string _path;

    public BrokenOffTests() => _path = Path.Combine(_home.Path, "K-014.json");

    public void Dispose() => _home.Dispose();

    [Theory]
    [InlineData("--linear", "\n")]
    [InlineData("--full-screen", Keys.Enter)]
    public void Each_answer_of_a_visit_without_a_file_is_kept_and_offered_after_a_kill(string mode, string enter)
    {
        using (var terminal = Run("assess", mode))
        {
            terminal.Until("1 of ");
            for (int answered = 1; answered <= 4; answered++)
            {
                bool many = terminal.All.LastIndexOf("or none", StringComparison.Ordinal) > terminal.All.LastIndexOf("Question", StringComparison.Ordinal);
                terminal.Send((many ? mode == "--linear" ? "none" : "0" : "1") + enter);
                terminal.Until($"{answered + 1} of ");
                Assert.Equal(answered, _home.KeptAnswers());
            }

            terminal.Kill(9);
            Assert.NotNull(terminal.Exit());
        }

        Assert.Equal(4, _home.KeptAnswers());
        using (var terminal = Run("assess", "--linear"))
        {
            terminal.Until("with 4 answers was not finished.");
            terminal.Until("Go on with it? yes or no: ");
            terminal.Send("yes\n");
            terminal.Until("5 of ");
            terminal.Send("quit\n");
            terminal.Until("Nothing was saved.");
            Assert.Equal(0, terminal.Exit());
        }

        Assert.Empty(_home.Drafts);
    }

    [Fact]
    public void The_first_screen_offers_what_a_kill_left_and_can_throw_it_away()
    {
        using (var terminal = Run("assess"))
        {
            terminal.Until("1 of ");
            terminal.Send("0" + Keys.Enter);
            terminal.Until("2 of ");
            terminal.Kill(9);
            Assert.NotNull(terminal.Exit());
        }

        using (var terminal = Run())
        {
            terminal.Until("Answers of a visit that was stopped");
            terminal.Send("3" + Keys.Enter);
            terminal.Until("Thrown away.");
            terminal.Send(Keys.Control('Q'));
            Assert.Equal(0, terminal.Exit());
        }

        Assert.Empty(_home.Drafts);
    }

    [Fact]
    public void A_visit_that_is_under_way_in_another_window_is_not_offered()
    {
        using var first = Run("assess", "--linear");
        first.Until("1 of ");
        first.Send("none\n");
        first.Until("2 of ");
        using var second = Run("assess", "--linear");

        Assert.DoesNotContain("not finished", second.Until("1 of "), StringComparison.Ordinal);
        Assert.Equal(1, _home.KeptAnswers());
    }

    [Fact]
    public void Answers_that_nobody_wants_are_not_offered_again()
    {
        using var terminal = Run("assess");
        terminal.Until("1 of ");
        terminal.Send("0" + Keys.Enter);
        terminal.Until("2 of ");
        Assert.Equal(1, _home.KeptAnswers());
        terminal.Send(Keys.Control('Q'));
        terminal.Until("The answers are not saved.");
        terminal.Send("3" + Keys.Enter);

        Assert.Equal(0, terminal.Exit());
        Assert.Empty(_home.Drafts);
    }

    [Fact]
    public void A_visit_for_a_profile_that_was_killed_is_offered_with_its_answers()
    {
        Store(0);
        using (var terminal = Run("assess", "--linear", "--save", _path))
        {
            terminal.Until("1 of ");
            terminal.Send("none\n");
            terminal.Until("2 of ");
            terminal.Kill(9);
            Assert.NotNull(terminal.Exit());
        }

        using (var terminal = Run("assess", "--linear", "--save", _path))
        {
            terminal.Until("with 1 answer was not finished.");
            terminal.Until("yes or no: ");
            terminal.Send("yes\n");
            terminal.Until("2 of ");
            terminal.Send("finish\n");
            terminal.Until("Saved as K-014");
            Assert.Equal(0, terminal.Exit());
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
            terminal.Until("Open a saved profile");
            terminal.Send("2" + Keys.Enter);
            terminal.Until("File:");
            terminal.Send(_path + Keys.Enter);
            terminal.Until("Profile of K-014.");
            terminal.Send("1" + Keys.Enter);
            if (round == 0)
            {
                terminal.Until("How much is asked?");
                terminal.Send("1" + Keys.Enter);
                terminal.Until("1 of ");
                terminal.Send("0" + Keys.Enter);
                terminal.Until("2 of ");
                Assert.Empty(_home.Drafts);
                terminal.Kill(9);
                Assert.NotNull(terminal.Exit());
                continue;
            }

            terminal.Until("Answers of a visit that was stopped");
            terminal.Send("1" + Keys.Enter);
            terminal.Until("2 of ");
            terminal.Send(Keys.Control('S'));
            terminal.Until("Saved as K-014");
            terminal.Send(Keys.Control('Q'));
            Assert.Equal(0, terminal.Exit());
        }

        Assert.Equal(2, new ProfileFile(BuiltIn.Questions()).Read(_path).Value!.Sessions.Length);
        Assert.Empty(Directory.GetFiles(_home.Path, ".*.draft"));
    }

    [Fact]
    public void A_save_to_a_share_that_is_away_is_offered_again_and_keeps_the_answers()
    {
        string share = Path.Combine(_home.Path, "share"), path = Path.Combine(share, "a.json");
        using var terminal = Run("assess", "--linear", "--save", path, "--person", "K-014");
        terminal.Until("1 of ");
        terminal.Send("none\n");
        terminal.Until("its folder does not exist. The visit goes on without it.");
        terminal.Until("2 of ");
        terminal.Send("finish\n");
        terminal.Until("could not be written, its folder does not exist. The answers are still here.");
        terminal.Until("Try again? yes or no: ");
        Directory.CreateDirectory(share);
        terminal.Send("yes\n");
        terminal.Until("Saved as K-014");

        Assert.Equal(0, terminal.Exit());
        Assert.Single(new ProfileFile(BuiltIn.Questions()).Read(path).Value!.Latest.Answers.Ids);
    }

    [Fact]
    public void Answers_that_the_share_does_not_take_are_kept_in_the_own_folder_and_offered()
    {
        string path = Path.Combine(_home.Path, "share", "a.json");
        using (var terminal = Run("assess", "--linear", "--save", path, "--person", "K-014"))
        {
            terminal.Until("1 of ");
            terminal.Send("none\nfinish\n");
            terminal.Until("Try again? yes or no: ");
            terminal.Send("no\n");
            terminal.Until("The next start offers them.");
            Assert.Equal(3, terminal.Exit());
        }

        using (var terminal = Run())
        {
            terminal.Until("Answers of a visit that was stopped");
            terminal.Send("1" + Keys.Enter);
            terminal.Until("2 of ");
        }
    }

    [Fact]
    public void The_screen_says_why_a_save_failed_and_the_same_key_tries_again()
    {
        string share = Path.Combine(_home.Path, "share"), path = Path.Combine(share, "a.json");
        using var terminal = Run("assess", "--save", path, "--person", "K-014");
        terminal.Until("1 of ");
        terminal.Send("0" + Keys.Enter);
        terminal.Until("The visit goes on without it.");
        terminal.Send(Keys.Control('S'));
        terminal.Until("The answers are still here.");
        Directory.CreateDirectory(share);
        terminal.Send(Keys.Control('S'));
        terminal.Until("Saved as K-014");
        terminal.Send(Keys.Control('Q'));

        Assert.Equal(0, terminal.Exit());
        Assert.Single(new ProfileFile(BuiltIn.Questions()).Read(path).Value!.Latest.Answers.Ids);
    }

    private void Store(int number) => new ProfileStore(BuiltIn.Questions()).Add(_path, "K-014", Saver.Session(number), seen: null);

    private PtySession Run(params string[] arguments) => new([BuiltProgram.Path, .. arguments], _home.Environment());
}
