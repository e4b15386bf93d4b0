using System.Text.RegularExpressions;

namespace ToiletAid.Acceptance.Tests.Readme;

/// <summary>What the README shows as output is what comes out.</summary>
public sealed partial class TourTests
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
    public void The_tour_shows_five_commands() => Assert.Equal(5, Tour().Count);

    [Fact]
    public void What_a_therapist_reads_first_is_short()
    {
        string text = File.ReadAllText(Repository.Path("README.md"));
        string[] words = text[..text.IndexOf("\n# Reference\n", StringComparison.Ordinal)].Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries);

        Assert.InRange(words.Length, 300, 1200);
    }

    [Fact]
    public void Every_file_that_is_named_exists()
    {
        foreach (Match path in InTheRepository().Matches(File.ReadAllText(Repository.Path("README.md"))))
        {
            string full = Repository.Path(path.Value.TrimEnd('.', ','));
            Assert.True(File.Exists(full) || Directory.Exists(full), $"{path.Value} does not exist");
        }
    }

    /// <summary>Each picture with the command that draws it.</summary>
    [Theory]
    [InlineData("short-soft.svg", "aids --aid short-soft")]
    [InlineData("reach.svg", "calc reach --stature 5_ft_7_in --mass 11_st_4 --shoulder-extension 15 --internal-rotation 20")]
    public void The_pictures_in_the_README_are_what_the_program_draws(string name, string command)
    {
        string path = $"profiles/pictures/{name}";
        using var folder = new TempFolder();
        string drawn = Path.Combine(folder.Path, name);
        var (code, _, error) = Cli.Run(string.Empty, [.. command.Split(' ').Select(w => w.Replace('_', ' ')), "--picture", drawn]);
        var alternative = Regex.Match(File.ReadAllText(Repository.Path("README.md")), $@"!\[([^\]]+)\]\({Regex.Escape(path)}\)", RegexOptions.None, TimeSpan.FromSeconds(1));

        Assert.Equal((0, string.Empty), (code, error));
        Assert.Equal(File.ReadAllText(drawn), File.ReadAllText(Repository.Path(path)));
        Assert.True(alternative.Success, "The README does not show it.");
        Assert.All(alternative.Groups[1].Value.Split(". "), sentence => Assert.Contains(sentence.TrimEnd('.'), File.ReadAllText(drawn), StringComparison.Ordinal));
    }

    [GeneratedRegex(@"(?<![\w/])(profiles|src|tests|\.ci)/[\w./-]+", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex InTheRepository();

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
