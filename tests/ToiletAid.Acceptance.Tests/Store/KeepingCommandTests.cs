using ToiletAid.App.Files;
using ToiletAid.App.Store;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>protect, unprotect, change-passphrase, erase, and the commands that read what they leave.</summary>
public sealed class KeepingCommandTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly string _path;
    private readonly string _right;
    private readonly string _other;

    public KeepingCommandTests()
    {
        _path = _folder.File("K-014.json");
        _right = _folder.File("right", "four quiet otters swim\n");
        _other = _folder.File("other", "seven loud herons fly\n");
        var store = new ProfileStore(BuiltIn.Questions());
        var one = store.Add(_path, "K-014", NumberedVisit.Session(0), seen: null).Value!.Stored;
        store.Add(_path, "K-014", NumberedVisit.Session(1), one);
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Protecting_leaves_no_open_copy_and_the_profile_is_ranked_with_the_passphrase_only()
    {
        Assert.Equal((0, "Protected. Copies made earlier are not.\n", ""), Cli.Run("", "protect", _path, "--passphrase-file", _right));

        Assert.All(Directory.GetFiles(_folder.Path), f => Assert.DoesNotContain("stature", File.ReadAllText(f), StringComparison.Ordinal));
        Assert.Equal(0, Cli.Run("", "rank", _path, "--passphrase-file", _right).Code);
        Assert.Equal((3, "", $"{_path}: it is protected and there is no passphrase, type it when asked or give the option --passphrase-file.\n"), Cli.Run("", "rank", _path));
        Assert.Equal((3, "", $"{_path}: the passphrase does not open it, check capital letters and the keyboard layout and try again.\n"), Cli.Run("", "rank", _path, "--passphrase-file", _other));
    }

    [Fact]
    public void A_second_visit_is_added_to_a_protected_profile_and_its_draft_is_protected_too()
    {
        Cli.Run("", "protect", _path, "--passphrase-file", _right);

        Assert.Equal(0, Cli.Run("none\nfinish\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\n", "assess", "--linear", "--save", _path, "--passphrase-file", _right).Code);

        Assert.True(ProfileFile.IsProtected(_path));
        Assert.Equal(3, new ProfileFile(BuiltIn.Questions()).Read(_path, () => "four quiet otters swim").Value!.Sessions.Length);
        using var journal = AnswerJournal.Start(_path, BuiltIn.Questions(), "four quiet otters swim");
        journal.Save(NumberedVisit.Session(5));
        journal.Dispose();
        string draft = Assert.Single(AnswerJournal.Left(_path));
        Assert.DoesNotContain("stature", File.ReadAllText(draft), StringComparison.Ordinal);
        Assert.Equal(5, NumberedVisit.Number(AnswerJournal.Read(draft, BuiltIn.Questions(), () => "four quiet otters swim").Value!.Latest));
    }

    [Fact]
    public void A_changed_passphrase_opens_and_the_old_one_does_not()
    {
        Cli.Run("", "protect", _path, "--passphrase-file", _right);

        Assert.Equal(0, Cli.Run("", "change-passphrase", _path, "--passphrase-file", _right, "--new-passphrase-file", _other).Code);

        Assert.Equal(3, Cli.Run("", "rank", _path, "--passphrase-file", _right).Code);
        Assert.Equal(0, Cli.Run("", "rank", _path, "--passphrase-file", _other).Code);
        Assert.Equal(3, Cli.Run("", "change-passphrase", _path, "--passphrase-file", _right, "--new-passphrase-file", _right).Code);
    }

    [Fact]
    public void Unprotecting_gives_back_the_same_sessions()
    {
        Cli.Run("", "protect", _path, "--passphrase-file", _right);

        Assert.Equal(3, Cli.Run("", "unprotect", _path, "--passphrase-file", _other).Code);
        Assert.Equal(0, Cli.Run("", "unprotect", _path, "--passphrase-file", _right).Code);

        var stored = new ProfileStore(BuiltIn.Questions()).Open(_path).Value!;
        Assert.Equal((Seal.Whole, 4, false), (stored.Seal, stored.Revision, stored.IsProtected));
        Assert.Equal([0, 1], stored.Profile.Sessions.Select(NumberedVisit.Number));
    }

    [Theory]
    [InlineData("short\n", "shorter than 12 characters")]
    [InlineData("\n", "has no passphrase in its first line")]
    [InlineData("", "has no passphrase in its first line")]
    public void A_poor_passphrase_is_refused_and_nothing_is_changed(string text, string expected)
    {
        byte[] before = File.ReadAllBytes(_path);

        var (code, _, error) = Cli.Run("", "protect", _path, "--passphrase-file", _folder.File("poor", text));

        Assert.Equal(3, code);
        Assert.Contains(expected, error, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(_path));
    }

    [Theory]
    [InlineData("protect", "it is protected already")]
    [InlineData("unprotect", "it is not protected")]
    [InlineData("change-passphrase", "it is not protected")]
    public void A_command_that_does_not_fit_says_which_one_does(string verb, string expected)
    {
        if (verb == "protect")
        {
            Cli.Run("", "protect", _path, "--passphrase-file", _right);
        }

        var (code, _, error) = Cli.Run("", verb, _path, "--passphrase-file", _right);

        Assert.Equal(3, code);
        Assert.Contains(expected, error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_profile_with_an_unfinished_visit_is_not_protected_over_it()
    {
        using (var journal = AnswerJournal.Start(_path, BuiltIn.Questions(), passphrase: null))
        {
            journal.Save(NumberedVisit.Session(5));
        }

        var (code, _, error) = Cli.Run("", "protect", _path, "--passphrase-file", _right);

        Assert.Equal(3, code);
        Assert.Contains("is not finished", error, StringComparison.Ordinal);
        Assert.False(ProfileFile.IsProtected(_path));
    }

    [Fact]
    public void Erasing_removes_profile_version_before_draft_and_leftovers_and_says_what_it_cannot_promise()
    {
        using (var journal = AnswerJournal.Start(_path, BuiltIn.Questions(), passphrase: null))
        {
            journal.Save(NumberedVisit.Session(5));
        }

        _folder.File($".K-014.json.{Guid.NewGuid():N}.new", "{ half");

        Assert.Equal(3, Cli.Run("", "erase", _path).Code);
        var (code, output, error) = Cli.Run("", "erase", _path, "--yes");

        Assert.Equal((0, ""), (code, error));
        Assert.DoesNotContain(Directory.GetFiles(_folder.Path), f => f.Contains("K-014", StringComparison.Ordinal));
        Assert.Contains("Erased K-014.json.\nErased K-014.json.previous.\n", output, StringComparison.Ordinal);
        Assert.Contains("Backups, snapshots and copies on other PCs or in other programs are not erased.", output, StringComparison.Ordinal);
        Assert.Equal(3, Cli.Run("", "erase", _path, "--yes").Code);
    }

    /// <summary>A command line of Windows hands the asterisk on as it stands.</summary>
    [Theory]
    [InlineData("*.json")]
    [InlineData("K-01?.json")]
    public void An_asterisk_stands_for_no_other_profiles_draft(string pattern)
    {
        using (var journal = AnswerJournal.Start(_path, BuiltIn.Questions(), passphrase: null))
        {
            journal.Save(NumberedVisit.Session(5));
        }

        var (code, _, error) = Cli.Run("", "erase", _folder.File(pattern), "--yes");

        Assert.Equal(3, code);
        Assert.Contains("there is no such file", error, StringComparison.Ordinal);
        Assert.Single(AnswerJournal.Left(_path));
    }

    /// <summary>A program that dies before the first answer is written leaves a draft with nothing in it, which nobody is offered.</summary>
    [Fact]
    public void An_empty_draft_keeps_nobody_from_protecting_the_profile()
    {
        AnswerJournal.Start(_path, BuiltIn.Questions(), passphrase: null).Dispose();

        Assert.Equal((0, ""), Cli.Run("", "protect", _path, "--passphrase-file", _right) is var (code, _, error) ? (code, error) : default);
        Assert.True(ProfileFile.IsProtected(_path));
    }

    [Fact]
    public void Another_file_named_by_mistake_is_not_erased()
    {
        string letter = _folder.File("letter.txt", "Dear Sir");

        var (code, _, error) = Cli.Run("", "erase", letter, "--yes");

        Assert.Equal(3, code);
        Assert.Contains("does not look like a profile", error, StringComparison.Ordinal);
        Assert.True(File.Exists(letter));
    }

    [Fact]
    public void What_was_on_the_place_of_an_erased_file_is_overwritten()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "a file that is open elsewhere goes otherwise on Windows");
        using var open = new FileStream(_path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);

        Assert.Equal(0, Cli.Run("", "erase", _path, "--yes").Code);

        byte[] bytes = new byte[open.Length];
        open.ReadExactly(bytes);
        Assert.NotEmpty(bytes);
        Assert.All(bytes, b => Assert.Equal(0, b));
    }

    [Fact]
    public void A_code_stands_for_its_file_in_the_folder()
    {
        Assert.Equal(0, Cli.Run("none\nfinish\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\n", "assess", "--linear", "--save", "M-207", "--folder", _folder.Path).Code);

        Assert.Equal("M-207", new ProfileFile(BuiltIn.Questions()).Read(_folder.File("M-207.json")).Value!.Person);
        Assert.Equal(0, Cli.Run("", "protect", "M-207", "--folder", _folder.Path, "--passphrase-file", _right).Code);
        Assert.True(ProfileFile.IsProtected(_folder.File("M-207.json")));
    }

    [Fact]
    public void A_draft_cut_short_gives_its_last_whole_line()
    {
        string draft;
        using (var journal = AnswerJournal.Start(_path, BuiltIn.Questions(), passphrase: null))
        {
            journal.Save(NumberedVisit.Session(5));
            journal.Save(NumberedVisit.Session(6));
            Assert.Empty(AnswerJournal.Left(_path));
        }

        draft = Assert.Single(AnswerJournal.Left(_path));
        byte[] bytes = File.ReadAllBytes(draft);
        int first = Array.IndexOf(bytes, (byte)'\n') + 1;
        for (int length = first; length <= bytes.Length; length++)
        {
            File.WriteAllBytes(draft, bytes[..length]);
            Assert.Equal(length < bytes.Length ? 5 : 6, NumberedVisit.Number(AnswerJournal.Read(draft, BuiltIn.Questions(), passphrase: null).Value!.Latest));
        }
    }

    [Fact]
    public void No_draft_is_left_once_a_visit_is_saved()
    {
        Cli.Run("none\nfinish\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\n", "assess", "--linear", "--save", _path);

        Assert.DoesNotContain(Directory.GetFiles(_folder.Path), f => f.EndsWith(".draft", StringComparison.Ordinal));
    }
}
