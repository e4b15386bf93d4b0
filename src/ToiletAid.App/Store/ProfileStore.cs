using System.Collections.Immutable;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Protection;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Store;

/// <summary>Changes profiles so that nothing is lost: under a lock, from the newest version on disk, whole or not at all.</summary>
/// <param name="questions">The questions that answers are checked against.</param>
public sealed class ProfileStore(QuestionSet questions)
{
    /// <summary>How long a save waits for another one in the same folder.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(15);

    private readonly ProfileFile _files = new(questions);

    /// <summary>Rounds of a new protection.</summary>
    internal int Iterations { get; init; } = Protector.Iterations;
    private readonly ProfileWriter _writer = new(questions);

    /// <summary>Opens a profile, to show it or to add to it later.</summary>
    /// <param name="path">Path of a file.</param>
    /// <param name="passphrase">Asked when it is protected.</param>
    public Checked<StoredProfile> Open(string path, Func<string?>? passphrase = null)
    {
        var read = _files.Open(path, passphrase);
        // It lies beside the file itself, also where that was opened through a link.
        string previous = WholeFile.Previous(File.Exists(path) ? WholeFile.RealPath(path) : path);
        if (read.Value is not null || read.Issues[0].Code is "needs-passphrase" or "wrong-passphrase" or "not-a-file" || !File.Exists(previous)
            || (_files.Open(previous, passphrase) is { Value: null } before && before.Issues[0].Code is not ("needs-passphrase" or "wrong-passphrase")))
        {
            return read;
        }

        return Checked<StoredProfile>.Bad(read.Issues.Append(new("previous", string.Empty, $"the version before it is kept in {Path.GetFileName(previous)}, copy that over it to go back")));
    }

    /// <summary>Adds a session. What others saved since <paramref name="seen"/> was opened is kept, and told.</summary>
    /// <param name="path">Path of a file, new or not.</param>
    /// <param name="person">Code of the person.</param>
    /// <param name="session">The new session.</param>
    /// <param name="seen">The profile as it was opened, or null for a new one.</param>
    /// <param name="passphrase">Asked when the profile on disk is protected.</param>
    /// <param name="startsProtected">True when a new file takes the place of one that was protected: then it is protected too.</param>
    /// <exception cref="IOException">It could not be written; what was on disk is still there.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; what was on disk is still there.</exception>
    public Checked<Saved> Add(string path, string person, Session session, StoredProfile? seen, Func<string?>? passphrase = null, bool startsProtected = false)
    {
        string full = WholeFile.RealPath(path);
        using var held = FolderLock.Take(Path.GetDirectoryName(full)!, Patience);
        StoredProfile? onDisk = null;
        string? known = null;
        if (File.Exists(full))
        {
            var read = _files.Open(full, () => known = passphrase?.Invoke());
            if (!read.TryGet(out onDisk))
            {
                return Checked<Saved>.Bad(read.Issues);
            }

            if (onDisk.Profile.Person != person)
            {
                return Checked<Saved>.Bad(new Issue("other-person", string.Empty, $"it is the profile of {onDisk.Profile.Person} and not of {person}, save in another file"));
            }
        }
        else if (seen is not null)
        {
            return Checked<Saved>.Bad(new Issue("removed", string.Empty, "it was removed since it was opened, so nothing was written, save again to start a new file"));
        }
        else if (startsProtected && (known = passphrase?.Invoke()) is null)
        {
            return Checked<Saved>.Bad(new Issue("needs-passphrase", string.Empty, "the file that was removed was protected and there is no passphrase, type it when asked or give the option --passphrase-file"));
        }

        ImmutableArray<Session> there = onDisk?.Profile.Sessions ?? [], opened = seen?.Profile.Sessions ?? [];
        if (!opened.IsEmpty && SessionMerge.Missing(there, opened, _writer).Length == SessionMerge.Missing([], opened, _writer).Length)
        {
            // Whoever erased it wants none of it back.
            return Checked<Saved>.Bad(new Issue("removed", string.Empty, "it was removed since it was opened and another was begun in its place, so nothing was written, save again to add this visit to it"));
        }

        // After a visit of a later day only; where that was removed since, nothing is late.
        session = session with { IsLate = session.IsLate && there.Any(s => s.Date > session.Date) };
        var elsewhere = SessionMerge.Missing(opened, there, _writer);
        var added = SessionMerge.Missing(there, opened.Add(session), _writer);
        if (added.IsEmpty)
        {
            return Checked<Saved>.Good(new(onDisk!, elsewhere, WasThere: true));
        }

        int revision = (onDisk?.Revision ?? 0) + 1;
        var profile = new Profile(person, SessionMerge.Together(there, added));
        byte[] bytes = _writer.Sealed(profile, revision);
        bool isProtected = onDisk?.IsProtected ?? startsProtected;
        WholeFile.Replace(full, isProtected ? new Protector(known!, Iterations).File(bytes) : bytes, keepPrevious: true);
        return Checked<Saved>.Good(new(new(profile, revision, Seal.Whole, isProtected), elsewhere, WasThere: false));
    }
}
