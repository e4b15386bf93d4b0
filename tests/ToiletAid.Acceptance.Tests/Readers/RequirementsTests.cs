using System.Text.RegularExpressions;

namespace ToiletAid.Acceptance.Tests.Readers;

/// <summary>The table of requirements names tests that there are.</summary>
public sealed partial class RequirementsTests
{
    [Fact]
    public void Every_requirement_is_shown_by_a_test_or_a_point_of_the_manual_script()
    {
        string folder = Repository.Path("tests", "ToiletAid.Acceptance.Tests", "Readers");
        string manual = File.ReadAllText(Path.Combine(folder, "ManualScript.md"));
        var tests = Directory.GetFiles(Repository.Path("tests"), "*Tests.cs", SearchOption.AllDirectories).SelectMany(TestsOf).ToHashSet();
        var rows = File.ReadLines(Path.Combine(folder, "Requirements.md")).Where(l => l.StartsWith("| R", StringComparison.Ordinal)).Select(l => l.Split('|', StringSplitOptions.TrimEntries)).ToList();
        Assert.Equal(Enumerable.Range(1, 34).Select(i => $"R{i}"), rows.Select(r => r[1]));
        Assert.All(rows.SelectMany(r => r[3].Split(", ")), name =>
        {
            if (Point().Match(name) is { Success: true } point)
            {
                Assert.Contains($"\n{point.Groups["number"].Value}. ", manual, StringComparison.Ordinal);
                return;
            }

            Assert.Contains(name, tests);
        });
    }

    /// <summary>Read from the source, since half of them are in a project that this one does not see.</summary>
    private static IEnumerable<string> TestsOf(string file) =>
        Test().Matches(File.ReadAllText(file)).Select(m => $"{Path.GetFileNameWithoutExtension(file)}.{m.Groups["name"].Value}");

    [GeneratedRegex(@"\[(?:Fact|Theory)\b[^\]]*\](?:\s*\[(?:[^""\]]|""(?:[^""\\]|\\.)*"")*\])*\s*public (?:async )?(?:void|Task) (?<name>\w+)\(", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Test();

    [GeneratedRegex(@"^manual (?<number>\d+)$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Point();
}
