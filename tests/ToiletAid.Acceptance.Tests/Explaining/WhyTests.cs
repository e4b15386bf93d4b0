using System.Text.Json;

namespace ToiletAid.Acceptance.Tests.Explaining;

public sealed class WhyTests
{
    [Fact]
    public void Why_not_names_a_change_that_does_put_the_plan_first()
    {
        // The claim is checked by making the change in the file and ranking that.
        string path = DemoPeople.File("t-562-weak-grip");
        var (code, output, _) = Cli.Run("", "why", path, "--aid", "wipe-moist", "--format", "json");
        using var document = JsonDocument.Parse(output);
        var change = Assert.Single(document.RootElement.GetProperty("whatWouldPutItFirst").EnumerateArray());
        var question = App.Files.BuiltIn.Questions()[new(change.GetProperty("question").GetString()!)];
        string to = question.Options.Single(o => o.Label == change.GetProperty("to").GetString()).Id;
        var profile = System.Text.Json.Nodes.JsonNode.Parse(File.ReadAllText(path))!;
        profile["sessions"]![0]!["answers"]![question.Id]!["value"] = to;

        using var folder = new TempFolder();
        var (_, ranked, _) = Cli.Run("", "rank", folder.File("changed.json", profile.ToJsonString()), "--format", "json", "--top", "1");

        Assert.Equal(0, code);
        using var result = JsonDocument.Parse(ranked);
        Assert.Equal("wipe-moist", result.RootElement[0].GetProperty("shortlist")[0].GetProperty("plan").GetProperty("aid").GetString());
    }

    [Fact]
    public void Why_a_plan_is_ruled_out_gives_every_reason()
    {
        string output = Cli.Run("", "why", DemoPeople.File("d-841-forgets-steps"), "--aid", "seat-wash-dry").Output;

        Assert.Contains("Powered wash-and-dry seat is ruled out.\nThere is no protected socket near the toilet.\nFixtures may not be changed here.\n", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData]
    [InlineData("--aid", "by-hand")]
    public void A_red_flag_is_said_whatever_is_asked(params string[] options)
    {
        string output = Cli.Run("", ["why", DemoPeople.File("w-701-red-flag"), .. options]).Output;

        Assert.StartsWith("Stop. No aid is recommended today.\n", output, StringComparison.Ordinal);
    }

    /// <summary>A person with a red flag is for a doctor today: that no question is left to ask is not what has to be said.</summary>
    [Fact]
    public void A_red_flag_is_said_in_place_of_the_next_question()
    {
        string path = DemoPeople.File("w-701-red-flag");
        var (code, output, error) = Cli.Run("", "next", path);

        Assert.Equal((0, ""), (code, error));
        Assert.StartsWith("Stop. No aid is recommended today.\n", output, StringComparison.Ordinal);
        Assert.DoesNotContain("No other question", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("next")]
    [InlineData("why")]
    public void A_script_finds_the_red_flag_in_the_data(string command)
    {
        using var flagged = JsonDocument.Parse(Cli.Run("", command, DemoPeople.File("w-701-red-flag"), "--format", "json").Output);
        using var other = JsonDocument.Parse(Cli.Run("", command, DemoPeople.File("d-841-forgets-steps"), "--format", "json").Output);

        Assert.NotEmpty(Assert.Single(flagged.RootElement.GetProperty("stop").EnumerateArray()).GetProperty("id").GetString()!);
        Assert.Equal(0, other.RootElement.GetProperty("stop").GetArrayLength());
    }

    [Fact]
    public void An_aid_that_is_not_there_is_told()
    {
        var (code, _, error) = Cli.Run("", "why", DemoPeople.File("d-841-forgets-steps"), "--aid", "spoon");

        Assert.Equal(2, code);
        Assert.StartsWith("spoon is not a kind of aid, use one of by-hand, long-clamp", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_are_whole_sentences_without_symbols()
    {
        foreach (string name in DemoPeople.Names.Select(n => n.Data))
        {
            foreach (string line in Cli.Run("", "why", DemoPeople.File(name)).Output.TrimEnd('\n').Split('\n'))
            {
                Assert.Matches("^[A-Z0-9][A-Za-z0-9 ,:.?-]*[.:?]$", line);
            }
        }
    }
}
