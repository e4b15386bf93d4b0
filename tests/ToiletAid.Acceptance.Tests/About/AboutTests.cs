using System.Text.Json.Nodes;
using ToiletAidTui.Host;

namespace ToiletAid.Acceptance.Tests.About;

/// <summary>What the program tells about itself.</summary>
public sealed class AboutTests
{
    [Fact]
    public void The_libraries_are_those_that_are_shipped()
    {
        var deps = JsonNode.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "toiletaid.deps.json")))!;
        var shipped = deps["targets"]![".NETCoreApp,Version=v10.0"]!.AsObject()
            .Where(l => l.Value!["runtime"] is not null && (string)deps["libraries"]![l.Key]!["type"]! == "package")
            .Select(l => l.Key.Replace('/', ' ')).Order();
        var told = Json()["libraries"]!.AsArray().Select(l => $"{l!["name"]} {l["version"]}").Where(l => !l.StartsWith("Microsoft.NETCore.App ", StringComparison.Ordinal)).Order();
        Assert.Equal(shipped, told);
    }

    [Fact]
    public void Every_library_has_its_licence_in_full()
    {
        var (code, notices, _) = Cli.Run("", "about", "--notices");
        Assert.Equal(ExitCode.Good, code);
        Assert.All(Json()["libraries"]!.AsArray(), l =>
        {
            string at = $"\n{l!["name"]} {l["version"]}, {l["licence"]}.\n";
            int from = notices.IndexOf(at, StringComparison.Ordinal);
            Assert.True(from > 0, at);
            Assert.Contains("AS IS", notices[from..Math.Min(notices.Length, from + 2000)], StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Numbers_are_counted_from_the_data()
    {
        var numbers = Json()["numbers"]!;
        var evidence = JsonNode.Parse(File.ReadAllText(Repository.Path("src", "ToiletAid.App", "Knowledge", "evidence.json")))!["numbers"]!.AsObject();
        var told = numbers["files"]!.AsArray().Single(f => (string)f!["file"]! == "evidence.json")!;
        Assert.Equal(evidence.Count, (int)told["all"]!);
        Assert.All(told["byBasis"]!.AsObject(), b => Assert.Equal(evidence.Count(e => (string)e.Value!["basis"]! == b.Key), (int)b.Value!));
        Assert.Equal((int)numbers["all"]!, numbers["files"]!.AsArray().Sum(f => (int)f!["all"]!));
        Assert.Equal((int)numbers["all"]!, numbers["byBasis"]!.AsObject().Sum(b => (int)b.Value!));
        Assert.Equal((int)numbers["all"]!, Json()["sources"]!.AsArray().Sum(s => (int)s!["numbers"]!));
    }

    [Fact]
    public void The_text_says_the_same_as_the_json()
    {
        var (code, text, error) = Cli.Run("", "about", "--sources");
        Assert.Equal(ExitCode.Good, code);
        Assert.Empty(error);
        var json = Json();
        var by = json["numbers"]!["byBasis"]!;
        string[] lines = text.Split('\n');
        Assert.Contains($"Numbers in the data: {json["numbers"]!["all"]}.", lines);
        Assert.Contains($"Published: {by["published"]}.", lines);
        Assert.Contains($"Common practice: {by["common-practice"]}.", lines);
        Assert.Contains($"Estimates, to be measured: {by["estimate"]}.", lines);
        Assert.Contains($"From memory, to be verified: {by["from-memory"]}.", lines);
        Assert.Contains($"Decisions of this project: {by["decision"]}.", lines);
        Assert.Contains($"Made with {json["libraries"]!.AsArray().Count} libraries.", lines);
        Assert.Equal(json["sources"]!.AsArray().Count(s => (string)s!["basis"]! is "published" or "from-memory"), lines.Count(l => l.StartsWith("Published, ", StringComparison.Ordinal) || l.StartsWith("From memory, to be verified, ", StringComparison.Ordinal)));
    }

    private static JsonNode Json()
    {
        var (code, output, _) = Cli.Run("", "about", "--format", "json");
        Assert.Equal(ExitCode.Good, code);
        return JsonNode.Parse(output)!;
    }
}
