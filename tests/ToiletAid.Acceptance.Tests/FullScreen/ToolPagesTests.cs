using ToiletAid.Acceptance.Tests.Readers;
using ToiletAid.Core.Interview;
using ToiletAidTui.Screens;

namespace ToiletAid.Acceptance.Tests.FullScreen;

/// <summary>What stands beside the interview says on its screens what the command line says.</summary>
public sealed class ToolPagesTests
{
    [Fact]
    public void A_calculator_says_what_its_command_says()
    {
        var model = new Model(depth: null);
        Choose(model, "Calculators");
        Choose(model, "Grip");
        Fill(model, "Age: not given", "74");
        Fill(model, "Grip: not given", "11 kg");
        Assert.Contains("3. Grip: 11 kg", model.Shell.Lines);
        Choose(model, "Compute");

        Assert.Equal(Split(Cli.Run("", "calc", "grip", "--age", "74", "--grip", "11 kg").Output), model.Shell.Lines);
    }

    [Fact]
    public void What_a_calculator_refuses_is_said_and_what_was_given_stays()
    {
        var model = new Model(depth: null);
        Choose(model, "Calculators");
        Choose(model, "Grip");
        Fill(model, "Grip: not given", "11 miles");
        Choose(model, "Compute");

        Assert.Equal("calculator grip", model.Shell.Current.Name);
        Assert.Equal(Cli.Run("", "calc", "grip", "--grip", "11 miles").Error.Trim().ReplaceLineEndings(" "), model.Shell.Opening);
        Assert.Contains("3. Grip: 11 miles", model.Shell.Lines);
        Fill(model, "Grip: 11 miles", string.Empty);
        Assert.Contains("3. Grip: not given", model.Shell.Lines);
    }

    [Fact]
    public void Two_visits_are_compared_from_the_first_screen()
    {
        string path = Path.Combine(DemoPeople.Folder, "visits", "g-226-sore-hands.json");
        var model = new Model(depth: null);
        Choose(model, "Compare two visits");
        Type(model, Path.Combine(DemoPeople.Folder, "nobody.json"));
        Type(model, string.Empty);
        Assert.Contains("there is no such file", model.Shell.Current.Error, StringComparison.Ordinal);
        Assert.Equal("compare second", model.Shell.Current.Name);
        model.Press(Keys.Escape);
        Choose(model, "Compare two visits");
        Type(model, path);
        Type(model, string.Empty);

        Assert.Equal(Split(Cli.Run("", "compare", path).Output), model.Shell.Lines);
    }

    [Fact]
    public void A_saved_profile_leads_to_papers_and_a_paper_is_shown_or_written()
    {
        using var folder = new TempFolder();
        string path = DemoPeople.File("k-014-stiff-shoulder"), file = folder.File("note.html");
        var model = new Model(depth: null);
        Choose(model, "Open a saved profile");
        Type(model, path);
        Choose(model, "Write a paper");
        Choose(model, "Write or show it");
        Assert.Equal(Split(Cli.Run("", "report", path).Output), model.Shell.Lines);

        model.Press(Keys.Enter);
        Fill(model, "Format: not given", "html");
        Fill(model, "Out: not given", file);
        Choose(model, "Write or show it");
        Assert.Equal("Written.", model.Shell.Opening);
        Assert.Equal(Cli.Run("", "report", path, "--format", "html").Output, File.ReadAllText(file));
    }

    [Fact]
    public void A_result_gives_set_up_what_would_change_it_and_why_not_another_kind()
    {
        string path = DemoPeople.File("k-014-stiff-shoulder");
        var model = new Model(depth: null);
        Choose(model, "Open a saved profile");
        Type(model, path);
        Choose(model, "Result of the latest visit");
        Choose(model, "Set-up");
        Assert.Contains(model.Shell.Lines, l => l.StartsWith("1. ", StringComparison.Ordinal));
        model.Press(Keys.Enter);
        Choose(model, "What would change this");
        Assert.True(model.Shell.Lines.Count > 1);
        model.Press(Keys.Enter);
        Choose(model, "Why not another kind");
        Choose(model, "Toilet-paper tongs");
        string why = Cli.Run("", "why", path, "--aid", "tongs").Output;
        Assert.All(model.Shell.Lines.Skip(1), line => Assert.Contains(line, why, StringComparison.Ordinal));
        Assert.True(model.Shell.Lines.Count > 3);
    }

    [Fact]
    public void A_visit_that_is_not_saved_has_no_paper_yet()
    {
        var model = new Model(Depth.Quick);
        while (model.Shell.Current is QuestionPage)
        {
            model.Press(Keys.Control('U'));
        }

        Choose(model, "Write a paper");
        Assert.Equal("A paper is made from what is saved. Save first.", model.Shell.Opening);
    }

    private static void Choose(Model model, string label)
    {
        var list = Assert.IsType<ListPage>(model.Shell.Current);
        int place = list.Entries.Select(e => e.Label).ToList().FindIndex(l => l.StartsWith(label, StringComparison.Ordinal));
        Assert.True(place >= 0, $"{label} is not among {string.Join(", ", list.Entries.Select(e => e.Label))}");
        model.Press(Keys.End);
        model.Press(Keys.Home);
        for (int i = 0; i < place; i++)
        {
            model.Press(Keys.Down);
        }

        model.Press(Keys.Enter);
    }

    private static void Fill(Model model, string label, string value)
    {
        Choose(model, label);
        Type(model, value);
    }

    private static void Type(Model model, string text)
    {
        foreach (char c in text)
        {
            model.Press(c.ToString());
        }

        model.Press(Keys.Enter);
    }

    private static string[] Split(string text) => text.Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
