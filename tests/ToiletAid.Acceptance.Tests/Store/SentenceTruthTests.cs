using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text;
using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAidTui.Commands;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>Every sentence about what is saved, kept, erased and protected, in good days and bad ones: the disk is looked at while it is said.</summary>
public sealed partial class SentenceTruthTests(ITestOutputHelper output) : IDisposable
{
    private const string Red = "1\nfinish\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\n";
    private const string Old = "four quiet otters swim";
    private const string New = "seven loud herons fly";

    private static readonly ProfileStore Profiles = new(BuiltIn.Questions());

    private readonly TempFolder _root = new();
    private readonly List<string> _untrue = [];
    private int _checked;
    private int _cases;

    public void Dispose() => _root.Dispose();

    [Fact]
    public void No_sentence_claims_what_the_disk_refutes()
    {
        Visits();
        Meanwhile();
        Damaged();
        Papers();
        Protecting();
        Erasing();
        Full();
        Disks();
        output.WriteLine($"{_cases} cases, {_checked} sentences held against the disk");
        Assert.True(_untrue.Count == 0, string.Join("\n\n", _untrue));
        Assert.InRange(_checked, 60, int.MaxValue);
    }

    private void Visits()
    {
        Case("a new profile, twice, and the same again", c => { c.Assess(Red); c.Assess(Red); });
        Case("nobody gives a file", c => c.Run(Red, "assess", "--linear"));
        Case("the folder is gone", c => { Directory.Delete(c.Folder); c.Assess(Red); });
        Case("no folder takes the answers", c => { Directory.Delete(c.Folder); File.WriteAllText(c.Data, "a file"); c.Assess(Red); });
        Case("input ends", c => c.Assess("none\nnone\n"));
        Case("nothing was answered", c => c.Assess("quit\n"));
        Case("the folder comes back", c => { Directory.Delete(c.Folder); c.Type(["1", "yes", "no"], at => { if (at == 1) { Directory.CreateDirectory(c.Folder); } }, "assess", "--linear", "--save", c.Path, "--person", "K-014"); });
        Case("nobody tries again", c => { Directory.Delete(c.Folder); c.Type(["1", "no", "no"], _ => { }, "assess", "--linear", "--save", c.Path, "--person", "K-014"); });
    }

    private void Meanwhile()
    {
        Case("erased while it is open", c => { c.Fill(); c.Type(["1", "yes", "yes"], at => { if (at == 0) { c.Change(() => ProfileKeeper.Erase(c.Path)); } }, "assess", "--linear", "--save", c.Path); });
        Case("erased and begun anew", c => { c.Fill(); c.Type(["1", "yes", "yes"], at => { if (at == 0) { c.Change(() => { ProfileKeeper.Erase(c.Path); Profiles.Add(c.Path, "K-014", NumberedVisit.Session(9), seen: null); }); } }, "assess", "--linear", "--save", c.Path); });
        Case("others save meanwhile", c => { c.Fill(); c.Type(["1"], at => { if (at == 0) { Profiles.Add(c.Path, "K-014", NumberedVisit.Session(7), Profiles.Open(c.Path).Value); Profiles.Add(c.Path, "K-014", NumberedVisit.Session(8), Profiles.Open(c.Path).Value); } }, "assess", "--linear", "--save", c.Path); });
        Case("a visit that broke off is gone on with", c => { c.Draft(); c.Type(["yes", "finish", "unknown", "unknown", "unknown", "unknown", "unknown", "unknown", "unknown", "unknown"], _ => { }, "assess", "--linear", "--save", c.Path, "--person", "K-014"); });
        Case("a visit that broke off is erased", c => { c.Draft(); c.Type(["no", "yes", "quit"], _ => { }, "assess", "--linear", "--save", c.Path, "--person", "K-014"); });
    }

    private void Damaged()
    {
        Case("changed by another program", c => { c.Fill(); File.WriteAllText(c.Path, File.ReadAllText(c.Path).Replace("120", "121", StringComparison.Ordinal)); c.Assess(Red); });
        Case("damaged, and the version before is whole", c => { c.Fill(); File.WriteAllText(c.Path, "{ half"); c.Assess(Red); });
        Case("damaged, and the version before too", c => { c.Fill(); File.WriteAllText(c.Path, "{ half"); File.WriteAllText(c.Path + ".previous", "{ half"); c.Assess(Red); });
        Case("another person", c => { c.Fill(); c.Run(Red, "assess", "--linear", "--save", c.Path, "--person", "M-207"); });
    }

