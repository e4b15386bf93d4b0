using System.Text.Json;
using System.Xml.Linq;

namespace ToiletAid.Acceptance.Tests.Batch;

public sealed class WhatIfTests
{
    private static readonly string[] Fast = ["--samples", "500"];

    [Fact]
    public void First_places_before_and_after_are_those_of_two_rankings()
    {
        var before = Firsts(People.Ndjson);
        var after = Firsts(WithPriorities(People.Lines, """[["carrying"],["upkeep"]]"""));

        string[] rows = WhatIf("csv", "--change", "priorities=carrying,upkeep").TrimEnd('\n').Split('\n');

        Assert.Equal("person,before,after,changed,why", rows[0]);
        Assert.Equal(before.Keys, rows.Skip(1).Select(r => r.Split(',')[0]));
        Assert.All(rows.Skip(1), row =>
        {
            string[] cells = row.Split(',');
            Assert.Equal((before[cells[0]], after[cells[0]]), (cells[1], cells[2]));
            Assert.Equal(cells[1] == cells[2] ? "no" : "yes", cells[3]);
        });
        Assert.Contains(rows.Skip(1), row => row.Split(',')[3] == "yes");
    }

    [Fact]
    public void A_criterion_that_alone_is_put_first_carries_most_moves()
    {
        using var document = JsonDocument.Parse(WhatIf("json", "--change", "priorities=carrying"));
        var why = document.RootElement.GetProperty("people").EnumerateArray().Where(p => p.GetProperty("changed").GetBoolean()).Select(p => p.GetProperty("why").GetString()).ToList();

        Assert.True(why.Count(w => w == "carrying") * 2 > why.Count);
    }

