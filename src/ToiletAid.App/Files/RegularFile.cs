using ToiletAid.App.FileSystem;

namespace ToiletAid.App.Files;

/// <summary>Reads a whole file that somebody named, or says why it is not one that can be meant.</summary>
internal static class RegularFile
{
    /// <summary>The bytes of a file.</summary>
    /// <param name="path">Path of a regular file.</param>
    /// <param name="mostBytes">Largest file that is read.</param>
    /// <param name="what">What it should hold, such as profile.</param>
    internal static Checked<byte[]> Read(string path, int mostBytes, string what)
    {
        try
        {
            var file = new FileInfo(path);
            if (!file.Exists)
            {
                return Refused("not-a-file", Directory.Exists(path) ? "it is a folder, give a file" : "there is no such file, check the path");
            }

            // Pipes and devices show no length, and opening one may never end.
            if (file.Length == 0)
            {
                return Refused("empty", $"it is empty or not a regular file, give a file with a {what}");
            }

            // Deleting is shared, or a reader on Windows would keep the store from putting a new version in its place.
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            if (stream.Length > mostBytes)
            {
                return Refused("too-large", $"it is larger than any {what}, check that it is the right file");
            }

            byte[] bytes = new byte[stream.Length];
            int read = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return Checked<byte[]>.Good(read == bytes.Length ? bytes : bytes[..read]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return Refused("cannot-read", $"it cannot be read, {FileFault.Reason(e)}");
        }
    }

    private static Checked<byte[]> Refused(string code, string message) => Checked<byte[]>.Bad(new Issue(code, string.Empty, message));
}
