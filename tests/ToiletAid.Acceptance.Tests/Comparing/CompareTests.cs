using System.Text.Json;
using System.Xml.Linq;

namespace ToiletAid.Acceptance.Tests.Comparing;

public sealed class CompareTests
{
    private static readonly string Shoulder = Repository.Path("profiles", "visits", "a-512-thawing-shoulder.json");
    private static readonly string Hands = Repository.Path("profiles", "visits", "g-226-sore-hands.json");

    [Fact]
    public void Three_visits_read_as_approved() => Golden.Match(Good("compare", Shoulder), "three-visits.txt");

    [Fact]
    public void First_and_last_visit_by_the_same_person_read_as_approved() =>
        Golden.Match(Good("compare", Shoulder, "--from", "1", "--to", "3", "--rater", "same"), "first-to-last.txt");

    [Fact]
    public void Two_visits_read_as_approved() => Golden.Match(Good("compare", Hands, "--rater", "different"), "two-visits.txt");

    [Fact]
    public void A_visit_that_changed_nothing_reads_as_approved()
    {
        using var folder = new TempFolder();
        string text = File.ReadAllText(DemoPeople.File("d-841-forgets-steps"));
        string first = folder.File("first.json", text), second = folder.File("second.json", text.Replace("2026-03-09", "2026-06-09", StringComparison.Ordinal));

        Golden.Match(Good("compare", first, second), "nothing-changed.txt");
    }

    [Fact]
    public void A_red_flag_at_one_visit_reads_as_approved()
    {
        using var folder = new TempFolder();
        string first = folder.File("first.json", File.ReadAllText(Hands));
        string second = folder.File("second.json", File.ReadAllText(DemoPeople.File("w-701-red-flag")).Replace("W-701", "G-226", StringComparison.Ordinal).Replace("2026-03-09", "2026-06-22", StringComparison.Ordinal));

        Golden.Match(Good("compare", first, second), "red-flag.txt");
    }

    [Fact]
    public void Json_has_the_documented_shape_and_its_shares_add_up()
    {
        using var document = JsonDocument.Parse(Good("compare", Shoulder, "--from", "1", "--format", "json"));
        var root = document.RootElement;

        Assert.Equal(["person", "from", "to", "changes", "same", "places", "lead", "firstIfOnlyReal", "trends"], root.EnumerateObject().Select(p => p.Name));
        Assert.All(root.GetProperty("changes").EnumerateArray(), c => Assert.Contains(c.GetProperty("verdict").GetString(), (string[])["real", "within-error", "unknown"]));
        var lead = root.GetProperty("lead");
        double sum = lead.GetProperty("shares").EnumerateArray().Sum(s => s.GetProperty("share").GetDouble());
        Assert.Equal(lead.GetProperty("now").GetDouble() - lead.GetProperty("before").GetDouble(), sum, 1e-12);
        Assert.All(root.GetProperty("trends").EnumerateArray(), t => Assert.Equal(3, t.GetProperty("points").GetArrayLength()));
    }

    [Fact]
    public void The_picture_tells_the_same_as_the_text()
    {
        using var folder = new TempFolder();
        string file = folder.File("change.svg");

        string text = Good("compare", Shoulder, "--picture", file);

        XNamespace svg = "http://www.w3.org/2000/svg";
        var root = XDocument.Load(file).Root!;
        Assert.Equal("img", root.Attribute("role")!.Value);
        Assert.Contains("A-512", root.Element(svg + "title")!.Value, StringComparison.Ordinal);
        string[] trend = [.. text.TrimEnd().Split('\n').SkipWhile(l => !l.StartsWith("First place:", StringComparison.Ordinal)).Skip(1)];
        Assert.NotEmpty(trend);
        Assert.Equal(string.Join(' ', trend), root.Element(svg + "desc")!.Value);
        Assert.Equal(3 * trend.Length, root.Descendants(svg + "circle").Count());
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file));
        }
    }

    [Fact]
    public void Two_files_of_one_person_are_compared_like_two_visits_of_one_file()
    {
        using var folder = new TempFolder();
        using var document = JsonDocument.Parse(File.ReadAllText(Hands));
        string[] files = [.. document.RootElement.GetProperty("sessions").EnumerateArray().Select((s, i) =>
            folder.File($"{i}.json", $$"""{"format":1,"person":"G-226","sessions":[{{s.GetRawText()}}]}"""))];

        string apart = Good(["compare", .. files]), together = Good("compare", Hands);

        Assert.Equal(together, apart);
    }

    [Theory]
    [InlineData(2, "There are visits 1 to 3, give two different ones of these.", "--from", "3", "--to", "3")]
    [InlineData(2, "There are visits 1 to 3, give two different ones of these.", "--from", "0")]
    [InlineData(2, "Visit 3 of 2026-06-15 comes after visit 1 of 2026-01-12, give the earlier one first.", "--from", "3", "--to", "1")]
    [InlineData(3, "could not be written", "--picture", "/nowhere/at/all.svg")]
    public void What_cannot_be_compared_is_told_in_a_sentence(int code, string sentence, params string[] options)
    {
        var (got, output, error) = Cli.Run("", ["compare", Shoulder, .. options]);

        Assert.Equal((code, ""), (got, output));
        Assert.Contains(sentence, error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd().Split('\n'));
    }

    [Fact]
    public void Other_people_and_single_visits_are_not_compared()
    {
        Assert.Contains("give two profiles of one person", Cli.Run("", "compare", Shoulder, Hands).Error, StringComparison.Ordinal);
        Assert.Contains("only one visit", Cli.Run("", "compare", DemoPeople.File("k-014-stiff-shoulder")).Error, StringComparison.Ordinal);
        Assert.Contains("nothing to draw", Cli.Run("", "compare", Hands, "--picture", "x.svg").Error, StringComparison.Ordinal);
    }

    private static string Good(params string[] args)
    {
        var (code, output, error) = Cli.Run("", args);
        Assert.Equal((0, ""), (code, error));
        return output;
    }
}
