using ToiletAid.App.Files;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Store;

/// <summary>The folder in which profiles are kept, so that a code is enough to find one.</summary>
public static class ProfileFolder
{
    /// <summary>Ending of a profile.</summary>
    public const string Ending = ".json";

    /// <summary>The folder when none is named: in the data folder of the user, so that another user of the PC has another one.</summary>
    public static string Default =>
        Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "toiletaid", "profiles");

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
