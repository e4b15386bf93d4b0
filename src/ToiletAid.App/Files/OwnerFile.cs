namespace ToiletAid.App.Files;

/// <summary>Files that only their owner may read, written whole or not at all.</summary>
public static class OwnerFile
{
    /// <summary>Writes first beside the file, then puts that in its place. The old file stays until then.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="write">Writes the content.</param>
    /// <exception cref="IOException">It could not be written; nothing was changed.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; nothing was changed.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        string full = Path.GetFullPath(path);
        string beside = $"{full}.{Environment.ProcessId}.new";
        try
        {
            var options = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write };
            if (!OperatingSystem.IsWindows())
            {
                options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
            }

            using (var stream = new FileStream(beside, options))
            {
                write(stream);
                stream.Flush(flushToDisk: true);
            }

            File.Move(beside, full, overwrite: true);
        }
        catch
        {
            TryDelete(beside);
            throw;
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
            // What cannot be deleted holds nothing that the person did not just enter, and the first fault is the one to report.
        }
    }
}
