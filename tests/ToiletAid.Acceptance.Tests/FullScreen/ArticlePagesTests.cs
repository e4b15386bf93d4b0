namespace ToiletAid.Acceptance.Tests.FullScreen;

/// <summary>What the screens say of articles is what the commands say.</summary>
public sealed class ArticlePagesTests
{
    private static readonly string Person = DemoPeople.File("k-014-stiff-shoulder");

    [Fact]
    public void What_to_look_for_is_on_the_result_page()
    {
        var model = Hands.Opened(Person);
        model.Choose("Result of the latest visit");
        model.Choose("What to look for in a shop");

        Assert.Equal(Hands.Split(Cli.Run("", "look-for", Person).Output), model.Shell.Lines.Skip(1));
    }

    [Fact]
    public void An_article_is_asked_about_and_kept()
    {
        using var folder = new TempFolder();
        string stock = folder.File("stock.json");
        var model = Hands.Opened(Person);
        model.Choose("Result of the latest visit");
        model.Choose("Is this article right");
        model.Choose("Short folding holder with soft wide head");
        Assert.Equal("article", model.Shell.Current.Name);
        model.Type("long");
        Assert.Contains("That is not a number", model.Shell.Current.Error, StringComparison.Ordinal);
        model.Type("12");
        string[] said = Hands.Split(Cli.Run("", "fits", Person, "short-soft", "length=12").Output);
        Assert.Equal(said, model.Shell.Lines.Take(said.Length));

        model.Choose("Keep it in the clinic's stock");
        model.Type(stock);
        Assert.StartsWith($"Saved short-soft-1 in {stock}.", model.Shell.Opening, StringComparison.Ordinal);
        Assert.Equal(0, Cli.Run("", "aids", "check", stock).Code);
    }

    [Fact]
    public void Where_a_red_flag_stops_everything_no_article_is_asked_about()
    {
        var model = Hands.Opened(DemoPeople.File("w-701-red-flag"));
        model.Choose("Result of the latest visit");
        model.Choose("Is this article right");

        Assert.Contains("No aid is recommended today, so no article is either.", model.Shell.Lines);
    }
}
