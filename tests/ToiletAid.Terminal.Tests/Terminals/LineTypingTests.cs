namespace ToiletAid.Terminal.Tests.Terminals;

/// <summary>Typing in linear mode on a real terminal: keys that edit or act leave no strange characters behind.</summary>
public sealed class LineTypingTests : IDisposable
{
    private readonly Home _home = new();

    public void Dispose() => _home.Dispose();

    [Fact]
    public void Backspace_arrows_and_control_keys_leave_nothing_in_the_answer()
    {
        using var terminal = Run();
        string before = terminal.Stty();
        terminal.Until("none: ");
        terminal.Send("nx\u007f" + Keys.Up + Keys.Home + "on\u0007");
        terminal.Until("none: ");
        Assert.Contains("How to find out", terminal.All, StringComparison.Ordinal);
        terminal.Send("noneé\u007f\n");
        terminal.Until("None of them.");
        terminal.Send("quit\n");
        Assert.Equal(0, terminal.Exit());
        Assert.Equal(before, terminal.Stty());
        Assert.DoesNotContain("\u001b[6n", terminal.All, StringComparison.Ordinal);
        Assert.DoesNotContain("^[", terminal.All, StringComparison.Ordinal);
    }

    [Fact]
    public void F2_goes_to_the_full_screen_at_once_and_back()
    {
        using var terminal = Run();
        terminal.Until("none: ");
        terminal.Send("no" + Keys.F2);
        terminal.Until("Numbers, or none:");
        Assert.Contains("Full screen. F2 or Control P: linear.", terminal.All, StringComparison.Ordinal);
        terminal.Send(Keys.F2);
        terminal.Until("none: ");
        terminal.Send("none\n");
        terminal.Until("None of them.");
    }

    [Fact]
    public void One_key_is_an_answer_where_that_is_set()
    {
        using var terminal = new PtySession([BuiltProgram.Path, "assess", "--linear", "red-flags=none", "precautions=none", "conditions=none"], _home.Environment(("TOILETAID_ONE_KEY", "yes")));
        terminal.Until("Number 1 to ");
        terminal.Send("1");
        terminal.Until("Seated.");
    }

    [Fact]
    public void Hide_leaves_nothing_on_the_terminal_and_save_comes_back_to_the_question()
    {
        using var terminal = Run();
        terminal.Until("none: ");
        terminal.Send("none\n");
        terminal.Until("none: ");
        terminal.Send("hide\n");
        terminal.Until("Enter shows it again.");
        Assert.Contains("\u001b[3J", terminal.All, StringComparison.Ordinal);
        terminal.Send("\n");
        terminal.Until("none: ");
        terminal.Send("save\n");
        terminal.Until("Code, such as K-014: ");
        terminal.Send("Jane Smith\n");
        terminal.Until("Not taken. Code: ");
        terminal.Send("K-7\n");
        terminal.Until("saves K-7 in your own folder.");
        terminal.Send("\n");
        terminal.Until("none: ");
        Assert.Contains("Saved as K-7", terminal.All, StringComparison.Ordinal);
        terminal.Send("quit\n");
        Assert.Equal(0, terminal.Exit());
    }

    [Theory]
    [InlineData("k", true)]
    [InlineData("K", true)]
    [InlineData("", false)]
    [InlineData("x", false)]
    public void K_keeps_an_article_in_the_stock_and_nothing_else_does(string key, bool isKept)
    {
        string stock = Path.Combine(_home.Path, "stock.json");
        using var terminal = new PtySession([BuiltProgram.Path, "fits", DemoPeople.File("k-014-stiff-shoulder"), "short-soft", "--save", stock], _home.Environment());
        terminal.Until("Centimetres, or unknown: ");
        terminal.Send("20\n");
        terminal.Until("K keeps it in ");
        Assert.False(File.Exists(stock));
        terminal.Send(key + "\n");
        terminal.Until(isKept ? "Saved short-soft-1 in " : "Nothing was saved.");
        Assert.Equal(0, terminal.Exit());
        Assert.Equal(isKept, File.Exists(stock));
    }

    private PtySession Run() => new([BuiltProgram.Path, "assess", "--linear"], _home.Environment());
}