    private void Papers()
    {
        Case("a trial", c => { c.Demo(); c.Trial(); });
        Case("a trial of nothing", c => { c.Demo(); c.Run("quit\n", "trial", c.Path, "--date", "2026-06-01"); c.Run("1\n", "trial", c.Path, "--date", "2026-06-01"); });
        Case("a note over its profile", c => { c.Demo(); c.Says.Output = c.Path; c.Run("", "report", c.Path, "--out", c.Path); });
        Case("a note into no folder", c => { c.Demo(); c.Run("", "report", c.Path, "--out", Path.Combine(c.Data, "none", "note.txt")); });
    }

    private void Protecting()
    {
        Case("protect, again, change, take off, again", c =>
        {
            c.Fill();
            c.With(Old).Run("", "protect", c.Path, "--passphrase-file", c.Secret(Old));
            c.Run("", "protect", c.Path, "--passphrase-file", c.Secret(Old));
            c.With(null).Assess(Red);
            c.With(New).Run("", "rank", c.Path, "--passphrase-file", c.Secret(New));
            c.With(Old).Run("", "assess", "--linear", "--save", c.Path, "--passphrase-file", c.Secret(Old));
            c.Run(Red, "assess", "--linear", "--save", c.Path, "--passphrase-file", c.Secret(Old));
            c.Run("", "change-passphrase", c.Path, "--passphrase-file", c.Secret(Old), "--new-passphrase-file", c.Secret(New));
            c.With(New).Run("", "unprotect", c.Path, "--passphrase-file", c.Secret(New));
            c.Run("", "unprotect", c.Path, "--passphrase-file", c.Secret(New));
            c.Run("", "change-passphrase", c.Path, "--passphrase-file", c.Secret(New));
        });
        Case("protect with a backup, over a visit that broke off, with a poor passphrase", c =>
        {
            c.Fill();
            c.Link();
            c.With(Old).Run("", "protect", c.Path, "--passphrase-file", c.Secret("short"));
            c.Run("", "protect", c.Path, "--passphrase-file", c.Secret(Old));
            c.Run("", "unprotect", c.Path, "--passphrase-file", c.Secret(Old));
            c.Draft();
            c.Run("", "protect", c.Path, "--passphrase-file", c.Secret(Old));
        });
        Case("protected, erased while it is open, and saved again", c =>
        {
            c.Fill();
            c.With(Old).Run("", "protect", c.Path, "--passphrase-file", c.Secret(Old));
            c.Type(["1", "yes"], at => { if (at == 0) { c.Change(() => ProfileKeeper.Erase(c.Path)); } }, "assess", "--linear", "--save", c.Path, "--passphrase-file", c.Secret(Old));
            Assert.True(ProfileFile.IsProtected(c.Path));
        });
    }

    private void Erasing()
    {
        Case("erase without a word, with one, and again", c => { c.Fill(); c.Draft(); c.Run("", "erase", c.Path); c.Run("", "erase", c.Path, "--yes"); c.Run("", "erase", c.Path, "--yes"); });
        Case("erase is asked and not wanted", c => { c.Fill(); c.Type(["no"], _ => { }, "erase", c.Path); c.Type(["yes"], _ => { }, "erase", c.Path); });
        Case("erase with a backup", c => { c.Fill(); c.Link(); c.Run("", "erase", c.Path, "--yes"); });
        Case("erase while somebody gives answers", c => { c.Fill(); using var journal = AnswerJournal.Start(c.Path, BuiltIn.Questions(), null); journal.Save(NumberedVisit.Session(3)); c.Run("", "erase", c.Path, "--yes"); });
        Case("erase something else", c => { File.WriteAllText(c.Path, "Dear Sir"); c.Run("", "erase", c.Path, "--yes"); });
        Case("a folder that may only be read", c =>
        {
            c.Demo();
            Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has lists of rights instead of a mode");
            Mode(c.Folder, false);
            Reachable(_root.Path, Path.GetDirectoryName(c.Folder)!, c.Secret(Old));
            try
            {
                AsOrdinaryUser(() => { c.Run("", "erase", c.Path, "--yes"); c.With(Old).Run("", "protect", c.Path, "--passphrase-file", Path.Combine(_root.Path, Old.Replace(' ', '-'))); c.Trial(); c.Assess(Red); });
            }
            finally
            {
                Mode(c.Folder, true);
            }
        });
    }

