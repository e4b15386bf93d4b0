using ToiletAid.App.FileSystem;

namespace ToiletAid.App.Store;

/// <summary>
/// Takes files of a profile away, all or none. Each first gets another name, the profile by a second name of it or, where the disk has none, by a copy if
/// it is to be replaced; then one step decides: the profile is removed or another one is put in its place. Only after it is anything overwritten. Killed before that step everything is given back,
/// killed after it the rest is done, by whoever takes the lock of the folder next.
/// </summary>
internal sealed class Removal : IDisposable
{
    private const string Ending = ".going";
    private const string ProfileWord = "profile";
    private const string PreviousWord = "previous";

    private readonly string _full;
    private readonly bool _replaces;
    private readonly List<FileStream> _open = [];
    private readonly List<string> _files;
    private bool _decided;

    private Removal(string full, IEnumerable<string> others, bool replaces)
    {
        (_full, _replaces) = (full, replaces);
        _files = [.. others];
    }

    /// <summary>Opens every file, then gives each its other name. Nothing is changed when one of them cannot be had.</summary>
    /// <param name="full">Full path of a profile, there or not.</param>
    /// <param name="others">What goes with it: the version before, drafts, what a dead program left.</param>
    /// <param name="replaces">True when another profile is put in the place of the old one.</param>
    /// <exception cref="IOException">One of them is in use or cannot be moved; all are where they were.</exception>
    /// <exception cref="UnauthorizedAccessException">One of them may not be changed; all are where they were.</exception>
    internal static Removal Begin(string full, IEnumerable<string> others, bool replaces)
    {
        var removal = new Removal(full, others, replaces);
        try
        {
            removal.Open();
            removal.MoveAway();
            return removal;
        }
        catch
        {
            removal.Dispose();
            throw;
        }
    }

    /// <summary>Decides and ends. What was decided stays so, whatever goes wrong after it.</summary>
    /// <param name="decide">Removes the profile, or puts another one in its place.</param>
    /// <returns>Names of files that were not overwritten, because they have other names on this disk; and of those that are still there under another
    /// name, until the folder is next used.</returns>
    internal (IReadOnlyList<string> NotOverwritten, IReadOnlyList<string> StillThere) End(Action decide)
    {
        decide();
        _decided = true;
        DiskFolder.Flush(Path.GetDirectoryName(_full)!);
        Release();
        return Finish(_full);
    }

    /// <summary>Removes the profile for <see cref="End"/>.</summary>
    internal void RemoveProfile()
    {
        if (!File.Exists(_full))
        {
            return;
        }

        if (File.Exists(Away(_full, _full)))
        {
            Disk.Delete(_full);
        }
        else
        {
            Disk.Move(_full, Away(_full, _full));
        }
    }

    /// <summary>Gives everything back when it was not decided.</summary>
    public void Dispose()
    {
        Release();
        if (!_decided)
        {
            GiveBack(_full);
        }
    }

    /// <summary>Ends what programs left that died, in a folder that the caller holds.</summary>
    internal static void EndAll(string folder)
    {
        foreach (string full in FileFacts.Hidden(folder, Ending).Select(Owner).OfType<string>().Distinct(StringComparer.Ordinal).ToList())
        {
            try
            {
                if (IsDecided(full))
                {
                    Finish(full);
                }
                else
                {
                    GiveBack(full);
                }
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                // Another account's, or in use: it is ended by the next who can, and keeps nobody from saving.
            }
        }
    }

    /// <summary>True while something of a profile has another name, because a program died.</summary>
    internal static bool IsUnderWay(string full) => All(full).Length > 0;

    /// <summary>Files of a profile whose removal was decided and not ended, by their own names.</summary>
    internal static IEnumerable<string> Left(string full) => IsDecided(full) ? All(full).Select(f => Home(full, f)) : [];

    private static bool IsDecided(string full) =>
        !File.Exists(full) || (FileFacts.Of(Away(full, full)) is { } old && old.Identity != FileFacts.Of(full)?.Identity && !HasSame(Away(full, full), full));

