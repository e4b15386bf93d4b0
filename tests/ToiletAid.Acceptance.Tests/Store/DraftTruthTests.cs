using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Store;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>What is said about drafts is so: each sentence is checked against the disk.</summary>
public sealed class DraftTruthTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly string _away;
    private readonly string _path;
    private readonly string _data;

    public DraftTruthTests()
    {
        _away = Directory.CreateDirectory(Path.Combine(_folder.Path, "share")).FullName;
        _path = Path.Combine(_away, "K-014.json");
        _data = Path.Combine(_folder.Path, "data");
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_draft_whose_folder_is_gone_says_so()
    {
        using var journal = AnswerJournal.Start(_path, BuiltIn.Questions(), passphrase: null);
        journal.Save(NumberedVisit.Session(0));
        Directory.Delete(_away, recursive: true);

        Assert.ThrowsAny<IOException>(() => journal.Save(NumberedVisit.Session(1)));
        Assert.False(journal.IsThere);
        journal.Discard();
    }

    [Fact]
    public void Answers_from_a_pipe_that_cannot_be_saved_are_where_the_sentence_says()
    {
        Directory.Delete(_away, recursive: true);

        var (code, _, error) = Run("none\nfinish\nunknown\nunknown\nunknown\n");

        Assert.Equal(3, code);
        Assert.DoesNotContain("still here", error, StringComparison.Ordinal);
        Assert.Contains("The answers are kept in your data folder.", error, StringComparison.Ordinal);
        string draft = Assert.Single(AnswerJournal.Left(Path.Combine(_data, "toiletaid", "visit")));
        Assert.Equal("K-014", AnswerJournal.Read(draft, BuiltIn.Questions(), null).Value!.Person);
    }

    [Fact]
    public void Without_any_folder_that_takes_them_it_is_said_that_they_are_not_kept()
    {
        Directory.Delete(_away, recursive: true);
        File.WriteAllText(_data, "a file where the folder should be");

        var (code, _, error) = Run("none\nfinish\nunknown\nunknown\nunknown\n");

        Assert.Equal(3, code);
        Assert.Contains("The answers could not be kept, ", error, StringComparison.Ordinal);
        Assert.DoesNotContain("are kept", error, StringComparison.Ordinal);
        Assert.DoesNotContain("still here", error, StringComparison.Ordinal);
    }

    [Fact]
    public void After_one_failed_write_the_next_answer_is_kept_again()
    {
        // The folder comes back in the middle of the interview, as a share does.
        Directory.Delete(_away, recursive: true);
        using var input = new TypedLines(["none", "2", "2"], line =>
        {
            if (line == 2)
            {
                Directory.CreateDirectory(_away);
                File.WriteAllText(_data, "a file where the folder should be");
            }
        });
        using var output = new StringWriter();
        using var error = new StringWriter();
        File.WriteAllText(_data, "a file where the folder should be");
        ToiletAidTui.Commands.CliHost.Run(["assess", "--linear", "--save", _path, "--person", "K-014"], new() { Input = input, Output = output, Error = error, Variable = Variable });

        Assert.Contains("The answers could not be kept, ", error.ToString(), StringComparison.Ordinal);
        Assert.Contains("The answers are kept beside", error.ToString(), StringComparison.Ordinal);
        Assert.True(File.Exists(_path), error.ToString());
    }

    [Fact]
    public void A_visit_that_began_before_its_profile_was_protected_leaves_nothing_in_clear()
    {
        var store = new ProfileStore(BuiltIn.Questions());
        var earlier = store.Add(_path, "K-014", NumberedVisit.Session(0), seen: null).Value!.Stored;
        string secret = _folder.File("secret", "four quiet otters swim\n");
        Assert.Equal(0, Cli.Run("", "protect", _path, "--passphrase-file", secret).Code);

        Assert.False(earlier.IsProtected);
        Assert.Throws<NeedsPassphraseException>(() => AnswerJournal.Start(_path, BuiltIn.Questions(), passphrase: null));
        Assert.Throws<NeedsPassphraseException>(() => AnswerJournal.Start(_path, BuiltIn.Questions(), "seven loud herons fly"));
        AnswerJournal.Start(_path, BuiltIn.Questions(), "four quiet otters swim").Dispose();
    }

    private string? Variable(string name) => name == "XDG_DATA_HOME" ? _data : Environment.GetEnvironmentVariable(name);

    private (int Code, string Output, string Error) Run(string typed)
    {
        using var input = new MemoryStream(System.Text.Encoding.UTF8.GetBytes(typed));
        using var output = new StringWriter();
        using var error = new StringWriter();
        int code = ToiletAidTui.Commands.CliHost.Run(["assess", "--linear", "--save", _path, "--person", "K-014"], new() { Input = input, Output = output, Error = error, Variable = Variable });
        return (code, output.ToString(), error.ToString());
    }
}
