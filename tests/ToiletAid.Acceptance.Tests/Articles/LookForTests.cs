using System.Text.Json;

namespace ToiletAid.Acceptance.Tests.Articles;

public sealed class LookForTests
{
    [Fact]
    public void What_to_look_for_is_said_for_the_demo_people()
    {
        var lines = new List<string>();
        foreach (string name in DemoPeople.Names.Select(n => n.Data))
        {
            var (code, output, error) = Cli.Run("", "look-for", DemoPeople.File(name));
            Assert.Equal((0, string.Empty), (code, error));
            lines.Add($"== {name}\n{output}");
        }

        Golden.Match(string.Join('\n', lines), "look-for.txt");
    }

    [Theory]
    [MemberData(nameof(DemoPeople.Names), MemberType = typeof(DemoPeople))]
    public void Musts_and_wishes_are_at_most_eight_short_lines_each_with_its_check(string name)
    {
        string[] lines = Cli.Run("", "look-for", DemoPeople.File(name)).Output.TrimEnd('\n').Split('\n');
        int[] items = [.. Enumerable.Range(0, lines.Length).Where(i => char.IsAsciiDigit(lines[i][0]))];

        Assert.InRange(items.Length, 0, 8);
        Assert.All(items, i => Assert.InRange(lines[i].Length, 1, 90));
        Assert.All(items, i => Assert.InRange(lines[i + 1].Length, 1, 90));
        Assert.Equal(items.Select((_, n) => $"{n + 1}."), items.Select(i => lines[i].Split(' ')[0]));
    }

    /// <summary>An invented man whose washer leaves wet skin that his hand does not get to: in the shop he needs the handle that dries, too.</summary>
    [Fact]
    public void What_is_used_after_a_wash_is_bought_too()
    {
        using var folder = new TempFolder();
        string path = folder.File("w-201.json");
        string given = "red-flags=none precautions=none conditions=none age=34 sex=male mass=165 stature=178 place=own-toilet reach-behind=outer-buttock reach-front=not-past-mid-thigh lean=both "
            + "grasp=fine-pinch dexterity=usual tremor=none feeling=usual skin=sound steps=four-or-more sight=enough water=basin-in-reach socket=yes fixtures=no helper=never method=either";
        Assert.Equal(0, Cli.Run(string.Concat(Enumerable.Repeat("unknown\n", 60)), ["assess", "--linear", "--depth", "full", "--save", path, "--person", "W-201", .. given.Split(' ')]).Code);

        string[] lines = Cli.Run("", "look-for", path).Output.Split('\n');
        using var json = JsonDocument.Parse(Cli.Run("", "look-for", path, "--format", "json").Output);

        Assert.StartsWith("Battery hand-held washer with folding nozzle: two things it must have, one thing that what is used after it must have", lines[0], StringComparison.Ordinal);
        int heading = Array.IndexOf(lines, "Extending handle with clamp tip, used after it, must have:");
        Assert.Equal("3. Paper goes on with one hand.", lines[heading + 1]);
        Assert.Equal("long-clamp", json.RootElement.GetProperty("after").GetString());
        Assert.Equal("one-hand-load", json.RootElement.GetProperty("mustsAfter")[0].GetProperty("trait").GetString());
    }

    [Fact]
    public void The_same_comes_as_data()
    {
        using var json = JsonDocument.Parse(Cli.Run("", "look-for", DemoPeople.File("k-014-stiff-shoulder"), "--format", "json").Output);
        var must = json.RootElement.GetProperty("musts")[0];

        Assert.Equal("short-soft", json.RootElement.GetProperty("aid").GetString());
        Assert.Equal("length", must.GetProperty("trait").GetString());
        Assert.Equal("at-least", must.GetProperty("bound").GetString());
        Assert.Equal("cm", must.GetProperty("unit").GetString());
        Assert.True(must.GetProperty("sure").GetDouble() > must.GetProperty("value").GetDouble());
        Assert.Equal("folded-length", json.RootElement.GetProperty("wishes")[0].GetProperty("trait").GetString());
    }

    [Fact]
    public void A_red_flag_stops_it()
    {
        string path = DemoPeople.File("w-701-red-flag");
        using var json = JsonDocument.Parse(Cli.Run("", "look-for", path, "--format", "json").Output);

        Assert.StartsWith("Stop. No aid is recommended today.", Cli.Run("", "look-for", path, "--plan", "1").Output, StringComparison.Ordinal);
        Assert.NotEqual(0, json.RootElement.GetProperty("stop").GetArrayLength());
        Assert.False(json.RootElement.TryGetProperty("musts", out _));
    }

    [Fact]
    public void Another_place_is_looked_at_where_it_is_named()
    {
        string path = DemoPeople.File("k-014-stiff-shoulder");

        Assert.Contains("For place 2, ", Cli.Run("", "look-for", path, "--plan", "2").Output, StringComparison.Ordinal);
        Assert.Contains("For first place, ", Cli.Run("", "look-for", path).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("99")]
    public void A_place_that_is_not_there_is_refused(string place)
    {
        var (code, output, error) = Cli.Run("", "look-for", DemoPeople.File("k-014-stiff-shoulder"), "--plan", place);

        Assert.NotEqual(0, code);
        Assert.Empty(output);
        Assert.StartsWith($"There is no place {place}, use a number from 1 to ", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_own_hand_comes_first_that_is_said_first() =>
        Assert.StartsWith("First comes what need not be bought: own hand", Cli.Run("", "look-for", DemoPeople.File("y-419-no-aid-needed")).Output, StringComparison.Ordinal);

    [Fact]
    public void A_stock_that_is_not_there_is_said()
    {
        var (code, _, error) = Cli.Run("", "look-for", DemoPeople.File("k-014-stiff-shoulder"), "--aids", "no-such-file.json");

        Assert.NotEqual(0, code);
        Assert.Contains("no-such-file.json", error, StringComparison.Ordinal);
    }
}
