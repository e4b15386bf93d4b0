using ToiletAid.Core.Person;
using ToiletAidTui.Screens;

namespace ToiletAid.Acceptance.Tests.FullScreen;

/// <summary>What stands beside the interview says on its screens what the command line says.</summary>
public sealed class ToolPagesTests
{
    [Fact]
    public void A_calculator_says_what_its_command_says()
    {
        var model = new Model(depth: null);
        model.Choose("Calculators");
        model.Choose("Grip");
        model.Fill("Age: not given", "74");
        model.Fill("Grip strength: not given", "11 kg");
        Assert.Contains("3. Grip strength: 11 kg", model.Shell.Lines);
        model.Choose("Compute");

        Assert.Equal(Hands.Split(Cli.Run("", "calc", "grip", "--age", "74", "--grip", "11 kg").Output), model.Shell.Lines);
    }

    [Fact]
    public void What_a_calculator_refuses_is_said_and_what_was_given_stays()
    {
        var model = new Model(depth: null);
        model.Choose("Calculators");
        model.Choose("Grip");
        model.Fill("Grip strength: not given", "11 miles");
        model.Choose("Compute");

        Assert.Equal("calculator grip", model.Shell.Current.Name);
        Assert.Equal(Cli.Run("", "calc", "grip", "--grip", "11 miles").Error.Trim().ReplaceLineEndings(" "), model.Shell.Opening);
        Assert.Contains("3. Grip strength: 11 miles", model.Shell.Lines);
        model.Fill("Grip strength: 11 miles", string.Empty);
        Assert.Contains("3. Grip strength: not given", model.Shell.Lines);
    }

    [Fact]
    public void Two_visits_are_compared_from_the_first_screen()
    {
        string path = Path.Combine(DemoPeople.Folder, "visits", "g-226-sore-hands.json");
        var model = new Model(depth: null);
        model.Choose("Compare two visits");
        model.Type(Path.Combine(DemoPeople.Folder, "nobody.json"));
        model.Type(string.Empty);
        Assert.Contains("there is no such file", model.Shell.Current.Error, StringComparison.Ordinal);
        Assert.Equal("compare second", model.Shell.Current.Name);
        model.Press(Keys.Escape);
        model.Choose("Compare two visits");
        model.Type(path);
        model.Type(string.Empty);

        Assert.Equal(Hands.Split(Cli.Run("", "compare", path).Output), model.Shell.Lines);
    }

    [Fact]
    public void Kinds_are_explained_side_by_side_by_their_numbers()
    {
        var model = new Model(depth: null);
        model.Choose("Kinds side by side");
        Assert.Contains("5. Toilet-paper tongs", model.Shell.Lines);
        model.Type("5 14");
        Assert.Equal("Error: 14 is not 1 to 13.", model.Shell.Current.Error);
        model.Type("5 5");
        Assert.Equal("Error: A kind is named twice, name each once.", model.Shell.Current.Error);
        model.Type("5 3");
        Assert.Equal(Hands.Split(Cli.Run("", "explain", "tongs", "short-soft").Output), model.Shell.Lines);
        model.Press(Keys.Enter);
        Assert.Equal("start", model.Shell.Current.Name);
    }

    [Fact]
    public void Kinds_are_explained_to_the_person_of_a_saved_profile()
    {
        string path = DemoPeople.File("k-014-stiff-shoulder");
        var model = Hands.Opened(path);
        model.Choose("Kinds side by side");
        model.Type("3");

        Assert.Equal(Hands.Split(Cli.Run("", "explain", "short-soft", path).Output), model.Shell.Lines);
    }

    [Fact]
    public void A_saved_profile_leads_to_papers_and_a_paper_is_shown_or_written()
    {
        using var folder = new TempFolder();
        string path = DemoPeople.File("k-014-stiff-shoulder"), file = folder.File("note.html");
        var model = Hands.Opened(path);
        model.Choose("Write a document");
        model.Choose("Write or show it");
        Assert.Equal(Hands.Split(Cli.Run("", "report", path).Output), model.Shell.Lines);

        model.Press(Keys.Enter);
        model.Fill("Format of the document: the usual one", "html");
        model.Fill("File to write: none, it is shown", file);
        model.Choose("Write or show it");
        Assert.Equal("Written.", model.Shell.Opening);
        Assert.Equal(Cli.Run("", "report", path, "--format", "html").Output, File.ReadAllText(file));
    }

