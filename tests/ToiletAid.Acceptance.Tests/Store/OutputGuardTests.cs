
namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>No file that a command was asked to write takes the place of a profile, of a clinic's aids or of what the command reads.</summary>
public sealed class OutputGuardTests : IDisposable
{
    private static readonly string Demo = Repository.Path("profiles", "k-014-stiff-shoulder.json");
    private static readonly string Visits = Repository.Path("profiles", "visits", "a-512-thawing-shoulder.json");

    private readonly TempFolder _folder = new();
    private readonly string _profile;
    private readonly string _other;

    public OutputGuardTests()
    {
        _profile = _folder.File("K-014.json", File.ReadAllText(Demo));
        _other = _folder.File("M-207.json", File.ReadAllText(Repository.Path("profiles", "m-207-one-hand.json")));
    }

    public void Dispose() => _folder.Dispose();

    /// <summary>Every way to ask for a file; the file comes last.</summary>
    public static TheoryData<string, string[]> Ways => new()
    {
        { "report", ["report", "PROFILE", "--out"] },
        { "compare", ["compare", Visits, "--picture"] },
        { "whatif", ["whatif", "PROFILE", "--change", "priorities=skin", "--quiet", "--draws", "2", "--samples", "10", "--picture"] },
        { "reach", ["calc", "reach", "--stature", "170cm", "--draws", "2", "--picture"] },
        { "rank", ["rank", "PROFILE", "--quiet", "--draws", "2", "--samples", "10", "--rejects"] },
    };

    [Theory]
    [MemberData(nameof(Ways))]
    public void Its_own_input_another_profile_their_links_and_the_clinics_aids_stay_as_they_are(string name, string[] way)
    {
        string soft = _folder.File("soft.svg"), hard = _folder.File("hard.svg"), gone = _folder.File("damaged.json", File.ReadAllText(Demo)[..200]);
        File.CreateSymbolicLink(soft, _profile);
        OutsideTool.Run("ln", "", _other, hard);
        string stock = _folder.File("stock.json", Cli.Run("", "aids", "--format", "json").Output);
        string people = _folder.File("people.ndjson", Cli.Run("", "simulate", "--people", "2").Output);
        foreach (string target in (string[])[_profile, _other, soft, hard, gone, stock, people])
        {
            string before = File.ReadAllText(target);

            var (code, _, error) = Cli.Run("", [.. way.Select(w => w == "PROFILE" ? _profile : w), target]);

            Assert.True(code is 2 or 3, $"{name} gave {code} for {target}");
            Assert.Contains("so nothing was written to it", error, StringComparison.Ordinal);
            Assert.Equal(before, File.ReadAllText(target));
        }
    }

    [Fact]
    public void A_file_with_a_passphrase_is_no_output()
    {
        string secret = _folder.File("secret", "four quiet otters swim\n");

        Assert.Equal(3, Cli.Run("", "report", _profile, "--passphrase-file", secret, "--out", secret).Code);

        Assert.Equal("four quiet otters swim\n", File.ReadAllText(secret));
    }

    [Fact]
    public void A_list_of_refused_profiles_takes_the_place_of_another_and_of_nothing_else()
    {
        string rejects = _folder.File("rejects.ndjson"), letter = _folder.File("letter.txt", "Dear Sir");

        Assert.Equal(3, Cli.Run("{\n", "rank", "-", "--rejects", rejects).Code);
        Assert.Equal(3, Cli.Run("{\n{\n", "rank", "-", "--rejects", rejects).Code);
        Assert.Equal(2, File.ReadAllLines(rejects).Length);

        Assert.Contains("holds something other than a list", Cli.Run("{\n", "rank", "-", "--rejects", letter).Error, StringComparison.Ordinal);
        Assert.Equal("Dear Sir", File.ReadAllText(letter));
    }

    [Fact]
    public void An_earlier_document_is_replaced()
    {
        string note = _folder.File("note.txt", "old");

        Assert.Equal(0, Cli.Run("", "report", _profile, "--out", note).Code);
        Assert.Equal(0, Cli.Run("", "report", _profile, "--kind", "record", "--out", _folder.File("record.json")).Code);
        Assert.Equal(0, Cli.Run("", "report", _profile, "--kind", "record", "--out", _folder.File("record.json")).Code);

        Assert.NotEqual("old", File.ReadAllText(note));
    }
}
