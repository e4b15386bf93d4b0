using System.Collections.Immutable;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Protection;
using ToiletAid.Core.Interview;

namespace ToiletAid.App.Store;

/// <summary>Protects profiles with a passphrase, opens them again, and erases them.</summary>
/// <param name="questions">The questions that answers are checked against.</param>
public sealed class ProfileKeeper(QuestionSet questions)
{
    private readonly ProfileFile _files = new(questions);

    /// <summary>Rounds of a new protection.</summary>
    internal int Iterations { get; init; } = Protector.Iterations;

    /// <summary>Changes how a profile is protected. The version before it is erased, since it would open the old way.</summary>
    /// <param name="path">Path of a file.</param>
    /// <param name="passphrase">Asked when it is protected now.</param>
    /// <param name="next">Asked for the passphrase it shall have, once it is known that it can be opened; gives null to leave it as it is.</param>
    /// <param name="open">True to leave it without protection; then <paramref name="next"/> is not asked.</param>
    /// <returns>The profile as it now stands, or what is wrong.</returns>
    /// <exception cref="IOException">It could not be written; what was on disk is still there.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; what was on disk is still there.</exception>
    public Checked<StoredProfile> Change(string path, Func<string?> passphrase, Func<string?> next, bool open = false)
    {
        string full = WholeFile.RealPath(path);

        // Asked before the lock is taken: a person types slowly, and others want to save.
        var first = _files.Open(full, passphrase);
        if (!first.TryGet(out _))
        {
            return first;
        }

        string? wanted = open ? null : next();
        if (!open && wanted is null)
        {
            return Checked<StoredProfile>.Bad(new Issue("needs-passphrase", string.Empty, "there is no new passphrase, so nothing was changed, type it when asked or give it in a file"));
        }

        using var held = FolderLock.Take(Path.GetDirectoryName(full)!, ProfileStore.Patience);
        if (AnswerJournal.IsUnfinished(full))
        {
            return Checked<StoredProfile>.Bad(new Issue("unfinished", string.Empty, "an interview of this person is not finished, go on with it or drop it with toiletaid assess first"));
        }

        var read = _files.Open(full, passphrase);
        if (!read.TryGet(out var stored))
        {
            return read;
        }

        byte[] plain = new ProfileWriter(questions).Sealed(stored.Profile, stored.Revision + 1);
        byte[] bytes = wanted is null ? plain : new Protector(wanted, Iterations).File(plain);

        // What cannot be opened again must not take the place of what can.
        var check = _files.Open(bytes, () => wanted);
        if (!check.TryGet(out var now))
        {
            return check;
        }

        return Replace(full, bytes) is [var stuck, ..]
            ? Checked<StoredProfile>.Bad(new Issue("still-there", string.Empty, $"it was changed, but the disk could not overwrite and remove {stuck} as it was before, mend the disk and give the command again"))
            : Checked<StoredProfile>.Good(now);
    }

    /// <summary>Takes away what a program that died while it protected a profile may have left of it in clear.</summary>
    /// <param name="path">Path of a protected profile.</param>
    /// <exception cref="IOException">It could not be taken away.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be taken away.</exception>
    public static void EndProtecting(string path)
    {
        string full = WholeFile.RealPath(path), previous = WholeFile.Previous(full);
        using var held = FolderLock.Take(Path.GetDirectoryName(full)!, ProfileStore.Patience);
        if (File.Exists(previous) && !ProfileFile.IsProtected(previous))
        {
            Wiping.Delete(previous);
        }
    }

    /// <summary>Erases a profile, the version before it, drafts and what a program left that died: all of it or, when something cannot be had, nothing.</summary>
    /// <param name="path">Path of a file.</param>
    /// <returns>What was erased, or what is wrong.</returns>
    /// <exception cref="IOException">Something could not be erased.</exception>
    /// <exception cref="UnauthorizedAccessException">Something may not be erased.</exception>
    public static Checked<Erased> Erase(string path)
    {
        string full = WholeFile.RealPath(path), folder = Path.GetDirectoryName(full)!;
        if (!Directory.Exists(folder))
        {
            return NoFile();
        }

        // What was left half erased is erased by taking the lock.
        ImmutableArray<string> left = [.. Removal.Left(full)];
        using var held = FolderLock.Take(folder, ProfileStore.Patience);
        ImmutableArray<string> stays = [.. Removal.Left(full)];
        bool isThere = File.Exists(full);
        ImmutableArray<string> others = Others(full), files = isThere ? [full, .. others] : others;
        left = [.. left.Where(f => !files.Contains(f) && !stays.Contains(f))];
        if (files.IsEmpty)
        {
            return left.IsEmpty && stays.IsEmpty ? NoFile() : Checked<Erased>.Good(new(Names(left), [], Names(stays)));
        }

        if (isThere && !LooksLikeOne(full))
        {
            return Checked<Erased>.Bad(new Issue("not-a-profile", string.Empty, "it does not look like a profile, so it was left alone, check the path"));
        }

        IReadOnlyList<string> kept, stuck;
        try
        {
            using var removal = Removal.Begin(full, others, replaces: false);
            (kept, stuck) = removal.End(removal.RemoveProfile);
        }
        catch (IOException e) when (FolderLock.IsBusy(e))
        {
            return Checked<Erased>.Bad(new Issue("in-use", string.Empty, "another window or PC has it or a draft of it open, so nothing was erased, end that visit first"));
        }

        if (path != full && new FileInfo(path).LinkTarget is not null)
        {
            Disk.Delete(path);
        }

        DiskFolder.Flush(folder);
        return Checked<Erased>.Good(new([.. Names(files.Concat(left)).Except(stuck, StringComparer.Ordinal)], [.. kept], [.. stuck]));
    }

    private static ImmutableArray<string> Others(string full) =>
        [.. ((string[])[WholeFile.Previous(full)]).Where(File.Exists), .. WholeFile.Leftovers(full), .. AnswerJournal.All(full)];

    private static ImmutableArray<string> Names(IEnumerable<string> files) => [.. files.Select(f => Path.GetFileName(f))];

    private static Checked<Erased> NoFile() => Checked<Erased>.Bad(new Issue("not-a-file", string.Empty, "there is no such file, check the path"));

    /// <summary>The version before it goes with the old contents, and so do drafts, in which there is nothing.</summary>
    private static IReadOnlyList<string> Replace(string full, byte[] bytes)
    {
        // Held open over the step that decides, for disks without second names.
        using var old = Wiping.Open(full);
        IReadOnlyList<string> stuck;
        using (var removal = Removal.Begin(full, Others(full), replaces: true))
        {
            stuck = removal.End(() => WholeFile.Replace(full, bytes, keepPrevious: false)).StillThere;
        }

        if (stuck.Count == 0 && !OperatingSystem.IsWindows() && Wiping.HasOnly(old, 0))
        {
            Wiping.Overwrite(old);
        }

        return stuck;
    }

    /// <summary>A damaged profile must be erasable, some other file named by mistake must not.</summary>
    private static bool LooksLikeOne(string full)
    {
        using var stream = new FileStream(full, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        byte[] start = new byte[4096];
        int read = stream.ReadAtLeast(start, start.Length, throwOnEndOfStream: false);
        var text = start.AsSpan(0, read).TrimStart("\uFEFF \t\r\n"u8);
        return read == 0 || text.IndexOf("\"person\""u8) >= 0 || ProtectedFile.Is(text);
    }
}
