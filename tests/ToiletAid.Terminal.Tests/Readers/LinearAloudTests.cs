namespace ToiletAid.Terminal.Tests.Readers;

/// <summary>The linear mode by ear.</summary>
public sealed class LinearAloudTests
{
    [Fact]
    public void Each_line_of_a_linear_interview_is_said_once()
    {
        using var aloud = new Reader(Reader.Yasr, "assess --linear");
        string[] wanted = [.. Cli.Run("none\n", "assess", "--linear").Output.Split('\n').TakeWhile(l => !l.StartsWith("None of them.", StringComparison.Ordinal))];
        Assert.Equal(Joined(wanted), Joined(aloud.Start("Numbers, or none:")));
        string after = Joined(aloud.Press("none\r", "2 of "));
        Assert.Contains("None of them.", after, StringComparison.Ordinal);
        Assert.EndsWith("Numbers, or none:", after, StringComparison.Ordinal);
        Assert.Equal("Error: 99 is not a number from 1 to 15 and not a name from the list. Type none for none of them. Not 1 to 15. Numbers:", Joined(aloud.Press("99\r", "Numbers:")).TrimStart('9', ' '));
    }

    /// <summary>From the start to the last page of the text, which is longer than a screen.</summary>
    [Theory]
    [InlineData(Reader.Yasr)]
    [InlineData(Reader.Fenrir)]
    public void Kinds_side_by_side_are_said_once_page_by_page(string reader)
    {
        string wanted = Joined(Cli.Run("", "explain", "tongs", "spray-wash").Output.Split('\n'));
        using var aloud = new Reader(reader, "--linear");
        aloud.Start("Number 1 to 8:");
        string asked = Joined(aloud.Press("Kinds side by side\r", "Numbers:"));
        Assert.Contains("5. Toilet-paper tongs", asked, StringComparison.Ordinal);
        string said = Joined(aloud.Press("5 8\r", Turn(1))), all = string.Empty;
        int pages = 1;
        for (; said.EndsWith(Turn(pages), StringComparison.Ordinal); pages++)
        {
            all += ' ' + said[..^Turn(pages).Length].TrimEnd();
            said = Joined(aloud.Press("\r", ":"));
        }

        all = Joined([all, said]);
        Assert.InRange(pages, 3, 12);
        Assert.Contains(wanted, all, StringComparison.Ordinal);
        Assert.Equal(all.IndexOf(wanted, StringComparison.Ordinal), all.LastIndexOf(wanted[..60], StringComparison.Ordinal));
    }

    private static string Turn(int page) => $"End of page {page}. Enter for more, or stop:";

    private static string Joined(IEnumerable<string> lines) => string.Join(' ', string.Join(' ', lines).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
