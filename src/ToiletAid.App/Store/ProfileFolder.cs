using ToiletAid.App.Files;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Store;

/// <summary>The folder in which profiles are kept, so that a code is enough to find one.</summary>
public static class ProfileFolder
{
    /// <summary>Ending of a profile.</summary>
    public const string Ending = ".json";

    /// <summary>The folder when none is named, in the user's own folder for data.</summary>
    /// <exception cref="IOException">The system names no folder for data. The current folder would be no place for a profile.</exception>
    public static string Default => OwnFolder.Data(Environment.GetEnvironmentVariable) is { Length: > 0 } folder
        ? Path.Combine(folder, "profiles")
        : throw new IOException("this account has no folder for data");

    /// <summary>The file that is meant: a code stands for its file in the folder, all else is a path.</summary>
    /// <param name="pathOrCode">As typed.</param>
    /// <param name="folder">The folder as typed, or null for the usual one.</param>
    public static string Resolve(string pathOrCode, string? folder) =>
        PersonCode.Fault(pathOrCode) is null ? Path.Combine(folder ?? Default, pathOrCode + Ending) : pathOrCode;

    /// <summary>Makes the folder of a file when it is the usual one, readable by its owner only.</summary>
    /// <exception cref="IOException">It could not be made.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be made.</exception>
    public static void Prepare(string path)
    {
        string? folder = Path.GetDirectoryName(Path.GetFullPath(path));
        if (folder == Path.GetFullPath(Default))
        {
            OwnerOnly.Folder(folder);
        }
    }
}
