using System.Text;
using ToiletAid.App.Files;
using ToiletAid.App.Panels;
using ToiletAid.Core.Advising;

namespace ToiletAid.Acceptance.Tests.Outcomes;

public sealed class PanelTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly string _panel;

    public PanelTests()
    {
        _panel = _folder.File("panel");
        Assert.Equal(0, Cli.Run(string.Empty, "panel", "--people", "4", "--seed", "3", "--out", _panel).Code);
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_case_page_shows_the_answers_and_not_what_the_tool_says()
    {
        string[] pages = Directory.GetFiles(_panel, "case-*.txt");
        string page = File.ReadAllText(pages.Order(StringComparer.Ordinal).First());

        Assert.Equal(4, pages.Length);
        Assert.DoesNotContain("Place 1", page, StringComparison.Ordinal);
        Assert.DoesNotContain("of 100", page, StringComparison.Ordinal);
        Golden.Match(page, "PanelCase.txt");
    }

    /// <summary>Three raters: one ranks as the tool does, one the other way round, one puts all kinds in one place.</summary>
    [Fact]
    public void A_rater_who_ranks_as_the_tool_does_agrees_wholly_with_it()
    {
        string likeTool = Filled("like-tool.csv", (places, kind) => places.GetValueOrDefault(kind)), same = Filled("same.csv", (_, _) => 1);
        string output = Cli.Run(string.Empty, "panel", _panel, "--ratings", likeTool).Output;

        Assert.Contains("Raters with the tool: weighted kappa 1.00 (1.00 to 1.00), concordance W with the mean order of the raters 1.00 (1.00 to 1.00).", output, StringComparison.Ordinal);
        Assert.Contains("The tool's first is a rater's first in 4 of 4 ratings.", output, StringComparison.Ordinal);
        Assert.Contains("Both put", output, StringComparison.Ordinal);
        string two = Cli.Run(string.Empty, "panel", _panel, "--ratings", likeTool, same).Output;
        Assert.Contains("Rater same with the tool: weighted kappa 0.00", two, StringComparison.Ordinal);
    }

    [Fact]
    public void A_panel_of_invented_ratings_goes_round()
    {
        string tool = Filled("a.csv", (places, kind) => places.GetValueOrDefault(kind));
        string swapped = Filled("b.csv", (places, kind) => places.GetValueOrDefault(kind) switch { 1 => 2, 2 => 1, var other => other });
        string reversed = Filled("c.csv", (places, kind) => places.TryGetValue(kind, out int? p) ? places.Count + 1 - p : null);

        Golden.Match(Cli.Run(string.Empty, "panel", _panel, "--ratings", tool, swapped, reversed).Output, "Panel.txt");
    }

    [Theory]
    [InlineData("case,kind,place", "case,aid,place", "line 1: the first row should be case,kind,place")]
    [InlineData("tongs,", "tongs,first", "first is not a place, give a whole number from 1 to")]
    [InlineData("tongs,", "pliers,", "pliers is not a kind of aid of this panel")]
    [InlineData("tongs,", "tongs,,,", "there are 5 columns instead of 3")]
    public void A_fault_in_a_form_is_told_with_its_line(string good, string bad, string fault)
    {
        string form = _folder.File("bad.csv"), text = File.ReadAllText(Path.Combine(_panel, PanelFolder.Form));
        int at = text.IndexOf(good, StringComparison.Ordinal);
        File.WriteAllText(form, text[..at] + bad + text[(at + good.Length)..]);
        var run = Cli.Run(string.Empty, "panel", _panel, "--ratings", form);

        Assert.Equal(3, run.Code);
        Assert.Empty(run.Output);
        Assert.Contains(fault, run.Error, StringComparison.Ordinal);
        Assert.Contains("at line", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_form_of_a_spreadsheet_with_semicolons_and_a_missing_row_is_told()
    {
        string form = _folder.File("bad.csv");
        string[] lines = File.ReadAllText(Path.Combine(_panel, PanelFolder.Form)).Replace(',', ';').TrimEnd('\n').Split('\n');
        File.WriteAllText(form, string.Join("\r\n", lines[..^1]));

        Assert.Contains("is missing, add its row, with an empty place where it does not suit.", Cli.Run(string.Empty, "panel", _panel, "--ratings", form).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Half_a_command_is_wrong_usage() => Assert.Equal(2, Cli.Run(string.Empty, "panel", "--people", "4").Code);

    /// <summary>A form filled from the places that the tool gives, by case.</summary>
    private string Filled(string name, Func<Dictionary<string, int?>, string, int?> place)
    {
        var tool = Places(Path.Combine(_panel, PanelFolder.Cases));
        string[] rows = [.. File.ReadAllLines(Path.Combine(_panel, PanelFolder.Form)).Skip(1).Select(r => r.Split(','))
            .Select(c => $"{c[0]},{c[1]},{place(tool[c[0]], c[1])}")];
        string file = _folder.File(name);
        File.WriteAllText(file, PanelFolder.Header + "\n" + string.Join('\n', rows) + "\n");
        return file;
    }

    /// <summary>Places of every kind by case, also of those that another beats whatever the weights, which the shortlist leaves out.</summary>
    private static Dictionary<string, Dictionary<string, int?>> Places(string cases)
    {
        var knowledge = BuiltIn.Knowledge();
        var advisor = new Advisor(knowledge, new());
        var places = new Dictionary<string, Dictionary<string, int?>>();
        foreach (string line in File.ReadLines(cases))
        {
            Assert.True(new ProfileReader(knowledge.Questions).Read(Encoding.UTF8.GetBytes(line)).TryGet(out var profile));
            places[profile.Person] = advisor.Advise(profile.Latest.Answers).Ranked.ToDictionary(r => r.Plan.Aid.Id, r => (int?)r.Rank);
        }

        return places;
    }
}