    [Fact]
    public void A_result_gives_set_up_what_would_change_it_and_why_not_another_kind()
    {
        string path = DemoPeople.File("k-014-stiff-shoulder");
        var model = Hands.Opened(path);
        model.Choose("Result of the latest visit");
        model.Choose("Set-up");
        Assert.Contains(model.Shell.Lines, l => l.StartsWith("1. ", StringComparison.Ordinal));
        model.Press(Keys.Enter);
        model.Choose("What would change it");
        Assert.True(model.Shell.Lines.Count > 1);
        model.Press(Keys.Enter);
        model.Choose("Why not another kind");
        model.Choose("Toilet-paper tongs");
        string why = Cli.Run("", "why", path, "--aid", "tongs").Output;
        Assert.All(model.Shell.Lines.Skip(1), line => Assert.Contains(line, why, StringComparison.Ordinal));
        Assert.True(model.Shell.Lines.Count > 3);
    }

    [Fact]
    public void What_was_tried_is_told_with_the_reasons_and_with_why_not()
    {
        using var folder = new TempFolder();
        string path = folder.File("k-014.json", File.ReadAllText(DemoPeople.File("k-014-stiff-shoulder")));
        Assert.Equal(0, Cli.Run("tongs\nunknown\nunknown\nno\nyes\n6\n1\nunknown\nunknown\nnone\n", "trial", path, "--date", "2026-03-16").Code);
        Assert.Equal(0, Cli.Run("short-soft\nunknown\nunknown\nno\nyes\n2\n3\nunknown\nunknown\n4\n", "trial", path, "--date", "2026-03-16").Code);
        var model = Hands.Opened(path);
        model.Choose("Result of the latest visit");
        model.Choose("Reasons");
        Assert.Contains(model.Shell.Lines, l => l.StartsWith("Tried on 2026-03-16: toilet-paper tongs", StringComparison.Ordinal));
        model.Press(Keys.Enter);
        foreach (var (name, id) in (ReadOnlySpan<(string, string)>)[("Toilet-paper tongs", "tongs"), ("Short folding holder", "short-soft")])
        {
            model.Choose("Why not another kind");
            model.Choose(name);
            string[] why = Hands.Split(Cli.Run("", "why", path, "--aid", id).Output);
            Assert.Equal(model.Shell.Lines.Skip(1), why.Take(model.Shell.Lines.Count - 1));
            Assert.Contains(model.Shell.Lines, l => l.StartsWith("Tried on 2026-03-16", StringComparison.Ordinal));
            model.Press(Keys.Enter);
            model.Press(Keys.Escape);
        }
    }

    [Fact]
    public void Forms_speak_the_words_of_the_trade_and_no_two_labels_are_alike()
    {
        var model = new Model(depth: null);
        Assert.All(model.Shell.Services.Calculators, c => Assert.Equal(c.Fields.Length, c.Fields.Select(f => f.Label).Distinct().Count()));
        Assert.Contains("Weight without water", model.Shell.Services.Calculators.Single(c => c.Name == "water").Fields.Select(f => f.Label));
        Assert.Contains("Body mass", model.Shell.Services.Calculators.Single(c => c.Name == "reach").Fields.Select(f => f.Label));
    }

    [Fact]
    public void A_visit_that_is_not_saved_has_no_paper_yet()
    {
        var model = new Model(Depth.Quick);
        while (model.Shell.Current is QuestionPage)
        {
            model.Press(Keys.Control('U'));
        }

        model.Choose("More");
        model.Choose("Write a document");
        Assert.Equal("A document is made from what is saved. Save first.", model.Shell.Opening);
    }
}
