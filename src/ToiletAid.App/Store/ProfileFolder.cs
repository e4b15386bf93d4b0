using ToiletAid.App.FileSystem;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Store;

/// <summary>The folder in which a user's profiles are kept, so that a code is enough to find one.</summary>
/// <param name="environment">The environment, which names the user's folder for data.</param>
public sealed class ProfileFolder(Func<string, string?> environment)
{
    /// <summary>Ending of a profile.</summary>
    public const string Ending = ".json";

    /// <summary>Its absolute path, whether it is there or not; null when the system names no folder for data. The current folder would be no place for a profile.</summary>
    public string? Path { get; } = OwnFolder.Data(environment) is { Length: > 0 } data ? System.IO.Path.Combine(data, "profiles") : null;

    /// <summary>The file that is meant: a code stands for its file in the folder, all else is a path.</summary>
    /// <param name="pathOrCode">As typed.</param>
    /// <param name="folder">The folder as typed, or null for this one.</param>
    /// <returns>A path; null for a code that stands for no file, because there is no folder.</returns>
    public string? Resolve(string pathOrCode, string? folder) =>
        PersonCode.Fault(pathOrCode) is not null ? pathOrCode
        : (folder ?? Path) is { } place ? System.IO.Path.Combine(place, pathOrCode + Ending)
        : null;

    /// <summary>The file that is meant where one is read: what is there under that name, else what the code stands for.</summary>
    /// <param name="pathOrCode">As typed.</param>
    /// <returns>A path; as typed where it can be nothing else.</returns>
    public string Find(string pathOrCode) => System.IO.Path.Exists(pathOrCode) ? pathOrCode : Resolve(pathOrCode, null) ?? pathOrCode;

    /// <summary>Codes of the profiles in the folder with the day on which each was changed, the last one first. What cannot be listed is no profile.</summary>
    public IEnumerable<(string Code, DateOnly Changed)> Codes()
    {
        try
        {
            return Path is null || !Directory.Exists(Path) ? [] :
            [
                .. new DirectoryInfo(Path).EnumerateFiles("*" + Ending)
                    .Select(f => (Code: System.IO.Path.GetFileNameWithoutExtension(f.Name), f.LastWriteTime))
                    .Where(f => PersonCode.Fault(f.Code) is null)
                    .OrderByDescending(f => f.LastWriteTime).ThenBy(f => f.Code, StringComparer.Ordinal)
                    .Select(f => (f.Code, DateOnly.FromDateTime(f.LastWriteTime))),
            ];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>Makes the folder of a file when it is this one, readable by its owner only.</summary>
    /// <param name="path">The file, there or not.</param>
    /// <exception cref="IOException">It could not be made.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be made.</exception>
    public void Prepare(string path)
    {
        string? folder = System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(path));
        if (folder is not null && folder == Path)
        {
            OwnerOnly.Folder(folder);
        }
    }
}
