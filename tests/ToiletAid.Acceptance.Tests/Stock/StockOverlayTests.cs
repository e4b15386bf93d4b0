using System.Text.Json;
using System.Text.Json.Nodes;

namespace ToiletAid.Acceptance.Tests.Stock;

public sealed class StockOverlayTests
{
    private const string Nothing = "{\"format\":1,\"aids\":[],\"addOns\":[]}";

    // Two people are enough to see a catalogue change; every other test ranks all of them.
    private static readonly string[] Two = [DemoPeople.File("s-275-breastbone"), DemoPeople.File("v-390-large-build")];

    [Theory]
    [InlineData("json")]
    [InlineData("text")]
    public void An_overlay_of_nothing_changes_nothing(string format)
    {
        using var folder = new TempFolder();

        var plain = Cli.Run("", ["rank", .. Two, "--format", format]);
        var over = Cli.Run("", ["rank", .. Two, "--format", format, "--aids", folder.File("stock.json", Nothing)]);

        Assert.Equal(plain, over);
    }

    [Fact]
    public void An_overlay_of_the_same_changes_nothing()
    {
        using var folder = new TempFolder();
        string same = folder.File("stock.json", Cli.Run("", "aids", "--format", "json").Output);

        Assert.Equal(Cli.Run("", ["rank", .. Two, "--format", "json"]), Cli.Run("", ["rank", .. Two, "--format", "json", "--aids", same]));
    }

    [Fact]
    public void A_replaced_kind_is_used_with_its_own_numbers()
    {
        using var folder = new TempFolder();
        string stock = folder.File("stock.json", WithLength("long-clamp", 0.61));

        var lengths = GivenLengths(stock, "long-clamp");

        Assert.NotEmpty(lengths);
        Assert.All(lengths, length => Assert.Equal(0.61, length, 1e-9));
        Assert.All(GivenLengths(null, "long-clamp"), length => Assert.InRange(length, 0.38 - 1e-9, 0.48 + 1e-9));
    }

    [Fact]
    public void A_new_id_is_one_more_aid_and_takes_nothing_away()
    {
        using var folder = new TempFolder();
        string stock = folder.File("stock.json", WithLength("clinic-handle", 0.42));

        Assert.All(GivenLengths(stock, "clinic-handle"), length => Assert.Equal(0.42, length, 1e-9));
        Assert.NotEmpty(GivenLengths(stock, "clinic-handle"));
        Assert.NotEmpty(GivenLengths(stock, "long-clamp"));
    }

