using System.Text;
using System.Text.Json.Nodes;
using ToiletAid.App.Files;
using ToiletAid.App.Store;

namespace ToiletAid.Acceptance.Tests.Store;

public sealed class StoredFileTests
{
    private static readonly ProfileStore Profiles = new(BuiltIn.Questions());

    [Fact]
    public void The_hash_is_that_of_the_file_without_its_line()
    {
        OutsideTool.Needs(OutsideTool.Exists("sha256sum"), "sha256sum");
        using var folder = new TempFolder();
        string path = folder.File("K-014.json");
        Profiles.Add(path, "K-014", NumberedVisit.Session(0), seen: null);
        string[] lines = File.ReadAllLines(path);

        string rest = string.Concat(lines.Where(l => !l.StartsWith("  \"hash\": ", StringComparison.Ordinal)).Select(l => l + "\n"));
        string sum = OutsideTool.Run("sha256sum", rest).Output[..64];

        Assert.Contains($"  \"hash\": \"sha256:{sum}\",", lines);
    }

    [Fact]
    public void A_file_changed_by_hand_is_read_and_told_apart()
    {
        using var folder = new TempFolder();
        string path = folder.File("K-014.json");
        Profiles.Add(path, "K-014", NumberedVisit.Session(0), seen: null);
        Assert.Equal(Seal.Whole, Profiles.Open(path).Value!.Seal);

        File.WriteAllText(path, File.ReadAllText(path).Replace("120,", "121,", StringComparison.Ordinal));

        Assert.Equal(Seal.Changed, Profiles.Open(path).Value!.Seal);
    }

    [Fact]
    public void The_version_before_is_kept_and_named_when_the_newest_is_damaged()
    {
        using var folder = new TempFolder();
        string path = folder.File("K-014.json");
        var one = Profiles.Add(path, "K-014", NumberedVisit.Session(0), seen: null).Value!.Stored;
        Profiles.Add(path, "K-014", NumberedVisit.Session(1), one);
        File.WriteAllText(path, "{ half");

        Assert.Contains(Profiles.Open(path).Issues, i => i.Message.Contains("K-014.json.previous", StringComparison.Ordinal));
        Assert.Equal(1, Profiles.Open(path + ".previous").Value!.Revision);
    }

    [Fact]
    public void Only_the_owner_can_open_what_was_saved()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has lists of rights instead of a mode");
        using var folder = new TempFolder();
        string path = folder.File("K-014.json");
        var one = Profiles.Add(path, "K-014", NumberedVisit.Session(0), seen: null).Value!.Stored;
        Profiles.Add(path, "K-014", NumberedVisit.Session(1), one);
        using var draft = AnswerJournal.Start(path, BuiltIn.Questions(), passphrase: null);

        string[] files = [.. Directory.GetFiles(folder.Path).Where(f => !f.EndsWith(".lock", StringComparison.Ordinal))];

        Assert.Equal(3, files.Length);
        Assert.All(files, f => Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, OperatingSystem.IsWindows() ? default : File.GetUnixFileMode(f)));
    }

    [Fact]
    public void A_link_to_a_profile_stays_a_link()
    {
        using var folder = new TempFolder();
        string path = folder.File("K-014.json"), link = folder.File("link.json");
        var one = Profiles.Add(path, "K-014", NumberedVisit.Session(0), seen: null).Value!.Stored;
        File.CreateSymbolicLink(link, path);

        Profiles.Add(link, "K-014", NumberedVisit.Session(1), one);

        Assert.Equal(path, new FileInfo(link).LinkTarget);
        Assert.Equal(2, Profiles.Open(path).Value!.Revision);
    }

    /// <summary>A file of each earlier format stays here for ever; format 1 is the first.</summary>
    [Theory]
    [InlineData(1)]
    public void A_stored_file_of_each_format_is_still_read(int format)
    {
        string path = TestKit.Repository.Path("tests", "ToiletAid.Acceptance.Tests", "Store", "Formats", $"format-{format}.json");

        Assert.Equal("K-014", new ProfileFile(BuiltIn.Questions()).Read(path).Value!.Person);
    }

    /// <summary>There is no second format yet, so the step is one of this test's own.</summary>
    [Fact]
    public void An_earlier_format_goes_through_every_step_up_to_the_newest()
    {
        var order = new List<int>();
        var steps = new Migrations([
            p => Step(p, 1, order, () => { p["person"] = p["who"]!.DeepClone(); p.Remove("who"); }),
            p => Step(p, 2, order, () => p["sessions"]![0]!["depth"] = "quick")]);
        const string old = """{"format":1,"who":"K-014","sessions":[{"date":"2026-03-09","answers":{}}]}""";

        var read = new ProfileReader(BuiltIn.Questions(), steps).Read(Encoding.UTF8.GetBytes(old));

        Assert.Equal([1, 2], order);
        Assert.Equal("K-014", read.Value!.Person);
    }

    [Fact]
    public void A_newer_format_is_refused_with_the_way_out() =>
        Assert.Contains("use a newer version of toiletaid", new ProfileReader(BuiltIn.Questions()).Read("""{"format":2}"""u8.ToArray()).Issues[0].Message, StringComparison.Ordinal);

    private static JsonObject Step(JsonObject profile, int from, List<int> order, Action change)
    {
        Assert.Equal(from, (int)profile["format"]!);
        order.Add(from);
        change();
        return profile;
    }
}
