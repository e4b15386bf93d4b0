using System.Text.Json;
using ToiletAid.App.Articles;
using ToiletAid.App.Files;
using ToiletAid.App.Stock;
using ToiletAid.Core.Fitting;

namespace ToiletAid.Acceptance.Tests.Articles;

public sealed class FitsTests
{
    private static readonly DateOnly Day = new(2026, 3, 9);

    /// <summary>Given by the command, and nobody to ask.</summary>
    [Fact]
    public void The_verdict_is_said_first_and_then_how_or_why_not()
    {
        string[][] cases =
        [
            ["k-014-stiff-shoulder", "short-soft", "length=20", "tip-width=4"],
            ["k-014-stiff-shoulder", "short-soft", "length=12"],
            ["k-014-stiff-shoulder", "short-soft", "length=unknown"],
            ["r-033-cord-injury", "long-clamp", "length=32", "takes-hand-cuff=yes", "release-without-grip=yes"],
            ["r-033-cord-injury", "long-clamp", "length=32"],
            ["m-207-one-hand", "short-soft", "one-hand-load=no"],
            ["t-562-weak-grip", "tongs", "free-of-nickel=no", "length=8 in", "load-force=2 kgf"],
            ["w-701-red-flag", "tongs", "length=20"],
        ];
        var lines = new List<string>();
        foreach (string[] words in cases)
        {
            var (code, output, error) = Cli.Run("", ["fits", DemoPeople.File(words[0]), .. words[1..]]);
            Assert.Equal((0, string.Empty), (code, error));
            lines.Add($"== {string.Join(' ', words)}\n{output}");
        }

        Golden.Match(string.Join('\n', lines), "fits.txt");
    }

    [Fact]
    public void What_matters_is_asked_until_the_verdict_is_certain()
    {
        var (code, output, _) = Cli.Run("help\n1\nhelp\n12\n", "fits", DemoPeople.File("k-014-stiff-shoulder"));

        Assert.Equal(0, code);
        Golden.Match(output, "fits-asked.txt");
    }

