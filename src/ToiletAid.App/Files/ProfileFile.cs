using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Files;

/// <summary>Profiles on disk.</summary>
/// <param name="questions">The questions that answers are checked against.</param>
public sealed class ProfileFile(QuestionSet questions)
{
    private readonly ProfileReader _reader = new(questions);
    private readonly ProfileWriter _writer = new(questions);

    /// <summary>Reads a profile.</summary>
    /// <param name="path">Path of a regular file.</param>
    public Checked<Profile> Read(string path)
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
                return Refused("empty", "it is empty or not a regular file, give a file with one profile");
            }

            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            if (stream.Length > ProfileReader.MostBytes)
            {
                return Refused("too-large", "it is larger than any profile, check that it is the right file");
            }

            byte[] bytes = new byte[stream.Length];
            int read = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return _reader.Read(bytes.AsMemory(0, read));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Refused("cannot-read", $"it cannot be read, {Reason(e)}");
        }
    }

    /// <summary>Writes a profile whole or not at all: first beside the file, then in its place. The old file stays until then.</summary>
    /// <exception cref="IOException">It could not be written; nothing was changed.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; nothing was changed.</exception>
    public void Write(Profile profile, string path) => OwnerFile.Write(path, stream => _writer.Write(profile, stream));

    /// <summary>Why a file could not be used, as the end of a sentence without the path.</summary>
    public static string Reason(Exception e) => e switch
    {
        UnauthorizedAccessException => "this account may not use it",
        DirectoryNotFoundException => "its folder does not exist",
        FileNotFoundException => "there is no such file",
        IOException { HResult: DiskFull or WindowsDiskFull } => "the disk is full",
        _ => "the disk or the share does not answer as it should",
    };

    /// <summary>ENOSPC on Linux.</summary>
    private const int DiskFull = 28;

    /// <summary>ERROR_DISK_FULL on Windows.</summary>
    private const int WindowsDiskFull = unchecked((int)0x80070070);

    private static Checked<Profile> Refused(string code, string message) => Checked<Profile>.Bad(new Issue(code, string.Empty, message));
}