    [Fact]
    public void Counts_add_up_in_every_form()
    {
        using var document = JsonDocument.Parse(WhatIf("json", "--change", "priorities=carrying"));
        var people = document.RootElement.GetProperty("people").EnumerateArray().ToList();
        var summary = document.RootElement.GetProperty("summary");
        int changed = people.Count(p => p.GetProperty("changed").GetBoolean());

        Assert.Equal(People.Lines.Length, people.Count);
        Assert.Equal(people.Count, summary.GetProperty("people").GetInt32());
        Assert.Equal(changed, summary.GetProperty("changed").GetInt32());
        Assert.Equal(changed, summary.GetProperty("moves").EnumerateArray().Sum(m => m.GetProperty("people").GetInt32()));
        Assert.Equal(people.Count(p => p.GetProperty("after").GetString() is not null), summary.GetProperty("aids").EnumerateArray().Sum(a => a.GetProperty("after").GetInt32()));
        string text = WhatIf("text", "--change", "priorities=carrying");
        Assert.StartsWith("What if: priorities carrying.\n", text, StringComparison.Ordinal);
        Assert.Equal(changed, text.Split('\n').Count(l => l.StartsWith("Person ", StringComparison.Ordinal)));
        Assert.Contains($"Another kind of aid is first for {changed}.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_order_that_everybody_has_already_changes_nothing()
    {
        string same = WithPriorities(People.Lines, """[["skin"],["reach","handling"]]""");

        string text = Cli.Run(same, ["whatif", "-", "--change", "priorities=skin,reach=handling", .. Fast]).Output;

        Assert.Contains("Another kind of aid is first for 0.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Person ", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_kind_that_gets_worse_in_the_clinics_stock_loses_first_places()
    {
        // The kind that is first most often, made useless for cleaning.
        string most = Firsts(People.Ndjson).Values.Where(v => v.Length > 0).GroupBy(v => v, StringComparer.Ordinal).MaxBy(g => g.Count())!.Key;
        using var folder = new TempFolder();
        using var all = JsonDocument.Parse(Cli.Run("", "aids", "--format", "json").Output);
        string aid = all.RootElement.GetProperty("aids").EnumerateArray().Single(a => a.GetProperty("id").GetString() == most).GetRawText();
        var node = System.Text.Json.Nodes.JsonNode.Parse(aid)!;
        (node["coverage"]!["value"], node["coverage"]!["low"], node["coverage"]!["high"]) = (0.02, 0.01, 0.05);
        string file = folder.File("stock.json", "{\"format\":1,\"aids\":[" + node.ToJsonString() + "],\"addOns\":[]}");

        var (code, output, error) = Cli.Run(People.Ndjson, ["whatif", "-", "--change", "aids=" + file, "--summary", "--format", "csv", .. Fast]);

        Assert.Equal((0, ""), (code, error));
        string[] row = output.Split('\n').Single(l => l.StartsWith($"aid,{most},", StringComparison.Ordinal)).Split(',');
        Assert.True(int.Parse(row[3], null) < int.Parse(row[2], null), output);
        Assert.Equal(Firsts(People.Ndjson, "--aids", file).Values.Count(v => v == most), int.Parse(row[3], null));
    }

    [Fact]
    public void The_picture_holds_every_number_in_words()
    {
        using var folder = new TempFolder();
        string file = folder.File("firsts.svg");

        string text = WhatIf("text", "--change", "priorities=carrying", "--summary", "--picture", file);

        var svg = XDocument.Load(file).Root!;
        XNamespace ns = "http://www.w3.org/2000/svg";
        Assert.Equal(string.Join(' ', text.TrimEnd('\n').Split('\n').Skip(1)), svg.Element(ns + "desc")!.Value);
        Assert.Equal("img", svg.Attribute("role")!.Value);
        Assert.Equal(2 * text.Split('\n').Count(l => l.Contains(" is first for ", StringComparison.Ordinal) && l.EndsWith("after.", StringComparison.Ordinal)), svg.Element(ns + "g")!.Elements(ns + "rect").Count());
    }

    [Fact]
    public void The_chart_in_text_has_a_bar_as_long_as_each_number()
    {
        using var folder = new TempFolder();
        string file = folder.File("firsts.txt");
        using var document = JsonDocument.Parse(WhatIf("json", "--change", "priorities=carrying", "--summary"));
        var counts = document.RootElement.GetProperty("summary").GetProperty("aids").EnumerateArray()
            .SelectMany(a => (int[])[a.GetProperty("before").GetInt32(), a.GetProperty("after").GetInt32()]);

        WhatIf("text", "--change", "priorities=carrying", "--summary", "--picture", file);

        string[] lines = File.ReadAllLines(file);
        Assert.Equal(["First places before and after: priorities carrying.", "A mark stands for 1 person."], lines[..2]);
        var bars = lines.Where(l => l.StartsWith("before ", StringComparison.Ordinal) || l.StartsWith("after ", StringComparison.Ordinal)).ToList();
        Assert.Equal(counts, bars.Select(l => l.Count(c => c == '#')));
        Assert.Equal(counts, bars.Select(l => int.Parse(l["before ".Length..].TrimEnd('#'), null)));
    }

    [Fact]
    public void Companions_are_counted_as_the_ranking_gives_them()
    {
        var companions = Cli.Run(People.Ndjson, ["rank", "-", "--format", "csv", "--top", "1", .. Fast]).Output.TrimEnd('\n').Split('\n').Skip(1)
            .Select(r => r.Split(',')[6]).Where(c => c.Length > 0).GroupBy(c => c, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);

        var rows = WhatIf("csv", "--change", "priorities=carrying", "--summary").Split('\n').Select(r => r.Split(',')).Where(r => r[0] == "companion").ToList();

        Assert.NotEmpty(companions);
        Assert.Equal(companions, rows.Where(r => r[2] != "0").ToDictionary(r => r[1], r => int.Parse(r[2], null), StringComparer.Ordinal));
    }

    [Fact]
    public void Tables_of_people_of_a_stopped_and_a_resumed_run_are_together_the_single_table()
    {
        string whole = WhatIf("csv", "--change", "priorities=carrying");
        string first = Cli.Run(string.Join('\n', People.Lines.Take(9)) + "\n", ["whatif", "-", "--format", "csv", "--change", "priorities=carrying", .. Fast]).Output;

        Assert.Equal(whole, first + WhatIf("csv", "--change", "priorities=carrying", "--resume", "9"));
    }

    [Fact]
    public void Any_number_of_jobs_gives_the_same_bytes() =>
        Assert.Equal(WhatIf("json", "--change", "priorities=carrying", "--jobs", "1"), WhatIf("json", "--change", "priorities=carrying", "--jobs", "3"));

    [Theory]
    [InlineData("priorities=beauty", "beauty is not a priority")]
    [InlineData("priorities=skin,skin", "skin appears twice")]
    [InlineData("priorities=", "Nothing is not a priority")]
    [InlineData("rules=none", "rules=none is not a change")]
    public void A_change_that_is_none_is_told_in_one_sentence(string change, string message)
    {
        var (code, output, error) = Cli.Run(People.Ndjson, "whatif", "-", "--change", change);

        Assert.Equal((2, ""), (code, output));
        Assert.StartsWith(message, error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd('\n').Split('\n'));
    }

    private static string WhatIf(string format, params string[] more)
    {
        var (code, output, error) = Cli.Run(People.Ndjson, ["whatif", "-", "--format", format, .. Fast, .. more]);
        Assert.Equal((0, ""), (code, error));
        return output;
    }

    private static Dictionary<string, string> Firsts(string ndjson, params string[] more) => Cli.Run(ndjson, ["rank", "-", "--format", "ndjson", "--top", "1", .. Fast, .. more]).Output.TrimEnd('\n').Split('\n')
        .Select(l => JsonDocument.Parse(l).RootElement)
        .ToDictionary(
            r => r.GetProperty("person").GetString()!,
            r => r.GetProperty("shortlist").EnumerateArray().Select(p => p.GetProperty("plan").GetProperty("aid").GetString()!).FirstOrDefault(""),
            StringComparer.Ordinal);

    private static string WithPriorities(IEnumerable<string> lines, string order) => string.Concat(lines.Select(line =>
    {
        var node = System.Text.Json.Nodes.JsonNode.Parse(line)!;
        node["sessions"]![0]!["answers"]!["priorities"] = System.Text.Json.Nodes.JsonNode.Parse("{\"value\":" + order + ",\"how\":\"reported\"}");
        return node.ToJsonString() + "\n";
    }));
}
