using ToiletAid.App.Files;

namespace ToiletAid.App.Store;

/// <summary>
/// Takes files of a profile away, all or none. Each first gets another name, the profile by a second name of it; then one step decides: the profile
/// is removed or another one is put in its place. Only after it is anything overwritten. Killed before that step everything is given back,
/// killed after it the rest is done, by whoever takes the lock of the folder next.
/// </summary>
internal sealed class Removal : IDisposable
{
    private const string Ending = ".going";
    private const string ProfileWord = "profile";
    private const string PreviousWord = "previous";

    private readonly string _full;
    private readonly List<FileStream> _open = [];
    private readonly List<string> _files;
    private bool _decided;

    private Removal(string full, IEnumerable<string> others)
    {
        _full = full;
        _files = [.. others];
    }

    /// <summary>Opens every file, then gives each its other name. Nothing is changed when one of them cannot be had.</summary>
    /// <param name="full">Full path of a profile, there or not.</param>
    /// <param name="others">What goes with it: the version before, drafts, what a dead program left.</param>
    /// <exception cref="IOException">One of them is in use or cannot be moved; all are where they were.</exception>
    /// <exception cref="UnauthorizedAccessException">One of them may not be changed; all are where they were.</exception>
    internal static Removal Begin(string full, IEnumerable<string> others)
    {
        var removal = new Removal(full, others);
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

    /// <summary>Decides and ends.</summary>
    /// <param name="decide">Removes the profile, or puts another one in its place.</param>
    /// <returns>Names of files that were not overwritten, because they have other names on this disk.</returns>
    internal IReadOnlyList<string> End(Action decide)
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
            File.Delete(_full);
        }
        else
        {
            File.Move(_full, Away(_full, _full));
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
        foreach (string full in Directory.EnumerateFiles(folder, ".*" + Ending).Select(Owner).OfType<string>().Distinct(StringComparer.Ordinal).ToList())
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

    /// <summary>Files of a profile whose removal was decided and not ended, by their own names.</summary>
    internal static IEnumerable<string> Left(string full) => IsDecided(full) ? All(full).Select(f => Home(full, f)) : [];

    private static bool IsDecided(string full) =>
        !File.Exists(full) || (FileFacts.Of(Away(full, full)) is { } old && old.Identity != FileFacts.Of(full)?.Identity);

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
        if (File.Exists(_full))
        {
            _ = DiskFolder.TryLink(_full, Away(_full, _full));
        }

        foreach (string file in _files)
        {
            File.Move(file, Away(_full, file));
        }
    }

    private void Release()
    {
        _open.ForEach(f => f.Dispose());
        _open.Clear();
    }

    /// <summary>The profile's own last: while its second name is there, the removal can be gone on with.</summary>
    private static List<string> Finish(string full)
    {
        string profile = Away(full, full);
        string[] files = [.. All(full).Where(f => f != profile), .. ((string[])[profile]).Where(File.Exists)];
        var kept = new List<string>();
        foreach (string file in files)
        {
            string? identity = FileFacts.Of(file)?.Identity;
            if (!Wiping.Delete(file, ourNames: files.Count(f => FileFacts.Of(f)?.Identity == identity)))
            {
                kept.Add(Path.GetFileName(Home(full, file)));
            }
        }

        return kept;
    }

    private static void GiveBack(string full)
    {
        string profile = Away(full, full);
        foreach (string file in All(full).Where(f => f != profile))
        {
            File.Move(file, Home(full, file), overwrite: true);
        }

        if (File.Exists(profile))
        {
            if (File.Exists(full))
            {
                File.Delete(profile);
            }
            else
            {
                File.Move(profile, full);
            }
        }
    }

    private static string[] All(string full) => [.. Directory.EnumerateFiles(Path.GetDirectoryName(full)!, ".*" + Ending).Where(f => Owner(f) == full)];

    private static string Away(string full, string file) =>
        file == full ? Named(full, ProfileWord)
        : file == WholeFile.Previous(full) ? Named(full, PreviousWord)
        : file + Ending;

    private static string Home(string full, string away) =>
        away == Named(full, ProfileWord) ? full
        : away == Named(full, PreviousWord) ? WholeFile.Previous(full)
        : away[..^Ending.Length];

    private static string Named(string full, string word) => Path.Combine(Path.GetDirectoryName(full)!, $".{Path.GetFileName(full)}.{word}{Ending}");

    /// <summary>The profile that a file with another name belongs to: what stands before its last two parts.</summary>
    private static string? Owner(string away)
    {
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
        return parts.Length < 3 ? null : Path.Combine(Path.GetDirectoryName(away)!, string.Join('.', parts[..^2]));
    }
}
