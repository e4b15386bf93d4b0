namespace ToiletAid.Acceptance.Tests.FullScreen;

/// <summary>A hidden screen opens with Enter, a locked one with the passphrase only.</summary>
public sealed class CurtainTests
{
    private const string Right = "four quiet otters swim";

    [Fact]
    public void Without_a_passphrase_enter_opens_it()
    {
        var model = new Model(depth: null);
        var before = model.Shell.Lines;
        model.Press(Keys.F12);
        Assert.Equal("The screen is hidden. Enter shows it again.", Squeezed(model));
        model.Press("1");
        Assert.True(model.Shell.IsHidden);
        model.Press(Keys.Enter);
        Assert.Equal(before, model.Shell.Lines);
        Assert.StartsWith("Number 1 to", model.Answer, StringComparison.Ordinal);
    }

    [Fact]
    public void With_a_passphrase_nothing_else_opens_it_and_nothing_typed_is_shown()
    {
        var model = new Model(depth: null, passphrase: Right);
        model.Press(Keys.F12);
        Assert.Equal("The screen is locked. Passphrase, then Enter:", Squeezed(model));
        foreach (string wrong in (string[])[string.Empty, "otters", Right + " ", Right[..^1]])
        {
            Assert.False(Type(model, wrong));
            Assert.DoesNotContain("otters", Squeezed(model), StringComparison.Ordinal);
            Assert.True(model.Press(Keys.Enter));
            Assert.True(model.Shell.IsHidden);
            Assert.Equal("That is not the passphrase. The screen is locked. Passphrase, then Enter:", Squeezed(model));
        }

        Type(model, Right + "x");
        model.Press(Keys.Backspace);
        Assert.DoesNotContain("otters", Squeezed(model), StringComparison.Ordinal);
        model.Press(Keys.Enter);
        Assert.False(model.Shell.IsHidden);
    }

    [Fact]
    public void A_locked_screen_asks_anew_each_time()
    {
        var model = new Model(depth: null, passphrase: Right);
        model.Press(Keys.F12);
        Type(model, Right);
        model.Press(Keys.Enter);
        model.Press(Keys.F12);
        model.Press(Keys.Enter);
        Assert.True(model.Shell.IsHidden);
    }

    /// <summary>Types; true when anything was to be said.</summary>
    private static bool Type(Model model, string text) => text.Aggregate(false, (said, c) => model.Press(c.ToString()) || said);

    private static string Squeezed(Model model) => string.Join(' ', model.Whole.Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