    /// <summary>A disk of 64 kilobytes without room.</summary>
    private void Full()
    {
        OutsideTool.Needs(Environment.UserName == "root" && OutsideTool.Exists("mount"), "the right to mount a small disk");
        Case("a full disk", c =>
        {
            var (code, _, error) = OutsideTool.Run("mount", string.Empty, "-t", "tmpfs", "-o", "size=64k", "tmpfs", c.Folder);
            OutsideTool.Needs(code == 0, "the right to mount a small disk, " + error.Trim());
            try
            {
                c.Demo();
                OutsideTool.Run("dd", string.Empty, "if=/dev/zero", $"of={Path.Combine(c.Folder, "filler")}", "bs=512");
                c.Trial();
                c.With(Old).Run("", "protect", c.Path, "--passphrase-file", c.Secret(Old));
                c.With(null).Assess(Red);
                c.Type(["1", "yes", "no"], at => { if (at == 1) { File.Delete(Path.Combine(c.Folder, "filler")); } }, "assess", "--linear", "--save", c.Path);
                c.Run("", "erase", c.Path, "--yes");
            }
            finally
            {
                OutsideTool.Run("umount", string.Empty, c.Folder);
            }
        });
    }

    /// <summary>Disks that fail in the middle of it: strace lets calls of the built program fail.</summary>
    private void Disks()
    {
        OutsideTool.Needs(OutsideTool.Exists("strace"), "strace");
        Case("a folder is not flushed", c => { c.Demo(); c.Failing("fsync:error=EIO:when=2+", "trial", c.Path, "--date", "2026-06-01", "--plan", "1", "--before", "03", "--goal", "06", "--dry-level", "06", "--dry-minutes", "4", "--dry-effort", "2", "--dry-problems", "none", "--real", "no"); });
        Case("nothing is flushed", c => { c.Demo(); c.Failing("fsync:error=EIO", "erase", c.Path, "--yes"); });
        Case("zeros are not taken", c => { c.Demo(); c.Failing("pwrite64:error=EIO", "erase", c.Path, "--yes"); });
        Case("names cannot be taken away", c => { c.Fill(); c.Failing("unlink:error=EIO:when=2+", "erase", c.Path, "--yes"); });
        Case("protected, but the old one stays", c => { c.Fill(); c.With(Old).Failing("unlink:error=EIO", "protect", c.Path, "--passphrase-file", c.Secret(Old)); c.Run("", "protect", c.Path, "--passphrase-file", c.Secret(Old)); });
        Case("nothing can be renamed", c => { c.Fill(); c.Failing("rename:error=EIO", "erase", c.Path, "--yes"); c.With(Old).Failing("rename:error=EIO", "protect", c.Path, "--passphrase-file", c.Secret(Old)); });
    }

    private void Case(string name, Action<Scene> play)
    {
        var scene = new Scene(_root.File($"case-{_cases++}"), _root);
        try
        {
            play(scene);
        }
        catch (Exception e) when (e is not Xunit.Sdk.XunitException)
        {
            _untrue.Add($"{name}: {e}\n{scene.Says.All}");
        }

        _checked += scene.Says.Checked;
        if (scene.Says.Untrue.Count > 0)
        {
            _untrue.Add($"{name}:\n{string.Join('\n', scene.Says.Untrue)}\nIn:\n{string.Join('\n', scene.Says.All.Split('\n').TakeLast(12))}");
        }
    }

