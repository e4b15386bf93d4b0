namespace ToiletAid.App.Store;

/// <summary>
/// Replaces a file whole or not at all: written beside it, flushed to disk, renamed, folder flushed.
/// Whoever calls holds the folder's lock, so files left by a program that died can be told from those of one at work.
/// </summary>
internal static class AtomicFile
{
    /// <summary>Ending of the version before the current one.</summary>
    internal const string PreviousEnding = ".previous";

    private const string NewEnding = ".new";

    /// <summary>Where the previous version of a file is kept.</summary>
    internal static string Previous(string path) => path + PreviousEnding;

    /// <summary>Writes the file.</summary>
    /// <param name="path">Full path.</param>
    /// <param name="bytes">What it will hold.</param>
    /// <param name="keepPrevious">True to keep what it held before, under another name.</param>
    internal static void Write(string path, byte[] bytes, bool keepPrevious)
    {
        string folder = Path.GetDirectoryName(path)!;
        DeleteLeftovers(path);
        string beside = Path.Combine(folder, $".{Path.GetFileName(path)}.{Environment.ProcessId}{NewEnding}");
        try
        {
            using (var stream = OwnerOnly.Create(beside))
            {
                stream.Write(bytes);
                stream.Flush(flushToDisk: true);
            }

            if (keepPrevious && File.Exists(path))
            {
                KeepPrevious(path);
            }

            File.Move(beside, path, overwrite: true);
        }
        catch
        {
            TryDelete(beside);
            throw;
        }

        DiskFolder.Flush(folder);
    }

    /// <summary>Files that a program left when it died while it was writing.</summary>
    internal static string[] Leftovers(string path) =>
        Directory.GetFiles(Path.GetDirectoryName(path)!, $".{Path.GetFileName(path)}.*{NewEnding}");

    private static void DeleteLeftovers(string path)
    {
        foreach (string left in Leftovers(path))
        {
            File.Delete(left);
        }
    }

    /// <summary>The previous version gets a second name and is not moved, so that the current one is never missing.</summary>
    private static void KeepPrevious(string path)
    {
        string beside = Path.Combine(Path.GetDirectoryName(path)!, $".{Path.GetFileName(path)}.{Environment.ProcessId}-previous{NewEnding}");
        try
        {
            if (!DiskFolder.TryLink(path, beside))
            {
                using var stream = OwnerOnly.Create(beside);
                stream.Write(File.ReadAllBytes(path));
                stream.Flush(flushToDisk: true);
            }

            File.Move(beside, Previous(path), overwrite: true);
        }
        finally
        {
            // Also when all went well: renaming a file to another name of itself leaves both.
            TryDelete(beside);
        }
    }

    private static void TryDelete(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The first fault is the one to report; the next save deletes what was left.
        }
    }
}
