using System.Text.Json;
using Json.Schema;
using ToiletAid.App.Files;

namespace ToiletAid.Acceptance.Tests.Profiles;

public sealed class SchemaTests
{
    private static readonly string Stored = Repository.Path("profiles", "schema", "profile.schema.json");

    [Fact]
    public void The_stored_schema_is_the_one_made_from_the_questions() =>
        Assert.Equal(File.ReadAllText(Stored), Cli.Run("", "questions", "--format", "schema").Output);

    [Theory]
    [MemberData(nameof(DemoPeople.Names), MemberType = typeof(DemoPeople))]
    public void A_demo_profile_fits_the_schema(string name) => Assert.True(Fits(File.ReadAllText(DemoPeople.File(name))));

    [Theory]
    [InlineData("\"K-014\"", "\"Anna\"")]
    [InlineData("\"whole-hand\"", "\"wholehand\"")]
    [InlineData("\"grasp\"", "\"gras\"")]
    [InlineData("\"quick\"", "\"deep\"")]
    public void What_the_reader_refuses_the_schema_refuses_too(string from, string to)
    {
        const string good = """{"format":1,"person":"K-014","sessions":[{"date":"2026-03-09","depth":"quick","answers":{"grasp":{"value":"whole-hand","how":"observed"}}}]}""";
        string bad = good.Replace(from, to, StringComparison.Ordinal);

        Assert.True(Fits(good));
        Assert.False(Fits(bad));
        Assert.Null(new ProfileReader(BuiltIn.Questions()).Read(System.Text.Encoding.UTF8.GetBytes(bad)).Value);
    }

    [Fact]
    public void There_are_at_least_eight_demo_people() => Assert.InRange(DemoPeople.Names.Count, 8, int.MaxValue);

    private static bool Fits(string profile)
    {
        using var document = JsonDocument.Parse(profile);
        return JsonSchema.FromText(File.ReadAllText(Stored)).Evaluate(document.RootElement).IsValid;
    }
}
