namespace ToiletAid.App.FileSystem;

/// <summary>Overwrites before it deletes. Whether the disk forgets is another matter.</summary>
internal static class Wiping
{
    /// <summary>Overwrites and deletes a file. One that has names besides ours is only deleted: a backup made of second names keeps what it holds.</summary>
    /// <param name="path">The file.</param>
    /// <param name="ourNames">How many of its names are to go.</param>
    /// <returns>False when it was not overwritten, because other names of it are left.</returns>
    /// <exception cref="IOException">It could not be deleted.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be deleted.</exception>
    internal static bool Delete(string path, int ourNames = 1)
    {
        bool isAlone = true;

        // The one that is opened is deleted: a link is removed and what it points to is left. One with nothing in it may be another account's.
        if (new FileInfo(path) is { LinkTarget: null, Length: > 0 })
        {
            using var file = Open(path);
            isAlone = FileFacts.IsItself(file, path) && HasOnly(file, ourNames);
            if (isAlone)
            {
                Overwrite(file);
            }
        }

        Disk.Delete(path);
        return isAlone;
    }

    /// <summary>True when an open file has no names but so many.</summary>
    internal static bool HasOnly(FileStream file, int names) => FileFacts.Of(file) is not { } facts || facts.Names <= names;

    /// <summary>Opens a file to overwrite it once something else stands in its place.</summary>
    internal static FileStream Open(string path) => new(path, FileMode.Open, FileAccess.Write, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0);

    /// <summary>Zeros where the contents were.</summary>
    internal static void Overwrite(FileStream file)
    {
        byte[] zeros = new byte[4096];
        file.Position = 0;
        for (long left = file.Length; left > 0; left -= zeros.Length)
        {
            Disk.Write(file, zeros.AsSpan(0, (int)Math.Min(left, zeros.Length)));
        }

        Disk.Flush(file);
    }
}
