using ToiletAidTui.Host;

namespace ToiletAid.Acceptance.Tests.Terminals;

/// <summary>Complaints are wrapped at words where somebody reads them, and are one line each for a script.</summary>
public sealed class ComplaintsTests
{
    private const string Stopped = "\nStopped. The answers are kept in your data folder. Start toiletaid without a file and it offers them.";

    [Theory]
    [InlineData(80)]
    [InlineData(40)]
    public void No_word_is_cut_at_the_edge_of_the_terminal(int width)
    {
        string[] rows = Said(width).Split('\n');

        Assert.All(rows, r => Assert.True(r.Length < width, r));
        Assert.Equal(Stopped.Trim(), string.Join(' ', rows).Trim());
        Assert.Empty(rows[0]);
    }

    [Fact]
    public void A_script_gets_it_in_one_line() => Assert.Equal(Stopped + "\n", Said(0));

    private static string Said(int width)
    {
        using var said = new StringWriter { NewLine = "\n" };
        using var writer = new ReadableWriter(said, width);
        writer.WriteLine(Stopped);
        return said.ToString();
    }
}
