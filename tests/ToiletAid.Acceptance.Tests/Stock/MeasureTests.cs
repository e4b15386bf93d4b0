using System.Text.Json;

namespace ToiletAid.Acceptance.Tests.Stock;

public sealed class MeasureTests
{
    // Kind, id, name, shape, length, tip, folded, mass, load, release, price.
    private const string LongClamp = "2\nward-clamp\nGrey handle of ward 3\ncurved\n41 cm\nunknown\n9 in\n250 g\nunknown\n1.5 kg\n32\n";

    [Fact]
    public void A_measured_aid_reads_as_approved()
    {
        var (code, output, error) = Cli.Run("help\n" + LongClamp.Replace("41 cm\n", "help\n4 m\n41 cm\nback\nrepeat\n41.5 cm\nlist\n", StringComparison.Ordinal), "aids", "measure");

        Assert.Equal((0, ""), (code, error));
        Golden.Match(output, "measure.txt");
    }

    [Fact]
    public void The_file_that_is_written_is_good_and_holds_what_was_measured_and_the_rest_of_the_kind()
    {
        using var folder = new TempFolder();
        string file = folder.File("stock.json");

        var (code, output, error) = Cli.Run(LongClamp, "aids", "measure", "--save", file);

        Assert.Equal((0, ""), (code, error));
        Assert.EndsWith($"Saved ward-clamp in {file}. Use it with --aids {file}.\n", output, StringComparison.Ordinal);
        Assert.Equal([file], Directory.GetFiles(folder.Path));
        Assert.Equal(0, Cli.Run("", "aids", "check", file).Code);
        var aid = Assert.Single(Aids(file));
        Assert.Equal("ward-clamp", aid.GetProperty("id").GetString());
        Assert.Equal("Grey handle of ward 3", aid.GetProperty("name").GetString());
        Number(aid.GetProperty("length"), 41, 40.5, 41.5, "cm", "measured", "Measured here with a ruler, 2026-03-09.");
        Number(aid.GetProperty("mass"), 250, 248, 252, "g", "measured", "Measured here with a kitchen scale, 2026-03-09.");
        Assert.Equal("estimate", aid.GetProperty("tipWidth").GetProperty("basis").GetString());
        var release = aid.GetProperty("operations").EnumerateArray().Single(o => o.GetProperty("kind").GetString() == "release").GetProperty("force");
        Number(release, 1.5, 1.35, 1.65, "kgf", "measured", "Measured here with a luggage scale, 2026-03-09.");
        Assert.Equal(32, aid.GetProperty("upkeep").GetProperty("price").GetProperty("value").GetDouble());
    }

    [Fact]
    public void A_second_aid_joins_the_file_and_the_same_id_replaces()
    {
        using var folder = new TempFolder();
        string file = folder.File("stock.json");

        Cli.Run(LongClamp, "aids", "measure", "--save", file);
        Cli.Run(LongClamp.Replace("41 cm", "44 cm", StringComparison.Ordinal), "aids", "measure", "--save", file);
        Cli.Run(LongClamp.Replace("ward-clamp", "other", StringComparison.Ordinal), "aids", "measure", "--save", file);

        Assert.Equal([("ward-clamp", 44.0), ("other", 41.0)], Aids(file).Select(a => (a.GetProperty("id").GetString()!, a.GetProperty("length").GetProperty("value").GetDouble())));
    }

