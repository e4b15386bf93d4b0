using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace ToiletAid.App.FileSystem;

/// <summary>
/// Who may use what the store makes: its owner, and those who may write to the folder, or a share would serve only the account that came first.
/// Where everybody may write but only owners may remove, as in /tmp, nobody else is let in.
/// </summary>
internal static partial class FolderRights
{
    private const UnixFileMode Owner = UnixFileMode.UserRead | UnixFileMode.UserWrite;
    private const UnixFileMode Group = UnixFileMode.GroupRead | UnixFileMode.GroupWrite;
    private const UnixFileMode Others = UnixFileMode.OtherRead | UnixFileMode.OtherWrite;
    private const uint GroupWrites = 0x18;
    private const uint OthersWrite = 0x3;

    /// <summary>chown(2) leaves the owner as it is.</summary>
    private const uint Same = uint.MaxValue;

    /// <summary>A new file, with the rights that its folder gives from before anything is written to it.</summary>
    internal static FileStream Create(string path)
    {
        var file = Disk.Create(path);
        try
        {
            Give(file, Path.GetDirectoryName(path)!);
            return file;
        }
        catch
        {
            file.Dispose();
            throw;
        }
    }

    /// <summary>A new file to be locked, in which there is never anything: whoever may make files in the folder may lock it, for which reading is enough.</summary>
    internal static FileStream CreateLock(string path)
    {
        var file = Create(path);
        if (!OperatingSystem.IsWindows() && FileFacts.Of(Path.GetDirectoryName(path)!) is { } place && (place.Mode & FileFacts.Sticky) != 0)
        {
            Disk.SetMode(file, Owner | UnixFileMode.GroupRead | UnixFileMode.OtherRead);
        }

        return file;
    }

    private static void Give(FileStream file, string folder)
    {
        if (OperatingSystem.IsWindows() || FileFacts.Of(folder) is not { } place || (place.Mode & FileFacts.Sticky) != 0)
        {
            return;
        }

        var mode = Owner;
        if ((place.Mode & GroupWrites) == GroupWrites && BelongsTo(file, place.Group))
        {
            mode |= Group;
        }

        if ((place.Mode & OthersWrite) == OthersWrite)
        {
            mode |= Others | Group;
        }

        if (mode != Owner)
        {
            Disk.SetMode(file, mode);
        }
    }

    private static bool BelongsTo(FileStream file, uint group) =>
        FileFacts.Of(file) is { } facts && (facts.Group == group || ChangeOwner(file.SafeFileHandle, Same, group) == 0);

    [LibraryImport("libc", EntryPoint = "fchown")]
    private static partial int ChangeOwner(SafeFileHandle file, uint owner, uint group);
}
