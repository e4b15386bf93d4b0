using System.Text.Json.Nodes;
using System.Xml.Linq;
using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.Acceptance.Tests.Outcomes;

public sealed class OutcomesTests
{
    private static readonly string People = TriedPeople.Lines(300);

    [Fact]
    public void What_came_out_is_told() => Golden.Match(Cli.Run(People, "outcomes", "-").Output, "Outcomes.txt");

    [Fact]
    public void The_table_holds_the_same_counts()
    {
        string[] rows = Cli.Run(People, "outcomes", "-", "--format", "csv").Output.TrimEnd('\n').Split('\n');

        Assert.All(rows, r => Assert.Equal(rows[0].Count(c => c == ','), r.Count(c => c == ',')));
        string[] all = rows.Single(r => r.StartsWith("kind,all,", StringComparison.Ordinal)).Split(',');
        Assert.Equal("300", all[2]);
        Assert.Contains($"{all[3]} of 300 first tries failed", Cli.Run(People, "outcomes", "-").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_bytes_come_from_any_number_of_jobs()
    {
        using var folder = new TempFolder();
        string one = folder.File("one.json"), four = folder.File("four.json");
        var first = Cli.Run(People, "outcomes", "-", "--jobs", "1", "--save", one);
        var second = Cli.Run(People, "outcomes", "-", "--jobs", "4", "--save", four);

        Assert.Equal(first.Output, second.Output);
        Assert.Equal(File.ReadAllBytes(one), File.ReadAllBytes(four));
    }

    [Fact]
    public void The_picture_says_in_words_what_it_draws()
    {
        using var folder = new TempFolder();
        string file = folder.File("outcomes.svg");
        Cli.Run(People, "outcomes", "-", "--picture", file);

        var svg = XDocument.Load(file);
        string description = svg.Descendants().Single(e => e.Name.LocalName == "desc").Value;
        int bands = svg.Descendants().Count(e => e.Name.LocalName == "circle");
        Assert.InRange(bands, 2, 5);
        Assert.Equal(bands, description.Split("Of plans said to work").Length - 1);
    }

    [Fact]
    public void The_file_holds_no_person_and_no_small_cell()
    {
        using var folder = new TempFolder();
        string file = folder.File("clinic.json");
        var run = Cli.Run(People, "outcomes", "-", "--save", file);
        string text = File.ReadAllText(file);

        Assert.Equal(0, run.Code);
        Assert.All(People.TrimEnd('\n').Split('\n').Select(l => (string)JsonNode.Parse(l)!["person"]!), code => Assert.DoesNotContain(code, text, StringComparison.Ordinal));
        Assert.DoesNotContain("2026", text, StringComparison.Ordinal);
        Assert.All(JsonNode.Parse(text)!["kinds"]!.AsArray(), k => Assert.False((int)k!["people"]! is > 0 and < 5));
    }

    [Fact]
    public void Too_few_people_are_refused_and_nothing_is_written()
    {
        using var folder = new TempFolder();
        string file = folder.File("clinic.json");
        var run = Cli.Run(TriedPeople.Lines(12), "outcomes", "-", "--save", file);

        Assert.Equal(3, run.Code);
        Assert.Equal($"{file} was not written: a plan was tried with 12 people, and fewer than 60 tell less than the built-in values.\n", run.Error);
        Assert.False(File.Exists(file));
    }

    [Fact]
    public void Nobody_with_a_trial_is_no_fault()
    {
        var run = Cli.Run(string.Empty, "outcomes", DemoPeople.File("k-014-stiff-shoulder"));

        Assert.Equal(0, run.Code);
        Assert.StartsWith("1 person looked at. A plan was tried with 0 of them", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trial_keeps_what_was_predicted_of_it()
    {
        using var folder = new TempFolder();
        string file = folder.File("k-014.json");
        File.Copy(DemoPeople.File("k-014-stiff-shoulder"), file);
        var first = JsonNode.Parse(Cli.Run(string.Empty, "rank", file, "--format", "json").Output)![0]!["shortlist"]![0]!;

        // The ranking counts 0 for those who cannot use the plan; what a try is held against is told of the others. Numbers that are drawn decide a little
        // of both, how clean the skin gets and who can use it, so that the two go together.
        double told = (double)first["criteria"]!["cleaning"]! / (double)first["usableShare"]!;
        Cli.Run(string.Empty, "trial", file, "--date", "2026-03-16", "--plan", "1", "--before", "03", "--goal", "06", "--dry-level", "06", "--dry-minutes", "4", "--dry-effort", "2", "--dry-problems", "none", "--real", "no");

        var read = new ProfileFile(BuiltIn.Questions()).Read(file);
        Assert.True(read.TryGet(out var profile));
        Assert.Equal(told, profile.Tried.Single().Trial.Predicted!.Criteria[(int)Criterion.Cleaning], 5e-3);
        Assert.Contains("of 1 worked", Cli.Run(string.Empty, "outcomes", file).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{\"reach\":0.5}", "handling is missing, add it")]
    [InlineData("{\"reach\":1.5,\"handling\":0.5,\"cleaning\":0.5,\"skin\":0.5,\"contact\":0.5,\"learning\":0.5,\"carrying\":0.5,\"upkeep\":0.5}", "1.5 should be a number from 0 to 1 without quotes")]
    [InlineData("{\"speed\":0.5}", "speed is not known here")]
    public void A_prediction_that_is_none_is_refused(string predicted, string fault)
    {
        string line = TriedPeople.Lines(1);
        int start = line.IndexOf("\"predicted\":{", StringComparison.Ordinal) + "\"predicted\":".Length, end = line.IndexOf('}', start) + 1;
        var run = Cli.Run(line[..start] + predicted + line[end..], "outcomes", "-");

        Assert.Equal(3, run.Code);
        Assert.Contains(fault, run.Error, StringComparison.Ordinal);
        Assert.Contains("sessions[1].trials[0].predicted", run.Error, StringComparison.Ordinal);
    }
}
