using ToiletAid.Core.Person;

namespace ToiletAid.Acceptance.Tests.FullScreen;

/// <summary>A trial on the screens writes what the command writes.</summary>
public sealed class TrialPageTests : IDisposable
{
    private const string Typed = "1\n3\n6\nyes\n6\n4\n2\nnone\nyes\n5\n2\n7\n4\n4 12\n";

    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Typed_answers_write_the_file_of_the_command_and_say_the_same()
    {
        string byCommand = Copy("command"), onScreen = Copy("screen");
        string output = Cli.Run("note Sat well\n" + Typed, "trial", byCommand, "--date", "2026-03-16").Output;

        var model = Hands.Opened(onScreen);
        model.Press(Keys.Control('D'));
        Assert.Equal("Trial of a plan with K-014, on 2026-03-16.", model.Shell.Opening);
        model.Press(Keys.Control('K'));
        model.Type("Sat well");
        model.Press(Keys.Enter);
        foreach (string answer in Hands.Split(Typed))
        {
            model.Type(answer);
        }

        Assert.Equal("trial saved", model.Shell.Current.Name);
        Assert.Equal(File.ReadAllBytes(byCommand), File.ReadAllBytes(onScreen));
        string[] said = Hands.Split(output[output.IndexOf("Tried on", StringComparison.Ordinal)..].Replace(byCommand, onScreen, StringComparison.Ordinal));
        Assert.Equal(said, model.Shell.Lines.Skip(1));
        model.Press(Keys.Enter);
        Assert.StartsWith("Profile of K-014. 2 visits, the latest on 2026-03-16.", model.Shell.Lines[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Arrows_and_the_space_key_write_the_same_file()
    {
        string byCommand = Copy("command"), onScreen = Copy("screen");
        Cli.Run(Typed, "trial", byCommand, "--date", "2026-03-16");

        var model = Hands.Opened(onScreen);
        model.Choose("Record a trial");
        Reach(model, "plan", 1);
        Assert.Equal("2. Code, or unknown:", model.Answer);
        Reach(model, "level 03", 4, "03, ");
        Reach(model, "level 06", 1, "06, ");
        Reach(model, "dry", 1, "Yes");
        Reach(model, "level 06", 1, "06, ");
        model.Type("4");
        model.Type("2");
        model.Type("0");
        Reach(model, "real", 1, "Yes");
        Reach(model, "level 05", 2, "05, ");
        Reach(model, "cleanliness", 2);
        model.Type("7");
        model.Type("4");
        for (int i = 1; i <= 12; i++)
        {
            model.Press(Keys.Down);
            if (i is 3 or 4 or 12)
            {
                model.Press(" ");
                Assert.StartsWith("Yes: ", model.Answer, StringComparison.Ordinal);
                Assert.EndsWith($", {i} of 13", model.Answer, StringComparison.Ordinal);
            }
        }

        for (int i = 12; i > 3; i--)
        {
            model.Press(Keys.Up);
        }

        model.Press(" ");
        Assert.StartsWith("No: ", model.Answer, StringComparison.Ordinal);
        Assert.EndsWith(", 3 of 13", model.Answer, StringComparison.Ordinal);
        model.Press(Keys.Enter);
        Assert.Equal(File.ReadAllBytes(byCommand), File.ReadAllBytes(onScreen));
    }

    [Fact]
    public void A_digit_is_a_code_and_never_a_place()
    {
        var model = Hands.Opened(Copy("screen"));
        model.Press(Keys.Control('D'));
        model.Type("1");
        model.Press(Keys.Down);
        model.Press("6");
        Assert.Equal("2. Code, or unknown: 6", model.Answer);
        model.Press(Keys.Enter);
        Assert.StartsWith("06, independent", model.Shell.Opening, StringComparison.Ordinal);
        model.Type("11");
        Assert.StartsWith("Error: Not a valid code.", model.Shell.Current.Error, StringComparison.Ordinal);
        Assert.Equal("Not taken. 3. Code, or unknown:", model.Answer);
    }

    [Fact]
    public void The_result_of_a_saved_visit_is_computed_anew()
    {
        string file = Copy("screen");
        var model = Hands.Opened(file);
        model.Choose("Result of the latest visit");
        string[] before = [.. model.Shell.Lines];
        model.Choose("Record a trial");
        foreach (string answer in Hands.Split(Typed))
        {
            model.Type(answer);
        }

        model.Press(Keys.Enter);
        Assert.Equal("result", model.Shell.Current.Name);
        Assert.NotEqual(before, model.Shell.Lines);
        string ranked = Cli.Run(string.Empty, "rank", file).Output;
        Assert.All(model.Shell.Lines.TakeWhile(l => !l.StartsWith("Choose 1 ", StringComparison.Ordinal)).Skip(1), l => Assert.Contains(l, ranked, StringComparison.Ordinal));
        model.Press(Keys.Escape);
        Assert.StartsWith("Profile of K-014.", model.Shell.Lines[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Leaving_in_the_middle_asks_and_going_back_at_the_start_saves_nothing()
    {
        string file = Copy("screen"), before = File.ReadAllText(file);
        var model = Hands.Opened(file);
        model.Press(Keys.Control('D'));
        model.Type("1");
        model.Press(Keys.Control('C'));
        Assert.Equal("The trial is not finished, so it is not saved.", model.Shell.Lines[0]);
        model.Choose("Go back to the trial");
        model.Press(Keys.Escape);
        Assert.Equal("Going back.", model.Shell.Opening);
        Assert.Contains("Which plan is tried?", model.Shell.Lines);
        model.Press(Keys.Escape);
        Assert.Equal(("profile", "Nothing was saved."), (model.Shell.Current.Name, model.Shell.Opening));
        model.Press(Keys.Control('D'));
        foreach (string answer in (string[])["1", "unknown", "unknown", "no", "no"])
        {
            model.Type(answer);
        }

        Assert.Equal("Nothing was tried, so nothing was saved.", model.Shell.Opening);
        Assert.Equal(before, File.ReadAllText(file));
    }

    [Fact]
    public void Where_there_can_be_no_trial_a_sentence_says_why()
    {
        var model = new Model(depth: null);
        model.Press(Keys.Control('D'));
        Assert.StartsWith("A trial belongs to a saved profile.", model.Shell.Opening, StringComparison.Ordinal);

        model = new Model(Depth.Quick);
        model.Type("0");
        model.Press(Keys.Control('D'));
        Assert.Equal("A trial is recorded in what is saved. Save first.", model.Shell.Opening);

        model = Hands.Opened(DemoPeople.File("w-701-red-flag"));
        model.Press(Keys.Control('D'));
        Assert.Contains("Call the emergency service now", model.Shell.Opening, StringComparison.Ordinal);
    }

    /// <summary>A visit dated after today bears a wrong day, or the clock does: neither may forbid trials for ever.</summary>
    [Fact]
    public void A_visit_dated_after_today_forbids_no_trial()
    {
        var model = new Model(depth: null, trials: new DateOnly(2026, 3, 1));
        model.Choose("Open a saved profile");
        model.Type(DemoPeople.File("k-014-stiff-shoulder"));
        model.Press(Keys.Control('D'));
        Assert.Equal("Trial of a plan with K-014, on 2026-03-01.", model.Shell.Opening);
    }

    [Fact]
    public void A_file_that_cannot_be_written_keeps_the_answers_and_a_second_try_saves_them()
    {
        string file = Copy("screen"), away = file + ".away";
        var model = Hands.Opened(file);
        model.Press(Keys.Control('D'));
        string[] answers = Hands.Split(Typed);
        foreach (string answer in answers[..^1])
        {
            model.Type(answer);
        }

        File.Move(file, away);
        model.Type(answers[^1]);
        Assert.Equal("trial not saved", model.Shell.Current.Name);
        Assert.Contains("it was removed since it was opened", model.Shell.Lines[0], StringComparison.Ordinal);
        File.Move(away, file);
        model.Choose("Try again");
        Assert.Equal("trial saved", model.Shell.Current.Name);
        Assert.Contains("\"trials\"", File.ReadAllText(file), StringComparison.Ordinal);
    }

    private static void Reach(Model model, string step, int downs, string label = "")
    {
        for (int i = 0; i < downs; i++)
        {
            model.Press(Keys.Down);
        }

        Assert.True(model.Answer.StartsWith(label, StringComparison.Ordinal), $"at {step}: {model.Answer}");
        model.Press(Keys.Enter);
    }

    private string Copy(string name) => _folder.File(name + ".json", File.ReadAllText(DemoPeople.File("k-014-stiff-shoulder")));
}