    /// <summary>Editors of Windows begin a file with a byte order mark, which aids check takes.</summary>
    [Fact]
    public void A_file_with_a_byte_order_mark_takes_one_more_aid()
    {
        using var folder = new TempFolder();
        string file = folder.File("stock.json");
        Cli.Run(LongClamp, "aids", "measure", "--save", file);
        File.WriteAllText(file, "\uFEFF" + File.ReadAllText(file));

        var (code, _, error) = Cli.Run(LongClamp.Replace("ward-clamp", "other", StringComparison.Ordinal), "aids", "measure", "--save", file);

        Assert.Equal((0, ""), (code, error));
        Assert.Equal(2, Aids(file).Count);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    [InlineData(9)]
    [InlineData(10)]
    [InlineData(11)]
    [InlineData(12)]
    [InlineData(13)]
    public void Every_kind_can_be_gone_through_with_nothing_measured(int kind)
    {
        using var folder = new TempFolder();
        string file = folder.File("stock.json");

        var (code, _, error) = Cli.Run($"{kind}\n" + string.Concat(Enumerable.Repeat("unknown\n", 20)), "aids", "measure", "--save", file);

        Assert.Equal((0, ""), (code, error));
        Assert.Equal(0, Cli.Run("", "aids", "check", file).Code);
    }

    [Fact]
    public void With_nothing_measured_the_ranking_stays_as_it_is()
    {
        using var folder = new TempFolder();
        string file = folder.File("stock.json");
        Cli.Run("2\n" + string.Concat(Enumerable.Repeat("unknown\n", 20)), "aids", "measure", "--save", file);

        Assert.Equal(
            Cli.Run("", "rank", DemoPeople.File("t-562-weak-grip"), "--format", "csv").Output,
            Cli.Run("", "rank", DemoPeople.File("t-562-weak-grip"), "--format", "csv", "--aids", file).Output);
    }

    /// <summary>The kind's strong flow is 7 millilitres a second; a gentle one of 9 would pass it.</summary>
    [Fact]
    public void A_gentle_flow_above_the_kinds_strong_one_takes_it_along()
    {
        using var folder = new TempFolder();
        string file = folder.File("stock.json");

        // Kind, id, name, shape, length, jet, folded, mass, reservoir, gentle, strong and the rest.
        Cli.Run("8\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\n9 ml/s\n" + string.Concat(Enumerable.Repeat("unknown\n", 9)), "aids", "measure", "--save", file);

        Assert.Equal(0, Cli.Run("", "aids", "check", file).Code);
        Assert.Equal(9, Aids(file)[0].GetProperty("water").GetProperty("strongFlow").GetProperty("value").GetDouble());
    }

    [Theory]
    [InlineData("", 3, "Input ended at question 1. Nothing was saved.")]
    [InlineData("2\nward-clamp\n", 3, "Input ended at question 3. Nothing was saved.")]
    [InlineData("2\nquit\n", 0, "Nothing was saved.")]
    [InlineData("14\nquit\n", 0, "Error: Type a number from 1 to 13.")]
    [InlineData("unknown\nquit\n", 0, "Error: The kind must be chosen. Type its number.")]
    [InlineData("2\nWard Clamp\nquit\n", 0, "Error: An id has lower-case words with hyphens between them and at most 40 letters, such as long-clamp.")]
    [InlineData("2\nx\ny\nbent\nquit\n", 0, "Error: Type straight or curved.")]
    [InlineData("2\nx\ny\ncurved\n41 kg\nquit\n", 0, "Error: 41 kilograms is a weight, but length is a length.")]
    [InlineData("back\nquit\n", 0, "This is the first question.")]
    public void What_cannot_be_taken_is_told_and_nothing_is_saved(string input, int code, string told)
    {
        using var folder = new TempFolder();
        string file = folder.File("stock.json");

        var result = Cli.Run(input, "aids", "measure", "--save", file);

        Assert.Equal(code, result.Code);
        Assert.Contains(told, result.Output, StringComparison.Ordinal);
        Assert.False(File.Exists(file));
    }

    [Fact]
    public void A_faulty_file_is_left_alone_and_nothing_is_asked()
    {
        using var folder = new TempFolder();
        string file = folder.File("stock.json", "{");

        var (code, output, error) = Cli.Run(LongClamp, "aids", "measure", "--save", file);

        Assert.Equal((3, ""), (code, output));
        Assert.Contains("Nothing was asked.", error, StringComparison.Ordinal);
        Assert.Equal("{", File.ReadAllText(file));
    }

    [Fact]
    public void A_folder_that_is_not_there_is_told()
    {
        using var folder = new TempFolder();

        var (code, _, error) = Cli.Run(LongClamp, "aids", "measure", "--save", folder.File("none/stock.json"));

        Assert.Equal(3, code);
        Assert.Contains("stock.json could not be written, its folder does not exist. Nothing was saved.", error, StringComparison.Ordinal);
    }

    private static List<JsonElement> Aids(string file)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(file));
        return [.. document.RootElement.GetProperty("aids").EnumerateArray().Select(a => a.Clone())];
    }

    private static void Number(JsonElement number, double value, double low, double high, string unit, string basis, string source)
    {
        Assert.Equal(value, number.GetProperty("value").GetDouble(), 1e-9);
        Assert.Equal(low, number.GetProperty("low").GetDouble(), 1e-9);
        Assert.Equal(high, number.GetProperty("high").GetDouble(), 1e-9);
        Assert.Equal((unit, basis, source), (number.GetProperty("unit").GetString(), number.GetProperty("basis").GetString(), number.GetProperty("source").GetString()));
    }
}
