using System.Globalization;
using System.Text;
using ToiletAid.App.Files;
using ToiletAid.App.Store;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>
/// SIGKILL at every system call with which the built program changes a file, each once. Nothing is lost, and nothing is in clear that should not be, once
/// the next program has had the folder.
/// </summary>
[Trait("Speed", "Slow")]
public sealed class KillPointTests(ITestOutputHelper output) : IDisposable
{
    private const string Old = "four quiet otters swim";
    private const string New = "seven loud herons fly";
    private const string Visit = "none\nnone\nfinish\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\n";

    /// <summary>As many as the machine has cores, or they would take minutes.</summary>
    private const int SideBySide = 2;

    private static readonly ProfileStore Profiles = new(BuiltIn.Questions());

    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Protecting_is_done_or_not(bool secondNames) => Each("protect", ["protect", "FOLDER/K-014.json", "--passphrase-file", Secret(Old)], string.Empty, secondNames, Fill, (at, _) =>
    {
        Assert.Equal([0, 1], Numbers(at, Old));
        Cli.Run("", "protect", Path.Combine(at, "K-014.json"), "--passphrase-file", Secret(Old));
        Assert.True(ProfileFile.IsProtected(Path.Combine(at, "K-014.json")));
        Assert.Equal([0, 1], Numbers(at, Old));
        Clean(at, "K-014.json");
        Assert.All(Directory.GetFiles(at), f => Assert.DoesNotContain("stature", Encoding.Latin1.GetString(File.ReadAllBytes(f)), StringComparison.Ordinal));
    });

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_passphrase_is_changed_or_not(bool secondNames) => Each("change-passphrase", ["change-passphrase", "FOLDER/K-014.json", "--passphrase-file", Secret(Old), "--new-passphrase-file", Secret(New)], string.Empty, secondNames, FillProtected, (at, _) =>
    {
        Assert.All(Directory.GetFiles(at), f => Assert.DoesNotContain("stature", Encoding.Latin1.GetString(File.ReadAllBytes(f)), StringComparison.Ordinal));
        bool isNew = Open(at, New) is not null;
        Assert.Equal([0, 1], Numbers(at, isNew ? New : Old));
        FolderLock.Take(at, TimeSpan.FromSeconds(5)).Dispose();
        Assert.Equal([0, 1], Numbers(at, isNew ? New : Old));
        Clean(at, isNew ? ["K-014.json"] : ["K-014.json", "K-014.json.previous"]);
    });

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Erasing_takes_all_or_nothing(bool secondNames) => Each("erase", ["erase", "FOLDER/K-014.json", "--yes"], string.Empty, secondNames, FillWithDraft, (at, _) =>
    {
        string path = Path.Combine(at, "K-014.json"), again = at + ".again";
        OutsideTool.Run("cp", "", "-a", at, again);
        FolderLock.Take(again, TimeSpan.FromSeconds(5)).Dispose();
        if (File.Exists(path))
        {
            Assert.Equal([0, 1], Numbers(again, Old));
            Assert.Equal([0], Profiles.Open(Path.Combine(again, "K-014.json.previous")).Value!.Profile.Sessions.Select(NumberedVisit.Number));
            Assert.Equal(5, NumberedVisit.Number(AnswerJournal.Read(Assert.Single(AnswerJournal.Left(Path.Combine(again, "K-014.json"))), BuiltIn.Questions(), null).Value!.Latest));
            Assert.Equal(4, Directory.GetFiles(again).Length);
        }
        else
        {
            Clean(again);
        }

        Assert.InRange(Cli.Run("", "erase", path, "--yes").Code, 0, 3);
        Clean(at);
    });

    [Fact]
    public void A_visit_is_saved_or_its_answers_are_kept() => Each("assess", ["assess", "--linear", "--save", "FOLDER/K-014.json"], Visit, true, Fill, (at, log) => Saved(at, log, null));

    [Fact]
    public void A_visit_of_a_protected_profile_is_saved_or_its_answers_are_kept_and_nothing_is_in_clear() => Each("assess, protected", ["assess", "--linear", "--save", "FOLDER/K-014.json", "--passphrase-file", Secret(Old)], Visit, true, FillProtected, (at, log) =>
    {
        Assert.All(Directory.GetFiles(at), f => Assert.DoesNotContain("\"person\"", Encoding.Latin1.GetString(File.ReadAllBytes(f)), StringComparison.Ordinal));
        Saved(at, log, Old);
    });

    [Fact]
    public void A_trial_is_saved_or_not() => Each("trial", ["trial", "FOLDER/K-014.json", "--date", "2026-06-01", "--plan", "1", "--before", "03", "--goal", "06", "--dry-level", "06", "--dry-minutes", "4", "--dry-effort", "2", "--dry-problems", "none", "--real", "no"], string.Empty, true, at =>
    {
        string path = Path.Combine(at, "K-014.json");
        var demo = new ProfileFile(BuiltIn.Questions()).Read(TestKit.Repository.Path("profiles", "k-014-stiff-shoulder.json")).Value!;
        Assert.NotNull(Profiles.Add(path, "K-014", demo.Sessions[0], seen: null).Value);
    }, (at, _) =>
    {
        var stored = Open(at, null)!;
        Assert.Equal(Seal.Whole, stored.Seal);
        Assert.InRange(stored.Profile.Sessions.Length, 1, 2);
        Assert.Equal(stored.Profile.Sessions.Length - 1, stored.Profile.Tried.Length);
        FolderLock.Take(at, TimeSpan.FromSeconds(5)).Dispose();
        Clean(at, ["K-014.json", .. File.Exists(Path.Combine(at, "K-014.json.previous")) ? (string[])["K-014.json.previous"] : []]);
    });

