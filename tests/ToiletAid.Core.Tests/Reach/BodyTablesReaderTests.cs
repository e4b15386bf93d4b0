using System.Text;
using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Tests.Reach;

public sealed class BodyTablesReaderTests
{
    private const string Empty = """{ "format": 1, "regressions": [], "numbers": [] }""";

    [Fact]
    public void Every_number_says_where_it_comes_from()
    {
        foreach (string id in ReachPeople.Tables.Numbers.Ids)
        {
            Sourced number = ReachPeople.Tables.Numbers[id];
            Assert.False(string.IsNullOrWhiteSpace(number.Source), id);
            Assert.InRange(number.Value, number.Low, number.High);
        }

        Assert.All(ReachPeople.Tables.Regressions, r => Assert.Contains("ANSUR II", r.Source, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_number_is_needed_and_missed_at_once()
    {
        NumberTable table = ReachPeople.Tables.Numbers;
        foreach (string id in table.Ids)
        {
            var without = new NumberTable(table.Ids.Where(i => i != id).Select(i => KeyValuePair.Create(i, table[i])));
            Assert.Throws<KeyNotFoundException>(() => new BodyTables(ReachPeople.Tables.Regressions, without));
        }
    }

    [Theory]
    [InlineData("""{ "format": 1, "regressions": [], "numbers": [], "extra": 1 }""", "extra")]
    [InlineData("""{ "format": 2, "regressions": [], "numbers": [] }""", "format 2")]
    [InlineData("""{ "format": 1, "regressions": [] }""", "numbers")]
    [InlineData("""{ "format": 1, "regressions": [], "numbers": [{ "id": "a", "value": 1, "unit": "furlong", "basis": "estimate", "source": "x" }] }""", "furlong")]
    [InlineData("""{ "format": 1, "regressions": [], "numbers": [{ "id": "a", "value": 1, "unit": "m", "basis": "guess", "source": "x" }] }""", "basis")]
    [InlineData("""{ "format": 1, "regressions": [], "numbers": [{ "id": "a", "value": 1, "unit": "m", "basis": 2, "source": "x" }] }""", "basis")]
    [InlineData(Empty, "no regression")]
    public void A_file_that_cannot_be_right_is_refused_and_says_why(string json, string says)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(json));
        JsonException refused = Assert.Throws<JsonException>(() => BodyTablesReader.Read(stream));
        Assert.Contains(says, refused.Message, StringComparison.Ordinal);
    }
}
