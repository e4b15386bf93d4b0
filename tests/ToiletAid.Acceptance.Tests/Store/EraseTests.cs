using ToiletAid.App.Files;
using ToiletAid.App.Store;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>Erasing takes all or nothing.</summary>
public sealed class EraseTests : IDisposable
{
    private static readonly ProfileStore Profiles = new(BuiltIn.Questions());

    private readonly TempFolder _folder = new();
    private readonly string _path;

    public EraseTests()
    {
        _path = _folder.File("K-014.json");
        var one = Profiles.Add(_path, "K-014", NumberedVisit.Session(0), seen: null).Value!.Stored;
        Profiles.Add(_path, "K-014", NumberedVisit.Session(1), one);
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_draft_that_somebody_holds_keeps_everything_where_it_is_and_the_open_visit_can_be_saved()
    {
        string before = string.Join(' ', Names());
        using var journal = AnswerJournal.Start(_path, BuiltIn.Questions(), passphrase: null);
        journal.Save(NumberedVisit.Session(2));

        var (code, output, error) = Cli.Run("", "erase", _path, "--yes");

        Assert.Equal((3, ""), (code, output));
        Assert.Equal($"{_path}: another window or PC has it or a draft of it open, so nothing was erased, end that visit first.\n", error);
        journal.Save(NumberedVisit.Session(3));
        journal.Discard();
        Assert.Equal(before, string.Join(' ', Names()));
        Assert.Equal([0, 1, 2], Profiles.Add(_path, "K-014", NumberedVisit.Session(2), Profiles.Open(_path).Value).Value!.Stored.Profile.Sessions.Select(NumberedVisit.Number));
    }

    [Fact]
    public void A_backup_made_of_second_names_keeps_what_it_holds_and_the_words_say_so()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "a second name of a file is made otherwise on Windows");
        string backup = _folder.File("backup"), whole = File.ReadAllText(_path);
        OutsideTool.Run("ln", "", _path, backup);

        var (code, output, _) = Cli.Run("", "erase", _path, "--yes");

        Assert.Equal(0, code);
        Assert.Equal(whole, File.ReadAllText(backup));
        Assert.Contains("K-014.json has another name on this disk", output, StringComparison.Ordinal);
        Assert.DoesNotContain("K-014.json.previous has another name", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_backup_made_of_second_names_outlives_protecting_too()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "a second name of a file is made otherwise on Windows");
        string backup = _folder.File("backup"), whole = File.ReadAllText(_path);
        OutsideTool.Run("ln", "", _path, backup);

        Assert.Equal(0, Cli.Run("", "protect", _path, "--passphrase-file", _folder.File("right", "four quiet otters swim\n")).Code);

        Assert.Equal(whole, File.ReadAllText(backup));
    }

    [Fact]
    public void The_draft_of_a_profile_whose_name_begins_the_same_is_left()
    {
        string shorter = _folder.File("K-014");
        Profiles.Add(shorter, "K-014", NumberedVisit.Session(0), seen: null);
        using (var journal = AnswerJournal.Start(_path, BuiltIn.Questions(), passphrase: null))
        {
            journal.Save(NumberedVisit.Session(5));
        }

        Assert.Equal(0, Cli.Run("", "erase", shorter, "--yes").Code);

        Assert.Single(AnswerJournal.Left(_path));
        Assert.True(File.Exists(_path));
    }

    private IEnumerable<string> Names() => Directory.GetFiles(_folder.Path).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal);
}
