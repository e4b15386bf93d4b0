namespace ToiletAid.Acceptance.Tests.Readers;

/// <summary>The linear mode read as lines; by ear it is in the tests of terminals.</summary>
public sealed class LinearReadingTests
{
    [Fact]
    public void The_words_work_at_any_prompt_and_the_hint_comes_once()
    {
        string output = Cli.Run("none\nrepeat\nback\nlist\nhelp\nnone\nlist\nquit\n", "assess", "--linear").Output;
        Assert.Equal(1, Count(output, "Type help"));
        Assert.Equal((3, 3), (Count(output, "Are any of these signs present?"), Count(output, "Which precautions apply")));
        Assert.Contains("Going back.", output, StringComparison.Ordinal);
        Assert.Contains("No answers yet.", output, StringComparison.Ordinal);
        Assert.Contains("How to find out:", output, StringComparison.Ordinal);
        Assert.Contains("1. Warning signs: none of them", output, StringComparison.Ordinal);
    }

    [Fact]
    public void No_line_of_a_result_is_a_table()
    {
        string output = Cli.Run("none\nnone\nfinish\nunknown\nunknown\nunknown\nunknown\n", "assess", "--linear").Output;
        Assert.All(output.Split('\n'), line => Assert.DoesNotMatch(@"\t|\||   ", line));
    }

    [Fact]
    public void A_saved_profile_needs_no_prompt()
    {
        using var folder = new TempFolder();
        string file = folder.File("k-1.json");
        Assert.Equal(0, Cli.Run("none\nnone\nquit\n", "assess", "--linear", "--save", file, "--person", "K-1").Code);
        var (code, output, error) = Cli.Run(string.Empty, "rank", file);
        Assert.Equal((0, string.Empty), (code, error));
        Assert.Contains("Place 1.", output, StringComparison.Ordinal);
    }

    [Fact]
    public void An_error_reads_the_same_in_both_modes()
    {
        var model = new Model();
        model.Press(Keys.F4);
        foreach (char c in "99")
        {
            model.Press(c.ToString());
        }

        model.Press(Keys.Enter);
        Assert.Contains($"\n{model.Shell.Current.Error}\n", Cli.Run("99\nquit\n", "assess", "--linear").Output.Replace(": Error", ":\nError", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    private static int Count(string text, string part) => text.Split(part).Length - 1;
}