    /// <summary>Every whole line that went into the draft before the kill is offered again, or the visit is in the profile.</summary>
    private static void Saved(string at, string[] log, string? passphrase)
    {
        string path = Path.Combine(at, "K-014.json");
        var stored = Open(at, passphrase)!;
        Assert.Equal(Seal.Whole, stored.Seal);
        Assert.Equal([0, 1], stored.Profile.Sessions.Take(2).Select(NumberedVisit.Number));
        int kept = log.Count(l => l.Contains("pwrite64(", StringComparison.Ordinal) && l.Contains(".draft>", StringComparison.Ordinal) && !l.Contains("\"\\0\"", StringComparison.Ordinal) && char.IsAsciiDigit(l[^1]));
        if (stored.Profile.Sessions.Length == 2 && kept > 0)
        {
            string draft = Assert.Single(AnswerJournal.Left(path));
            Assert.InRange(File.ReadAllBytes(draft).Count(b => b == '\n'), kept, kept + 1);
            Assert.NotEmpty(AnswerJournal.Read(draft, BuiltIn.Questions(), () => passphrase).Value!.Latest.Answers.Ids);
        }

        FolderLock.Take(at, TimeSpan.FromSeconds(5)).Dispose();
        Assert.Empty(Directory.GetFiles(at, ".*.new"));
    }

    private void Each(string what, string[] arguments, string input, bool secondNames, Action<string> fill, Action<string, string[]> check)
    {
        OutsideTool.Needs(OutsideTool.Exists("strace"), "strace");
        string first = Directory.CreateDirectory(_folder.File("first")).FullName;
        fill(first);
        var run = new KillPoints(arguments, input, secondNames);
        OutsideTool.Run("cp", "", "-a", first, _folder.File("whole"));
        var points = run.All(_folder.File("whole"));
        Assert.NotEmpty(points);
        Parallel.For(0, points.Length, new ParallelOptions { MaxDegreeOfParallelism = SideBySide }, i =>
        {
            try
            {
                int tries = 0;
                run.Kill(
                    () =>
                    {
                        string copy = _folder.File(string.Create(CultureInfo.InvariantCulture, $"point-{i}-{tries++}"));
                        OutsideTool.Run("cp", "", "-a", first, copy);
                        return copy;
                    },
                    points[i],
                    out string at,
                    out string[] log);
                check(at, log);
            }
            catch (Exception e)
            {
                throw new InvalidOperationException($"{what}, killed at call {i + 1} of {points.Length}, {points[i].Name} {points[i].What}: {e.Message}", e);
            }
        });
        output.WriteLine($"{what}{(secondNames ? string.Empty : ", on a disk without second names")}: {points.Length} calls that change a file, killed at each once");
    }

    private string Secret(string text)
    {
        string path = _folder.File(text.Replace(' ', '-'));
        File.WriteAllText(path, text + "\n");
        return path;
    }

    private static void Fill(string at)
    {
        string path = Path.Combine(at, "K-014.json");
        var one = Profiles.Add(path, "K-014", NumberedVisit.Session(0), seen: null).Value!.Stored;
        Profiles.Add(path, "K-014", NumberedVisit.Session(1), one);
    }

    private void FillProtected(string at)
    {
        string path = Path.Combine(at, "K-014.json");
        var one = Profiles.Add(path, "K-014", NumberedVisit.Session(0), seen: null).Value!.Stored;
        Assert.Equal(0, Cli.Run("", "protect", path, "--passphrase-file", Secret(Old)).Code);
        Assert.NotNull(Profiles.Add(path, "K-014", NumberedVisit.Session(1), Profiles.Open(path, () => Old).Value ?? one, () => Old).Value);
    }

    private static void FillWithDraft(string at)
    {
        Fill(at);
        using var draft = AnswerJournal.Start(Path.Combine(at, "K-014.json"), BuiltIn.Questions(), passphrase: null);
        draft.Save(NumberedVisit.Session(5));
    }

    private static StoredProfile? Open(string at, string? passphrase) => Profiles.Open(Path.Combine(at, "K-014.json"), () => passphrase).Value;

    private static int[] Numbers(string at, string? passphrase) => [.. Open(at, passphrase)!.Profile.Sessions.Select(NumberedVisit.Number)];

    /// <summary>Nothing but these files and the lock is in the folder.</summary>
    private static void Clean(string at, params string[] files) =>
        Assert.Equal(files.Append(FolderLock.FileName).Order(StringComparer.Ordinal), Directory.GetFiles(at).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
}
