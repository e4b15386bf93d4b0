using ToiletAidTui.Commands;
using ToiletAidTui.Commands.Help;
using ToiletAidTui.Host;

namespace ToiletAid.Acceptance.Tests.Help;

/// <summary>The manual page.</summary>
public sealed class ManualTests
{
    [Fact]
    public async Task The_page_is_without_fault()
    {
        Tools.Need("mandoc");
        var (code, output, _) = await Batch.Tool.Run(Page(), "mandoc", "-T", "lint", "-W", "all");
        Assert.Equal(string.Empty, output);
        Assert.Equal(0, code);
    }

    [Fact]
    public async Task Set_for_a_terminal_it_says_what_help_says()
    {
        Tools.Need("mandoc", "col");
        var (_, set, _) = await Batch.Tool.Run(Page(), "mandoc", "-T", "utf8", "-O", "width=500");
        var (_, plain, _) = await Batch.Tool.Run(set, "col", "-b", "-x");
        string[] lines = [.. plain.Split('\n').Select(l => string.Join(' ', l.Split(' ', StringSplitOptions.RemoveEmptyEntries)))];
        string whole = string.Join(' ', lines);
        foreach (var page in HelpPage.All(CliHost.Root(new() { Input = Stream.Null, Output = TextWriter.Null, Error = TextWriter.Null })))
        {
            Assert.Contains(page.IsRoot ? "NAME" : page.Name, lines);
            Assert.All(page.Examples, e => Assert.Contains(e.Line, lines));
            Assert.All(page.Options, o => Assert.Contains(string.Join(' ', HelpPage.Meaning(o).Split(' ', StringSplitOptions.RemoveEmptyEntries)), whole, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void As_text_it_has_every_page_and_the_meaning_of_each_variable()
    {
        string text = Cli.Run("", "man", "--format", "text").Output;
        Assert.Contains(Cli.Run("", "rank", "--help").Output, text, StringComparison.Ordinal);
        Assert.All(EnvironmentVariables.All, v => Assert.Contains($"\n{v.Name}: {v.Meaning}\n", text, StringComparison.Ordinal));
    }

    private static string Page() => Cli.Run("", "man").Output;
}
