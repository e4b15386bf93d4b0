using ToiletAid.App.Store;
using ToiletAid.Core.Person;
using ToiletAidTui.Screens;

namespace ToiletAid.Acceptance.Tests.FullScreen;

/// <summary>Nothing that was ticked is dropped by going back, by a look at another page or by the other mode.</summary>
public sealed class HeldTicksTests
{
    [Fact]
    public void Going_back_to_the_precautions_keeps_them_through_any_further_key()
    {
        var model = Precautions();
        foreach (string key in (string[])["2", " ", "5", " ", Keys.Enter, Keys.Escape])
        {
            model.Press(key);
        }

        string[] held = Held(model);
        Assert.Equal(2, held.Length);
        model.Press(Keys.Down);
        Assert.StartsWith("No: ", model.Answer, StringComparison.Ordinal);
        model.Press(Keys.Down);
        Assert.StartsWith("Yes: ", model.Answer, StringComparison.Ordinal);
        model.Press("7");
        model.Press(" ");
        model.Press(Keys.Enter);
        Assert.Equal(3, Answered(model).Length);
        Assert.All(held, id => Assert.Contains(id, Answered(model)));
    }

    [Fact]
    public void What_is_ticked_and_not_answered_yet_is_held_in_linear_mode_and_back()
    {
        var model = Precautions();
        model.Press("2");
        model.Press(" ");

        Assert.Equal("Numbers, Enter keeps 2", model.Shell.Visit!.Engine.Wanted());
        model.Shell.Replace(QuestionPage.Make(model.Shell.Visit, withTopic: true));
        model.Press(Keys.Enter);
        Assert.Single(Answered(model));
    }

    [Fact]
    public void Who_takes_every_tick_away_is_asked_again()
    {
        var model = Precautions();
        foreach (string key in (string[])["2", " ", Keys.Enter, Keys.Escape, "2", " ", Keys.Enter])
        {
            model.Press(key);
        }

        Assert.StartsWith("Error: Nothing is chosen.", model.Shell.Error, StringComparison.Ordinal);
        Assert.Equal("Numbers, or none", model.Shell.Visit!.Engine.Wanted());
    }

    [Fact]
    public void A_digit_that_names_nothing_says_so_each_time()
    {
        var model = new Model(depth: null);
        model.Press("9");
        Assert.Equal("9 is not 1 to 8. Number 1 to 8:", model.Answer);
        model.Press("9");
        Assert.Equal("Again, 9 is not 1 to 8. Number 1 to 8:", model.Answer);
        model = new Model(all: true);
        while (model.Shell.Current is not ChoicePage)
        {
            model.Press(Keys.Control('U'));
        }

        model.Press("9");
        Assert.StartsWith("Error: 9 is not a number from 1 to ", model.Shell.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void One_key_answers_one_out_of_several_where_that_is_set(bool oneKey)
    {
        var model = new Model(oneKey: oneKey);
        while (model.Shell.Current is not ChoicePage)
        {
            model.Press("0");
            model.Press(Keys.Enter);
        }

        var before = model.Shell.Current;
        model.Press("1");
        Assert.Equal(oneKey, before != model.Shell.Current);
    }

    [Fact]
    public void Saved_profiles_are_listed_by_code_and_a_protected_one_asks_for_its_passphrase_without_showing_it()
    {
        const string right = "four quiet otters swim";
        using var folder = new TempFolder();
        string profiles = Path.Combine(folder.Path, "toiletaid", "profiles"), passphrase = folder.File("p.txt", right);
        Directory.CreateDirectory(profiles);
        string file = Path.Combine(profiles, "K-014.json");
        File.Copy(DemoPeople.File("k-014-stiff-shoulder"), file);
        Assert.Equal(0, Cli.Run(string.Empty, "protect", file, "--passphrase-file", passphrase).Code);

        var model = new Model(depth: null, folder: folder.Path);
        model.Choose("Open a saved profile");
        model.Choose("K-014, ");
        Assert.Equal("Passphrase:", model.Answer);
        model.Type("wrong");
        Assert.DoesNotContain("wrong", model.Whole, StringComparison.Ordinal);
        Assert.NotEmpty(model.Shell.Error);
        model.Type(right);
        Assert.StartsWith("Profile of K-014.", model.Shell.Lines[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_code_stands_for_its_profile_where_a_path_does()
    {
        using var folder = new TempFolder();
        string profiles = Path.Combine(folder.Path, "toiletaid", "profiles");
        Directory.CreateDirectory(profiles);
        File.Copy(DemoPeople.File("k-014-stiff-shoulder"), Path.Combine(profiles, "K-014.json"));

        foreach (string[] command in (string[][])[["rank", "K-014", "--brief"], ["why", "K-014"], ["next", "K-014"], ["report", "K-014"]])
        {
            using var output = new StringWriter();
            int code = ToiletAidTui.Commands.CliHost.Run(command, new() { Input = Stream.Null, Output = output, Error = output, Variable = name => name == ToiletAid.App.Store.OwnFolder.DataVariable ? folder.Path : null });
            Assert.True(code == 0, $"{command[0]}: {output}");
        }

        Assert.Equal("K-014", Assert.Single(new ProfileFolder(name => name == OwnFolder.DataVariable ? folder.Path : null).Codes()).Code);
    }

    private static Model Precautions()
    {
        var model = new Model(all: true);
        while (model.Shell.Current.Name != "question precautions")
        {
            model.Press("0");
            model.Press(Keys.Enter);
        }

        return model;
    }

    private static string[] Answered(Model model) => model.Shell.Visit!.Engine.Answers[QuestionIds.Precautions] is { Value: AnswerValue.Many m } ? [.. m.Options] : [];

    private static string[] Held(Model model)
    {
        var engine = model.Shell.Visit!.Engine;
        return [.. engine.Ticked.Select(i => engine.Current!.Question.Options[i].Id)];
    }
}
