using System.Text.Json;
using System.Text.Json.Nodes;

namespace ToiletAid.Acceptance.Tests.Ranking;

public sealed class RankOutputTests
{
    [Theory]
    [MemberData(nameof(DemoPeople.Names), MemberType = typeof(DemoPeople))]
    public void The_shortlist_of_a_demo_person_reads_as_approved(string name)
    {
        var (code, output, error) = Cli.Run("", "rank", DemoPeople.File(name));

        Assert.Equal((0, ""), (code, error));
        Golden.Match(output, name + ".txt");
    }

    [Fact]
    public void Json_has_the_documented_shape()
    {
        var (_, output, _) = Cli.Run("", "rank", DemoPeople.Folder, "--format", "json", "--top", "2");

        using var document = JsonDocument.Parse(output);
        var all = document.RootElement.EnumerateArray().ToList();
        Assert.Equal(DemoPeople.Names.Count, all.Count);
        foreach (var result in all)
        {
            Assert.Equal(["person", "date", "stop", "brief", "firstPlaceHolds", "aidNeeded", "arrange", "conflicts", "shortlist", "ruledOut"], result.EnumerateObject().Select(p => p.Name));
            foreach (var plan in result.GetProperty("shortlist").EnumerateArray())
            {
                Assert.Equal(["aid", "addOns", "companion", "approach", "posture"], plan.GetProperty("plan").EnumerateObject().Select(p => p.Name).Where(n => n != "variant"));
                Assert.Equal(
                    ["reach", "handling", "cleaning", "skin", "contact", "learning", "carrying", "upkeep", "independence"],
                    plan.GetProperty("criteria").EnumerateObject().Select(p => p.Name));
                Assert.All(plan.GetProperty("criteria").EnumerateObject(), p => Assert.InRange(p.Value.GetDouble(), 0, 1));
                Assert.InRange(plan.GetProperty("value").GetDouble(), 0, 1);
                Assert.NotEmpty(plan.GetProperty("reasons").EnumerateArray());
            }
        }
    }

    [Fact]
    public void Ndjson_has_one_result_a_line_and_reads_profiles_a_line()
    {
        string lines = string.Concat(DemoPeople.Names.Select(d => Flat(DemoPeople.File(d.Data)) + "\n"));

        var fromLines = Cli.Run(lines, "rank", "-", "--format", "ndjson");
        var fromFolder = Cli.Run("", "rank", DemoPeople.Folder, "--format", "ndjson");

        Assert.Equal(0, fromLines.Code);
        Assert.Equal(fromFolder.Output, fromLines.Output);
    }

    [Fact]
    public void Csv_has_a_header_and_a_row_for_each_plan()
    {
        var (_, output, _) = Cli.Run("", "rank", DemoPeople.File("y-419-no-aid-needed"), "--format", "csv", "--top", "2");

        string[] lines = output.TrimEnd().Split('\n');
        Assert.StartsWith("person,date,stop,rank,aid,addOns,companion,approach,posture,value,firstShare,reach,handling", lines[0], StringComparison.Ordinal);
        Assert.Equal(3, lines.Length);
        Assert.StartsWith("Y-419,2026-03-09,,1,", lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_rerun_gives_the_same_bytes() =>
        Assert.Equal(Cli.Run("", "rank", DemoPeople.Folder, "--format", "json").Output, Cli.Run("", "rank", DemoPeople.Folder, "--format", "json").Output);

    [Fact]
    public void An_answer_that_the_joints_contradict_is_told_with_its_question()
    {
        // A hand at the waist behind with a shoulder that neither extends nor turns inward: the two cannot both be so.
        using var folder = new TempFolder();
        var profile = JsonNode.Parse(File.ReadAllText(DemoPeople.File("k-014-stiff-shoulder")))!;
        var session = profile["sessions"]![0]!;
        session["depth"] = "measured";
        session["answers"]!["reach-behind"] = JsonNode.Parse("""{"value":"waist-or-above","how":"observed"}""");
        session["answers"]!["joints"] = JsonNode.Parse("""{"value":{"shoulder-extension":0,"internal-rotation":0},"how":"measured","unit":"deg"}""");

        string output = Cli.Run("", "rank", folder.File("k.json", profile.ToJsonString())).Output;

        Assert.Contains("The answer on reach behind is better than the measured joints allow. The ranking goes by what was seen. Ask or measure again.\n", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_red_flag_stops_the_ranking_and_says_whom_to_call()
    {
        var (code, output, _) = Cli.Run("", "rank", DemoPeople.File("w-701-red-flag"), "--format", "json");

        using var document = JsonDocument.Parse(output);
        var result = document.RootElement[0];
        Assert.Equal(0, code);
        Assert.Equal("new-numbness", result.GetProperty("stop")[0].GetProperty("id").GetString());
        Assert.Contains("Call the emergency service now", result.GetProperty("stop")[0].GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Empty(result.GetProperty("shortlist").EnumerateArray());
    }

    private static string Flat(string path)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(path));
        using var buffer = new MemoryStream();
        using (var writer = new Utf8JsonWriter(buffer))
        {
            document.RootElement.WriteTo(writer);
        }

        return System.Text.Encoding.UTF8.GetString(buffer.ToArray());
    }
}
