using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Protection;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Store;

/// <summary>Profiles on disk.</summary>
/// <param name="questions">The questions that answers are checked against.</param>
public sealed class ProfileFile(QuestionSet questions)
{
    private readonly ProfileReader _reader = new(questions);
    private readonly ProfileWriter _writer = new(questions);

    /// <summary>Largest file that is read: base64 makes a protected profile a third larger than what it holds.</summary>
    private const int MostBytes = (ProfileReader.MostBytes / 3 * 4) + 4096;

    /// <summary>Reads a profile, open or protected.</summary>
    /// <param name="path">Path of a regular file.</param>
    /// <param name="passphrase">Asked for the passphrase when the profile is protected; it gives null when there is none.</param>
    public Checked<Profile> Read(string path, Func<string?>? passphrase = null)
    {
        var read = Open(path, passphrase);
        return read.TryGet(out var stored) ? Checked<Profile>.Good(stored.Profile) : Checked<Profile>.Bad(read.Issues);
    }

    /// <summary>Reads a profile with what the store noted about it.</summary>
    /// <param name="path">Path of a regular file.</param>
    /// <param name="passphrase">Asked for the passphrase when the profile is protected; it gives null when there is none.</param>
    public Checked<StoredProfile> Open(string path, Func<string?>? passphrase = null)
    {
        var read = Bytes(path);
        return read.TryGet(out byte[]? bytes) ? Open(bytes, passphrase) : Checked<StoredProfile>.Bad(read.Issues);
    }

    /// <summary>Writes a profile whole or not at all, in place of what is there. To add a session use the store.</summary>
    /// <exception cref="IOException">It could not be written; nothing was changed.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; nothing was changed.</exception>
    public void Write(Profile profile, string path)
    {
        string full = WholeFile.RealPath(path);
        using var held = FolderLock.Take(Path.GetDirectoryName(full)!, ProfileStore.Patience);
        WholeFile.Replace(full, _writer.Sealed(profile, 1), keepPrevious: false);
    }

    /// <summary>True when a file is there and needs a passphrase.</summary>
    public static bool IsProtected(string path) => Bytes(path).TryGet(out byte[]? bytes) && ProtectedFile.Is(bytes);

    /// <summary>Reads a profile from the bytes of its file.</summary>
    internal Checked<StoredProfile> Open(byte[] bytes, Func<string?>? passphrase)
    {
        if (!ProtectedFile.Is(bytes))
        {
            return _reader.ReadStored(bytes);
        }

        if (passphrase?.Invoke() is not { } known)
        {
            return Checked<StoredProfile>.Bad(new Issue("needs-passphrase", string.Empty, "it is protected and there is no passphrase, type it when asked or give the option --passphrase-file"));
        }

        var opened = ProtectedFile.Open(bytes, known);
        if (!opened.TryGet(out byte[]? plain))
        {
            return Checked<StoredProfile>.Bad(opened.Issues);
        }

        var read = _reader.ReadStored(plain);
        return read.TryGet(out var stored) ? Checked<StoredProfile>.Good(stored with { IsProtected = true }) : read;
    }

    /// <summary>The bytes of a file that could be a profile.</summary>
    internal static Checked<byte[]> Bytes(string path) => RegularFile.Read(path, MostBytes, "profile");
}
