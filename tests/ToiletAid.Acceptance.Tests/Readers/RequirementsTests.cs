using System.Text.RegularExpressions;
using ToiletAid.TestKit;

namespace ToiletAid.Acceptance.Tests.Readers;

/// <summary>The table of requirements names tests that there are.</summary>
public sealed partial class RequirementsTests
{
    [Fact]
    public void Every_requirement_is_shown_by_a_test_or_a_point_of_the_manual_script()
    {
        string folder = Repository.Path("tests", "ToiletAid.Acceptance.Tests", "Readers");
        string manual = File.ReadAllText(Path.Combine(folder, "ManualScript.md"));
        var tests = typeof(RequirementsTests).Assembly.GetTypes().SelectMany(t => t.GetMethods().Where(IsTest).Select(m => $"{t.Name}.{m.Name}")).ToHashSet();
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

    private static bool IsTest(System.Reflection.MethodInfo method) => method.GetCustomAttributes(inherit: false).Any(a => a is FactAttribute);

    [GeneratedRegex(@"^manual (?<number>\d+)$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Point();
}
