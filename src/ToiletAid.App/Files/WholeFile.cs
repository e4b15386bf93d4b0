namespace ToiletAid.App.Files;

/// <summary>Writes a file whole or not at all: first beside it, then in its place. An older file stays until then.</summary>
public static class WholeFile
{
    /// <summary>Writes.</summary>
    /// <param name="path">Where to.</param>
    /// <param name="write">Writes the content.</param>
    /// <exception cref="IOException">It could not be written; nothing was changed.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; nothing was changed.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        string full = Path.GetFullPath(path);
        if (Directory.Exists(full))
        {
            throw new IOException("a folder has that name");
        }

        string beside = $"{full}.{Environment.ProcessId}.new";
        try
        {
            using (var stream = new FileStream(beside, FileMode.Create, FileAccess.Write))
            {
                write(stream);
                stream.Flush(flushToDisk: true);
            }

            File.Move(beside, full, overwrite: true);
        }
        catch
        {
            try
            {
                File.Delete(beside);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                // The first fault is the one to report.
            }

            throw;
        }
    }
}
