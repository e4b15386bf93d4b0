namespace ToiletAid.Acceptance.Tests.Readme;

/// <summary>What the README shows as output is what comes out.</summary>
public sealed class TourTests
{
    private const string Prompt = "    $ toiletaid ";

    public static TheoryData<string> Commands => [.. Tour().Select(t => t.Command)];

    [Theory]
    [MemberData(nameof(Commands))]
    public void The_output_in_the_README_is_what_comes_out(string command)
    {
        string[] shown = Tour().First(t => t.Command == command).Shown;
        var (_, output, error) = Cli.Run(string.Empty, [.. command.Split(' ').Select(w => w.StartsWith("profiles/", StringComparison.Ordinal) ? Path.Combine(DemoPeople.Folder, w["profiles/".Length..]) : w)]);
        Assert.True(error.Length == 0 || command.StartsWith("assess", StringComparison.Ordinal), error);
        string[] said = output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        int at = 0;
        bool gap = false;
        foreach (string line in shown)
        {
            if (line == "...")
            {
                gap = true;
                continue;
            }

            int found = Array.IndexOf(said, line, at);
            Assert.True(found >= 0, $"The README shows a line that does not come out: {line}");
            Assert.True(gap || found == at, $"The README leaves lines out before: {line}");
            (at, gap) = (found + 1, false);
        }

        Assert.True(gap || at == said.Length, "The README leaves out the end.");
    }

    [Fact]
    public void The_tour_shows_four_commands() => Assert.Equal(4, Tour().Count);

    private static List<(string Command, string[] Shown)> Tour()
    {
        string[] lines = File.ReadAllLines(Repository.Path("README.md"));
        var tour = new List<(string, string[])>();
        for (int i = 0; i < lines.Length; i++)
        {
            if (lines[i].StartsWith(Prompt, StringComparison.Ordinal))
            {
                tour.Add((lines[i][Prompt.Length..], [.. lines.Skip(i + 1).TakeWhile(l => l.StartsWith("    ", StringComparison.Ordinal)).Select(l => l[4..])]));
            }
        }

        return tour;
    }
}