    /// <summary>Measured twice, it stands once in the shortlist, by the name of the better one, and has the share that its kind has alone.</summary>
    [Fact]
    public void Articles_that_were_kept_count_as_one_with_their_kind()
    {
        using var folder = new TempFolder();
        string stock = Path.Combine(folder.Path, "stock.json"), person = DemoPeople.File("k-014-stiff-shoulder");
        foreach (string length in (string[])["length=20", "length=21"])
        {
            Assert.Equal(0, Cli.Run("", "fits", person, "short-soft", length, "--save", stock).Code);
        }

        using var alone = JsonDocument.Parse(Cli.Run("", "rank", person, "--format", "json", "--top", "99").Output);
        using var stocked = JsonDocument.Parse(Cli.Run("", "rank", person, "--format", "json", "--top", "99", "--aids", stock).Output);
        static List<JsonElement> Plans(JsonDocument json) => [.. json.RootElement[0].GetProperty("shortlist").EnumerateArray()];
        static string Aid(JsonElement plan) => plan.GetProperty("plan").GetProperty("aid").GetString()!;

        Assert.Equal("short-soft", Aid(Plans(alone)[0]));
        Assert.Equal("short-soft-2", Aid(Plans(stocked)[0]));
        Assert.Equal(["short-soft-1"], Plans(stocked)[0].GetProperty("alsoFits").EnumerateArray().Select(a => a.GetString()));
        Assert.Single(Plans(stocked), p => Aid(p).StartsWith("short-soft", StringComparison.Ordinal));
        Assert.InRange(Plans(stocked)[0].GetProperty("firstShare").GetDouble(), Plans(alone)[0].GetProperty("firstShare").GetDouble() - 0.02, 1);
        Assert.Contains("Also in stock and possible: short folding holder with soft wide head, article short-soft-1.", Cli.Run("", "rank", person, "--aids", stock).Output, StringComparison.Ordinal);
        Assert.StartsWith("Another of its kind stands for it, in place 1 of ", Cli.Run("", "why", person, "--aid", "short-soft-1", "--aids", stock).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_price_that_the_clinic_sets_is_counted_and_is_no_placeholder_any_more()
    {
        using var folder = new TempFolder();
        const string Price = """{"value":2.5,"unit":"money","basis":"decision","source":"Invoice of March."}""";
        string stock = folder.File("stock.json", $$$"""{"format":1,"aids":[],"addOns":[],"prices":{"roll":{{{Price}}}}}""");
        string dear = folder.File("dear.json", $$$"""{"format":1,"aids":[],"addOns":[],"prices":{"roll":{{{Price.Replace("2.5", "5", StringComparison.Ordinal)}}}}}""");

        var (before, guessed) = PaperByHand(null);
        var (set, still) = PaperByHand(stock);

        Assert.True(guessed);
        Assert.False(still);
        Assert.NotEqual(before, set);
        Assert.Equal(2 * set, PaperByHand(dear).Cost, 0.001);
        Assert.Contains("It sets prices of consumables.", Cli.Run("", "aids", "check", stock).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Paper_that_is_not_folded_is_not_told_to_be_folded()
    {
        using var folder = new TempFolder();
        var file = JsonNode.Parse(Cli.Run("", "aids", "--format", "json").Output)!;
        foreach (var aid in file["aids"]!.AsArray().Where(a => (string?)a!["paper"]?["hold"] == "wrap"))
        {
            aid!["paper"]!["folds"] = 0;
        }

        string output = Cli.Run("", ["rank", DemoPeople.File("k-014-stiff-shoulder"), "--format", "json", "--top", "99", "--aids", folder.File("stock.json", file.ToJsonString())]).Output;

        Assert.Contains("Take 8 sheets in one strip, ", output, StringComparison.Ordinal);
        Assert.DoesNotContain("not at all", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_command_that_advises_on_a_profile_takes_the_stock()
    {
        using var folder = new TempFolder();
        string stock = folder.File("stock.json", WithLength("clinic-handle", 0.42));
        string person = Two[1];

        foreach (string[] command in (string[][])[["why", person, "--aid", "clinic-handle"], ["report", person], ["next", person], ["compare", DemoPeople.File("visits/g-226-sore-hands")]])
        {
            Assert.Equal(0, Cli.Run("", [.. command, "--aids", stock]).Code);
            Assert.Equal(3, Cli.Run("", [.. command, "--aids", folder.File("none.json")]).Code);
        }

        Assert.Contains("clinic-handle is not a kind of aid", Cli.Run("", "why", person, "--aid", "clinic-handle").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_faulty_stock_stops_before_anything_is_ranked_or_asked()
    {
        using var folder = new TempFolder();
        string stock = folder.File("stock.json", StockCheckTests.Changed("aids.0.length.unit", "\"kg\""));

        foreach (string[] command in (string[][])[["rank", DemoPeople.Folder], ["assess"]])
        {
            var (code, output, error) = Cli.Run("none\n", [.. command, "--aids", stock]);
            Assert.Equal((3, ""), (code, output));
            Assert.Contains("kg is not a unit for this", error, StringComparison.Ordinal);
        }
    }

    /// <summary>What a month of the own hand with paper costs, and whether that is a guess.</summary>
    private static (double Cost, bool IsGuess) PaperByHand(string? stock)
    {
        var (code, output, error) = Cli.Run("", ["rank", DemoPeople.File("s-275-breastbone"), "--format", "json", .. stock is null ? (string[])[] : ["--aids", stock]]);
        Assert.Equal((0, ""), (code, error));
        using var document = JsonDocument.Parse(output);
        var plan = document.RootElement[0].GetProperty("shortlist").EnumerateArray().First(p => p.GetProperty("plan").GetProperty("aid").GetString() == "by-hand");
        return (plan.GetProperty("setup").GetProperty("monthlyCost").GetDouble(), plan.GetProperty("setup").GetProperty("monthlyCostIsPlaceholder").GetBoolean());
    }

    private static string WithLength(string id, double metres)
    {
        var file = JsonNode.Parse(StockCheckTests.Changed("aids.0.id", $"\"{id}\""))!;
        file["aids"]![0]!["length"] = JsonNode.Parse(FormattableString.Invariant($$"""{"value":{{metres}},"unit":"m","basis":"measured","source":"Ruler."}"""));
        return file.ToJsonString();
    }

    /// <summary>Lengths that the plans of an aid give, over both people, where a length is needed.</summary>
    private static List<double> GivenLengths(string? stock, string aid)
    {
        var (code, output, error) = Cli.Run("", ["rank", .. Two, "--format", "json", "--top", "99", .. stock is null ? (string[])[] : ["--aids", stock]]);
        Assert.Equal((0, ""), (code, error));
        using var document = JsonDocument.Parse(output);
        return
        [
            .. document.RootElement.EnumerateArray().SelectMany(r => r.GetProperty("shortlist").EnumerateArray())
                .Where(p => p.GetProperty("plan").GetProperty("aid").GetString() == aid && p.GetProperty("plan").GetProperty("companion").ValueKind == JsonValueKind.Null)
                .Where(p => p.GetProperty("setup").TryGetProperty("givenLengthMetres", out _))
                .Select(p => p.GetProperty("setup").GetProperty("givenLengthMetres").GetDouble()),
        ];
    }
}
