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

    private static string Joined(IEnumerable<string> lines) => string.Join(' ', string.Join(' ', lines).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
