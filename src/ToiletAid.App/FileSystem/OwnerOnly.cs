using System.Runtime.Versioning;
using System.Security.AccessControl;
using System.Security.Principal;

namespace ToiletAid.App.FileSystem;

/// <summary>Files and folders that only their owner can open, from their first moment on.</summary>
internal static class OwnerOnly
{
    private const UnixFileMode OwnerMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    /// <summary>A new file, which no other program of ours can open meanwhile; an old one of that name is a fault. Nothing that a full disk refused is kept
    /// back and written at the end all the same.</summary>
    internal static FileStream Create(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            return CreateOnWindows(path);
        }

        return new(path, new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None, BufferSize = 0, UnixCreateMode = OwnerMode });
    }

    /// <summary>A folder; one that is there stays as it is, since others may have been let in on purpose.</summary>
    internal static void Folder(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(path);
            return;
        }

        Directory.CreateDirectory(path, OwnerMode | UnixFileMode.UserExecute);
    }

    [SupportedOSPlatform("windows")]
    private static FileStream CreateOnWindows(string path)
    {
        using var me = WindowsIdentity.GetCurrent();
        var rights = new FileSecurity();

        // Without this the rights of the folder would be added to ours.
        rights.SetAccessRuleProtection(isProtected: true, preserveInheritance: false);
        rights.AddAccessRule(new(me.User!, FileSystemRights.FullControl, AccessControlType.Allow));
        return new FileInfo(path).Create(FileMode.CreateNew, FileSystemRights.Modify, FileShare.None, bufferSize: 1, FileOptions.None, rights);
    }
}
