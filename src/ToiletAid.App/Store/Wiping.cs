namespace ToiletAid.App.Store;

/// <summary>Overwrites before it deletes. Whether the disk forgets is another matter, which <see cref="ErasureLimits"/> words.</summary>
internal static class Wiping
{
    /// <summary>Overwrites and deletes a file.</summary>
    /// <exception cref="IOException">It could not be deleted.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be deleted.</exception>
    internal static void Delete(string path)
    {
        // The one that is opened is deleted: a link is removed and what it points to is left.
        if (new FileInfo(path).LinkTarget is null)
        {
            using var file = Open(path);
            Overwrite(file);
        }

        File.Delete(path);
    }

    /// <summary>Opens a file to overwrite it once something else stands in its place.</summary>
    internal static FileStream Open(string path) => new(path, FileMode.Open, FileAccess.Write, FileShare.ReadWrite | FileShare.Delete);

    /// <summary>Zeros where the contents were.</summary>
    internal static void Overwrite(FileStream file)
    {
        byte[] zeros = new byte[4096];
        file.Position = 0;
        for (long left = file.Length; left > 0; left -= zeros.Length)
        {
            file.Write(zeros, 0, (int)Math.Min(left, zeros.Length));
        }

        file.Flush(flushToDisk: true);
    }
}
