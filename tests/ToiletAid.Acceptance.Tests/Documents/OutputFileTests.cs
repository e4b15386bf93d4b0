using ToiletAidTui.Host;

namespace ToiletAid.Acceptance.Tests.Documents;

/// <summary>A file that is asked for beside the result and cannot be written.</summary>
public sealed class OutputFileTests
{
    private static readonly string Profile = Repository.Path("profiles", "k-014-stiff-shoulder.json");
    private static readonly string Visits = Repository.Path("profiles", "visits", "a-512-thawing-shoulder.json");

    public static TheoryData<string, string[]> Commands => new()
    {
        { "report", ["report", Profile, "--out"] },
        { "compare", ["compare", Visits, "--picture"] },
        { "aids", ["aids", "--aid", "tongs", "--picture"] },
        { "whatif", ["whatif", Profile, "--change", "priorities=skin", "--quiet", "--draws", "2", "--samples", "10", "--picture"] },
        { "reach", ["calc", "reach", "--stature", "170cm", "--draws", "2", "--picture"] },
    };

    [Theory]
    [MemberData(nameof(Commands))]
    public void Is_told_in_one_sentence(string name, string[] args)
    {
        string nowhere = Path.Combine(Path.GetTempPath(), "toiletaid-no-such-folder", "out.svg");
        foreach (var (path, wanted) in new[] { (nowhere, $"{nowhere} could not be written, "), (string.Empty, "The file could not be written, that is not a file name.") })
        {
            var (code, _, error) = Cli.Run("", [.. args, path]);
            Assert.Equal(name == "reach" ? ExitCode.WrongUsage : ExitCode.InputRefused, code);
            Assert.Contains(wanted, error, StringComparison.Ordinal);
            Assert.Single(error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        }
    }
}