    private static void Mode(string folder, bool writable)
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(folder, (UnixFileMode)(writable ? 0x1FF : 0x16D));
            foreach (string file in Directory.GetFiles(folder))
            {
                File.SetUnixFileMode(file, (UnixFileMode)0x124);
            }
        }
    }

    /// <summary>What the tests make is for one account, and the next case is of another.</summary>
    private static void Reachable(params string[] paths)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        foreach (string path in paths)
        {
            File.SetUnixFileMode(path, (UnixFileMode)0x1ED);
        }
    }

    private static void AsOrdinaryUser(Action action)
    {
        if (Environment.UserName != "root")
        {
            action();
            return;
        }

        _ = SetFileUser(65534);
        try
        {
            action();
        }
        finally
        {
            _ = SetFileUser(0);
        }
    }

    [LibraryImport("libc", EntryPoint = "setfsuid")]
    private static partial int SetFileUser(uint user);

    /// <summary>A folder with a profile, a folder for data, and the witness of what is said.</summary>
    private sealed class Scene
    {
        private readonly TempFolder _root;

        internal Scene(string at, TempFolder root)
        {
            _root = root;
            Folder = Directory.CreateDirectory(System.IO.Path.Combine(at, "share")).FullName;
            Data = System.IO.Path.Combine(at, "data");
            Path = System.IO.Path.Combine(Folder, "K-014.json");
            Says = new(Path, Data);
        }

        internal string Folder { get; }

        internal string Data { get; }

        internal string Path { get; }

        internal Witness Says { get; }

        internal Scene With(string? passphrase)
        {
            Says.Given = passphrase;
            if (passphrase is not null && !Says.Passphrases.Contains(passphrase))
            {
                Says.Passphrases.Add(passphrase);
            }

            return this;
        }

        internal string Secret(string text) => _root.File(text.Replace(' ', '-'), text + "\n");

        internal void Fill()
        {
            var one = Profiles.Add(Path, "K-014", NumberedVisit.Session(0), seen: null).Value!.Stored;
            Profiles.Add(Path, "K-014", NumberedVisit.Session(1), one);
        }

        internal void Demo()
        {
            var demo = new ProfileFile(BuiltIn.Questions()).Read(TestKit.Repository.Path("profiles", "k-014-stiff-shoulder.json")).Value!;
            Assert.NotNull(Profiles.Add(Path, "K-014", demo.Sessions[0], seen: null).Value);
        }

        /// <summary>Somebody else does something meanwhile.</summary>
        internal void Change(Action change)
        {
            change();
            Says.Begin();
        }

        internal void Draft()
        {
            using var journal = AnswerJournal.Start(Path, BuiltIn.Questions(), passphrase: null);
            journal.Save(NumberedVisit.Session(5), "K-014");
        }

        internal void Link()
        {
            Says.Backup = System.IO.Path.Combine(Folder, "backup");
            OutsideTool.Run("ln", string.Empty, Path, Says.Backup);
        }

        internal void Assess(string typed) => Run(typed, "assess", "--linear", "--save", Path, "--person", "K-014");

        internal void Trial() => Run("", "trial", Path, "--date", "2026-06-01", "--plan", "1", "--before", "03", "--goal", "06", "--dry-level", "06", "--dry-minutes", "4", "--dry-effort", "2", "--dry-problems", "none", "--real", "no");

        internal void Run(string typed, params string[] arguments)
        {
            Says.HasPerson = false;
            Says.Begin();
            using var input = new MemoryStream(Encoding.UTF8.GetBytes(typed));
            CliHost.Run(arguments, new() { Input = input, Output = Says, Error = Says, Variable = Variable });
        }

        /// <summary>A person types, and something happens before each line.</summary>
        internal void Type(string[] lines, Action<int> before, params string[] arguments)
        {
            Says.HasPerson = true;
            Says.Begin();
            using var input = new TypedLines(lines, before);
            CliHost.Run(arguments, new() { Input = input, InputIsTerminal = true, Output = Says, Error = Says, Variable = Variable });
        }

        /// <summary>The built program, some of whose calls fail.</summary>
        internal void Failing(string how, params string[] arguments)
        {
            (Says.HasPerson, Says.DiskFails) = (false, true);
            Says.Begin();
            var start = new ProcessStartInfo("strace", ["-f", "-o", "/dev/null", "-e", $"inject={how}", BuiltProgram.Path, .. arguments]) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
            start.Environment["XDG_DATA_HOME"] = Data;
            start.Environment["DOTNET_EnableDiagnostics"] = "0";
            using var process = Process.Start(start)!;
            process.StandardInput.Close();
            var complained = process.StandardError.ReadToEndAsync();
            string said = process.StandardOutput.ReadToEnd() + complained.GetAwaiter().GetResult();
            process.WaitForExit();
            Says.Write(said);
        }

        private string? Variable(string name) => name == "XDG_DATA_HOME" ? Data : Environment.GetEnvironmentVariable(name);
    }
}
