using System.Text.Json;
using ToiletAid.App.Origins;
using ToiletAid.Core.Evidence;

namespace ToiletAid.Acceptance.Tests.About;

/// <summary>Every number that can change a result says where it comes from.</summary>
public sealed class NumberOriginTests
{
    /// <summary>Members for which one basis at the head of a file is enough, because all of them were found in the same way.</summary>
    private static readonly Dictionary<string, string[]> OfTheWholeFile = new()
    {
        ["aids.json"] = ["hands", "repetitions", "sheets", "folds", "steps", "extraSteps"],
        ["questions.json"] = ["share", "assume", "effort"],
        ["ranges.json"] = ["low", "high"],
        ["teaching.json"] = ["people", "first", "ruledOut", "with", "hitsWith", "without", "hitsWithout"],
    };

    public static TheoryData<string> Files => [.. Directory.EnumerateFiles(Repository.Path("src", "ToiletAid.App", "Knowledge"), "*.json").Select(f => Path.GetFileName(f)).Order()];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_number_has_a_basis_and_a_source(string file)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(Repository.Path("src", "ToiletAid.App", "Knowledge", file)));
        var numbers = DataNumbers.Of(file, document.RootElement).ToList();
        Assert.Empty(numbers.Where(n => n.Basis is null || string.IsNullOrWhiteSpace(n.Source)).Select(n => n.Place));
    }

    [Fact]
    public void One_basis_for_a_whole_file_stands_for_nothing_else_than_was_meant() =>
        Assert.Empty(DataNumbers.All()
            .Where(n => n.File != "people.json") // invented people change no advice, and all of their numbers are estimates
            .Where(n => !n.IsOwn && !OfTheWholeFile.GetValueOrDefault(n.File, []).Contains(n.Place.Split('.')[^1]))
            .Select(n => $"{n.File} {n.Place}"));

    [Fact]
    public void Every_file_is_in_the_program() => Assert.Equal(Files.Select(f => f.Data).Order(), DataNumbers.Files.Order());

    [Theory]
    [InlineData("""{"a":{"value":3,"low":2,"high":4,"basis":"estimate","source":"x"}}""", "a Estimate")]
    [InlineData("""{"a":{"low":2,"high":4,"basis":"decision","source":"x"}}""", "a.low Decision, a.high Decision")]
    [InlineData("""{"a":{"value":3}}""", "a.value none")]
    [InlineData("""{"basis":"published","source":"x","a":[{"id":"b","n":1},{"basis":"estimate","source":"y","n":[2,3]}]}""", "a.b.n Published, a.1.n.0 Estimate, a.1.n.1 Estimate")]
    [InlineData("""{"format":1,"q":{"assume":"1.5","label":"2"}}""", "q.assume none")]
    public void Numbers_are_found_with_the_nearest_basis(string json, string wanted)
    {
        using var document = JsonDocument.Parse(json);
        Assert.Equal(wanted, string.Join(", ", DataNumbers.Of("f", document.RootElement).Select(n => $"{n.Place} {n.Basis?.ToString() ?? "none"}")));
    }

    [Fact]
    public void Nothing_in_the_data_claims_to_have_been_measured() => Assert.DoesNotContain(DataNumbers.All(), n => n.Basis == Basis.Measured);
}
