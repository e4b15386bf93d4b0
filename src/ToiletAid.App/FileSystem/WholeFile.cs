namespace ToiletAid.App.FileSystem;

/// <summary>
/// Writes a file whole or not at all: beside it, flushed to disk, renamed, folder flushed. Only its owner may read it; profiles may be read by those too
/// who may write to their folder.
/// Every writer of the program uses it but those that add to a file bit by bit: drafts of answers, and the list of refused profiles.
/// </summary>
public static class WholeFile
{
    /// <summary>Ending of the version before the current one.</summary>
    internal const string PreviousEnding = ".previous";

    /// <summary>Ending of what is being put in place under the lock of its folder: whoever has the lock knows that nobody writes it any more.</summary>
    internal const string NewEnding = ".new";

    private const string PartEnding = ".part";

    private const string SecondName = "-previous";

    /// <summary>Writes. An older file stays until then.</summary>
    /// <param name="path">Where to.</param>
    /// <param name="bytes">What it will hold.</param>
    /// <param name="keepRights">True to leave a file that is there as open to others as it was made; for files that tell nothing about a person.</param>
    /// <exception cref="IOException">It could not be written; nothing was changed.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; nothing was changed.</exception>
    public static void Write(string path, byte[] bytes, bool keepRights = false)
    {
        if (IsDevice(Path.GetFullPath(path)))
        {
            // Putting a file in its place would take it away from every program of the machine.
            using var device = new FileStream(path, FileMode.Open, FileAccess.Write, FileShare.ReadWrite, bufferSize: 0);
            device.Write(bytes);
            return;
        }

        string full = RealPath(path);
        if (Directory.Exists(full))
        {
            throw new IOException("a folder has that name");
        }

        Put(full, bytes, keepPrevious: false, keepRights, Disk.Create, PartEnding);
    }

    /// <summary>Replaces a file that is locked by the caller, who therefore may delete what a program left that died while it wrote.</summary>
    /// <param name="full">Full path.</param>
    /// <param name="bytes">What it will hold.</param>
    /// <param name="keepPrevious">True to keep what it held before, under another name.</param>
    internal static void Replace(string full, byte[] bytes, bool keepPrevious)
    {
        foreach (string left in Leftovers(full))
        {
            Disk.Delete(left);
        }

        Put(full, bytes, keepPrevious, keepRights: false, FolderRights.Create, NewEnding);
    }

    /// <summary>Writes the same again under another name, whole or not at all, in a folder that the caller holds.</summary>
    internal static void Copy(string full, string name)
    {
        string beside = NewBeside(full, string.Empty, NewEnding);
        using (var stream = FolderRights.Create(beside))
        {
            Disk.Write(stream, File.ReadAllBytes(full));
            Disk.Flush(stream);
        }

        Disk.Move(beside, name);
    }

    /// <summary>True for a file that a program left when it died while it wrote under the lock.</summary>
    internal static bool IsHalfWritten(string path)
    {
        string[] parts = Path.GetFileName(path).Split('.');
        return parts.Length >= 4 && parts[0].Length == 0 && "." + parts[^1] == NewEnding && Guid.TryParseExact(parts[^2].Replace(SecondName, string.Empty, StringComparison.Ordinal), "N", out _);
    }

    /// <summary>Takes such a file away. What may be a second name of the profile is never overwritten.</summary>
    internal static void RemoveHalfWritten(string path)
    {
        if (path.EndsWith(SecondName + NewEnding, StringComparison.Ordinal))
        {
            Disk.Delete(path);
        }
        else
        {
            Wiping.Delete(path);
        }
    }

    /// <summary>Where the previous version of a file is kept.</summary>
    internal static string Previous(string path) => path + PreviousEnding;

    /// <summary>Files that a program left when it died while it was writing.</summary>
    internal static string[] Leftovers(string path) => [.. Beside(path, NewEnding).Where(IsHalfWritten)];

    /// <summary>Files beside a file that are called after it: a dot, its name, a dot, what tells them apart, the ending.</summary>
    /// <param name="path">Full path of the file, there or not.</param>
    /// <param name="ending">With its dot.</param>
    /// <remarks>The name is compared and not searched for: one with an asterisk in it would find those of other files. What tells them apart has no dot,
    /// or those of a.b would be taken for those of a.</remarks>
    internal static string[] Beside(string path, string ending)
    {
        string start = $".{Path.GetFileName(path)}.";
        return [.. Directory.EnumerateFiles(Path.GetDirectoryName(path)!)
            .Where(f => FileFacts.IsOrdinary(f) && Path.GetFileName(f) is var name && name.StartsWith(start, StringComparison.Ordinal) && name.EndsWith(ending, StringComparison.Ordinal)
                && name.Length > start.Length + ending.Length && !name[start.Length..^ending.Length].Contains('.', StringComparison.Ordinal))];
    }

    /// <summary>Where a file really is, so that a link to it is not replaced by a copy.</summary>
    internal static string RealPath(string path) =>
        new FileInfo(path).LinkTarget is not null && File.ResolveLinkTarget(path, returnFinalTarget: true) is { } target ? target.FullName : Path.GetFullPath(path);

    /// <summary>True for what a program writes through to, such as /dev/stderr; false where there is no such thing.</summary>
    internal static bool IsDevice(string full) =>
        !OperatingSystem.IsWindows() && full.StartsWith("/dev/", StringComparison.Ordinal) && !full.StartsWith("/dev/shm/", StringComparison.Ordinal) && File.Exists(full);

    private static void Put(string full, byte[] bytes, bool keepPrevious, bool keepRights, Func<string, FileStream> create, string ending)
    {
        string folder = Path.GetDirectoryName(full)!;
        string beside = NewBeside(full, string.Empty, ending);
        try
        {
            using (var stream = create(beside))
            {
                Disk.Write(stream, bytes);
                if (keepRights && !OperatingSystem.IsWindows() && File.Exists(full))
                {
                    Disk.SetMode(stream, File.GetUnixFileMode(full));
                }

                Disk.Flush(stream);
            }

            if (keepPrevious && File.Exists(full))
            {
                KeepPrevious(full);
            }

            Disk.Move(beside, full);
        }
        catch
        {
            TryDelete(beside);
            throw;
        }

        DiskFolder.Flush(folder);
    }

    /// <summary>The previous version gets a second name and is not moved, so that the current one is never missing.</summary>
    private static void KeepPrevious(string path)
    {
        string beside = NewBeside(path, SecondName, NewEnding);
        try
        {
            if (!Disk.TryLink(path, beside))
            {
                using var stream = FolderRights.Create(beside);
                Disk.Write(stream, File.ReadAllBytes(path));
                Disk.Flush(stream);
            }

            Disk.Move(beside, Previous(path));
        }
        finally
        {
            // Also when all went well: renaming a file to another name of itself leaves both.
            TryDelete(beside);
        }
    }

    /// <summary>No other program and no other thread writes under that name.</summary>
    private static string NewBeside(string path, string what, string ending) =>
        Path.Combine(Path.GetDirectoryName(path)!, $".{Path.GetFileName(path)}.{Guid.NewGuid():N}{what}{ending}");

    private static void TryDelete(string path)
    {
        try
        {
            Disk.Delete(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The first fault is the one to report; the next save in the folder deletes what was left.
        }
    }
}
