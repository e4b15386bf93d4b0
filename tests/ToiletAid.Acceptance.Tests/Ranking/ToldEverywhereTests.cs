using System.Text.Json;
using System.Text.Json.Nodes;

namespace ToiletAid.Acceptance.Tests.Ranking;

/// <summary>What no output may leave out: where seen and measured do not go together, the set-up of a second tool, and how one knows that it is clean.</summary>
public sealed class ToldEverywhereTests
{
    /// <summary>How the sheets say it, in words and under large pictures.</summary>
    private static readonly string[] Checks = ["stays clean", "Clean paper means clean skin", "check that the skin is clean", "check now and then", "Paper clean? Then stop.", "Let somebody look.", "is it clean?"];

    private const string Conflict = "The answer on reach behind is better than the measured joints allow.";

    /// <summary>A hand that was seen at the tailbone, and a shoulder in which hardly any movement was measured.</summary>
    [Fact]
    public void A_conflict_of_seen_and_measured_is_told_in_text_json_and_note()
    {
        using var folder = new TempFolder();
        var profile = JsonNode.Parse(File.ReadAllText(DemoPeople.File("k-014-stiff-shoulder")))!;
        var answers = profile["sessions"]![0]!["answers"]!;
        answers["reach-behind"]!["value"] = "tailbone";
        answers["joints"] = JsonNode.Parse("""{"value":{"shoulder-extension":0,"internal-rotation":10},"how":"measured","unit":"deg"}""");
        string file = folder.File("contrary.json", profile.ToJsonString());

        Assert.Contains(Conflict, Cli.Run("", "rank", file).Output, StringComparison.Ordinal);
        Assert.Contains(Conflict, Cli.Run("", "report", file).Output, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(Cli.Run("", "rank", file, "--format", "ndjson").Output);
        Assert.Contains(json.RootElement.GetProperty("conflicts").EnumerateArray(), c => c.GetString()!.StartsWith(Conflict, StringComparison.Ordinal));
        Assert.DoesNotContain(Conflict, Cli.Run("", "rank", DemoPeople.File("k-014-stiff-shoulder")).Output, StringComparison.Ordinal);
    }

    /// <summary>V-390's second place washes and then pats dry with a handle: its paper is folded and put in, and both are washed.</summary>
    [Theory]
    [InlineData("note")]
    [InlineData("sheet")]
    [InlineData("sheet", "--for", "helper")]
    public void The_set_up_of_a_second_tool_is_told_too(string kind, params string[] more)
    {
        string said = Cli.Run("", ["report", DemoPeople.File("v-390-large-build"), "--plan", "2", "--kind", kind, .. more]).Output;

        Assert.Matches("(?s)millilitres of water.*Fold [0-9]+ sheets.*Put it in the jaws.*Pat dry.*Wash both aids", said);
    }

    [Fact]
    public void Every_sheet_for_everybody_says_how_one_knows_that_it_is_clean()
    {
        int sheets = 0;
        foreach (string file in DemoPeople.Files.Where(f => !f.Contains("w-701", StringComparison.Ordinal)))
        {
            using var advice = JsonDocument.Parse(Cli.Run("", "rank", file, "--format", "ndjson", "--samples", "200").Output);
            for (int place = 1; place <= advice.RootElement.GetProperty("shortlist").GetArrayLength(); place++)
            {
                string said = Cli.Run("", "report", file, "--kind", "sheet", "--plan", $"{place}").Output;
                Assert.True(Checks.Any(c => said.Contains(c, StringComparison.Ordinal)), $"{Path.GetFileName(file)}, place {place}\n{said}");
                sheets++;
            }
        }

        Assert.InRange(sheets, 20, 40);
    }
}