    private static bool HasSame(string one, string other) => File.ReadAllBytes(one).AsSpan().SequenceEqual(File.ReadAllBytes(other));

    private void Open()
    {
        foreach (string file in _files.Prepend(_full).Where(f => new FileInfo(f) is { Exists: true, LinkTarget: null }))
        {
            // Refused while somebody writes to it, and nobody can while it is open here.
            _open.Add(Wiping.Open(file));
        }
    }

    private void MoveAway()
    {
        if (File.Exists(_full) && !Disk.TryLink(_full, Away(_full, _full)) && _replaces)
        {
            WholeFile.Copy(_full, Away(_full, _full));
        }

        foreach (string file in _files)
        {
            Disk.Move(file, Away(_full, file));
        }
    }

    private void Release()
    {
        _open.ForEach(f => f.Dispose());
        _open.Clear();
    }

    /// <summary>The profile's own last: while its second name is there, the removal can be gone on with.</summary>
    private static (List<string> NotOverwritten, List<string> StillThere) Finish(string full)
    {
        string profile = Away(full, full);
        string[] files = [.. All(full).Where(f => f != profile), .. ((string[])[profile]).Where(File.Exists)];
        List<string> kept = [], stuck = [];
        foreach (string file in files)
        {
            try
            {
                string? identity = FileFacts.Of(file)?.Identity;
                if (file == profile && stuck.Count > 0)
                {
                    // Without it nobody would know that the rest has to go.
                    stuck.Add(Path.GetFileName(Home(full, file)));
                }
                else if (!Wiping.Delete(file, ourNames: files.Count(f => FileFacts.Of(f)?.Identity == identity)))
                {
                    kept.Add(Path.GetFileName(Home(full, file)));
                }
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                stuck.Add(Path.GetFileName(Home(full, file)));
            }
        }

        return (kept, stuck);
    }

    private static void GiveBack(string full)
    {
        string profile = Away(full, full);
        foreach (string file in All(full).Where(f => f != profile))
        {
            Disk.Move(file, Home(full, file));
        }

        if (File.Exists(profile))
        {
            // Beside the profile itself it is a second name or a copy of it; the copy is overwritten as anything else.
            if (File.Exists(full))
            {
                _ = Wiping.Delete(profile);
            }
            else
            {
                Disk.Move(profile, full);
            }
        }
    }

    private static string[] All(string full) => [.. FileFacts.Hidden(Path.GetDirectoryName(full)!, Ending).Where(f => Owner(f) == full)];

    private static string Away(string full, string file) =>
        file == full ? Named(full, ProfileWord)
        : file == WholeFile.Previous(full) ? Named(full, PreviousWord)
        : file + Ending;

    private static string Home(string full, string away) =>
        away == Named(full, ProfileWord) ? full
        : away == Named(full, PreviousWord) ? WholeFile.Previous(full)
        : away[..^Ending.Length];

    private static string Named(string full, string word) => Path.Combine(Path.GetDirectoryName(full)!, $".{Path.GetFileName(full)}.{word}{Ending}");

    /// <summary>The profile that a file with another name belongs to: what stands before its last two parts. Null for what only ends the same.</summary>
    private static string? Owner(string away)
    {
        if (!FileFacts.IsOrdinary(away))
        {
            return null;
        }

        string name = Path.GetFileName(away)[1..^Ending.Length];
        foreach (string last in (string[])["." + ProfileWord, "." + PreviousWord])
        {
            if (name.EndsWith(last, StringComparison.Ordinal))
            {
                return Path.Combine(Path.GetDirectoryName(away)!, name[..^last.Length]);
            }
        }

        // A draft or a file that was being written: its own ending, and before that what tells it apart.
        string[] parts = name.Split('.');
        return parts.Length < 3 || !(AnswerJournal.IsOne(name) || WholeFile.IsHalfWritten("." + name)) ? null : Path.Combine(Path.GetDirectoryName(away)!, string.Join('.', parts[..^2]));
    }
}