    [Fact]
    public void Going_back_asks_again_and_quit_saves_nothing()
    {
        string output = Cli.Run("short-soft\nback\ntongs\nquit\n", "fits", DemoPeople.File("k-014-stiff-shoulder")).Output;

        Assert.Equal(2, output.Split("Which kind does it resemble most?").Length - 1);
        Assert.Contains("Kind: toilet-paper tongs.", output, StringComparison.Ordinal);
        Assert.EndsWith("Nothing was saved.\n", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Toilet-paper tongs", "Kind: toilet-paper tongs.")]
    [InlineData("toilet-paper", "Kind: toilet-paper tongs.")]
    [InlineData("TONGS", "Kind: toilet-paper tongs.")]
    [InlineData("curved", "Error: Type the number of a kind, 1 to ")]
    [InlineData("", "Error: Type the number of a kind, 1 to ")]
    public void A_kind_is_taken_by_its_name_or_by_the_only_one_that_begins_so(string typed, string said) =>
        Assert.Contains(said, Cli.Run($"{typed}\n", "fits", DemoPeople.File("k-014-stiff-shoulder")).Output, StringComparison.Ordinal);

    [Fact]
    public void Input_that_ends_after_the_kind_gives_the_verdict_as_far_as_it_goes() =>
        Assert.Contains("Not certain. If the rest is as usual in its kind, it fits.", Cli.Run("short-soft\n", "fits", DemoPeople.File("k-014-stiff-shoulder")).Output, StringComparison.Ordinal);

    [Theory]
    [InlineData("shart is not a kind that is bought, use one of ", "shart")]
    [InlineData("by-hand is not a kind that is bought, use one of ", "by-hand")]
    [InlineData("tongs is a second kind, give one, ", "short-soft", "tongs")]
    [InlineData("The kind must come first, such as short-soft length=16.", "length=16")]
    [InlineData("colour is nothing that this kind has, use one of length, ", "short-soft", "colour=red")]
    [InlineData("length: That is not a number with a unit.", "short-soft", "length=long")]
    [InlineData("curved: Type yes or no.", "short-soft", "curved=a-bit")]
    [InlineData("Name the kind that it resembles, such as short-soft.", "--format", "json")]
    public void What_cannot_be_taken_is_refused_in_one_sentence(string sentence, params string[] words)
    {
        var (code, output, error) = Cli.Run("", ["fits", DemoPeople.File("k-014-stiff-shoulder"), .. words]);

        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.StartsWith(sentence, error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_comes_as_data()
    {
        using var json = JsonDocument.Parse(Cli.Run("", "fits", DemoPeople.File("k-014-stiff-shoulder"), "short-soft", "length=12", "--format", "json").Output);

        Assert.Equal("does-not-fit", json.RootElement.GetProperty("verdict").GetString());
        Assert.True(json.RootElement.GetProperty("certain").GetBoolean());
        Assert.Equal("length", json.RootElement.GetProperty("wouldFit")[0].GetProperty("trait").GetString());
        Assert.Equal(["length"], json.RootElement.GetProperty("known").EnumerateArray().Select(k => k.GetString()));
    }

    [Theory]
    [InlineData("18", true)]
    [InlineData("22", false)]
    public void Where_it_works_for_fewer_than_most_that_is_said(string centimetres, bool isSaid) =>
        Assert.Equal(isSaid, Cli.Run("", "fits", DemoPeople.File("k-014-stiff-shoulder"), "short-soft", $"length={centimetres}").Output.Contains(", so this is not sure.", StringComparison.Ordinal));

    [Fact]
    public void A_red_flag_stops_it() =>
        Assert.StartsWith("Stop. No aid is recommended today.", Cli.Run("", "fits", DemoPeople.File("w-701-red-flag")).Output, StringComparison.Ordinal);

    [Fact]
    public void It_is_kept_in_the_clinics_stock_under_an_id_of_its_own()
    {
        using var folder = new TempFolder();
        string stock = Path.Combine(folder.Path, "stock.json");
        foreach (string id in (string[])["short-soft-1", "short-soft-2"])
        {
            string output = Cli.Run("", "fits", DemoPeople.File("k-014-stiff-shoulder"), "short-soft", "length=16.5", "--save", stock).Output;
            Assert.Contains($"Saved {id} in {stock}. Use it with --aids {stock}.", output, StringComparison.Ordinal);
        }

        Assert.Equal(0, Cli.Run("", "aids", "check", stock).Code);
        Assert.Contains("short-soft-2", Cli.Run("", "aids", "--aids", stock).Output, StringComparison.Ordinal);
        Assert.Equal(3, Cli.Run("", "fits", DemoPeople.File("k-014-stiff-shoulder"), "short-soft", "length=16.5", "--save", folder.Path).Code);
    }

    /// <summary>Everything that can be found out, set the other way from the kind, comes back out of the file.</summary>
    [Fact]
    public void The_stock_file_holds_what_was_found_out()
    {
        var knowledge = BuiltIn.Knowledge();
        foreach (var kind in ArticleInterview.Kinds(knowledge))
        {
            var traits = ArticleTrait.All(kind, knowledge.Catalogue.AddOns.RemoveAll(a => !kind.AddOns.Contains(a.Id)));
            var facts = traits.Aggregate(new ArticleFacts(kind), (f, t) => t.IsNumber ? f.With(t, t.Number(kind)!.High) : f.With(t, !t.Has(kind)!.Value));
            using var folder = new TempFolder();
            string stock = Path.Combine(folder.Path, "stock.json");
            var (id, issues) = ArticleStock.Keep(stock, facts, Day);
            Assert.Empty(issues);
            var read = new StockReader(BuiltIn.Aids()).ReadFile(stock).Value!.Catalogue.Aids.Single(a => a.Id == id);
            Assert.All(traits, t =>
            {
                if (t.IsNumber)
                {
                    Assert.Equal(facts.Numbers[t], t.Number(read)!.Value, 1e-6);
                }
                else
                {
                    Assert.Equal(facts.Features[t], t.Has(read));
                }
            });
        }
    }
}
