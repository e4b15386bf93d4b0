namespace ToiletAid.App.Store;

/// <summary>What cannot be promised about erased files, by the kind of disk.</summary>
public static class ErasureLimits
{
    /// <summary>One sentence a limit.</summary>
    /// <param name="path">A path on the disk.</param>
    public static IEnumerable<string> Of(string path)
    {
        yield return Format(path) switch
        {
            "btrfs" or "zfs" or "apfs" or "refs" or "f2fs" or "bcachefs" or "overlay" or "overlayfs" =>
                "This disk writes anew instead of over the old, so the old bytes stay until their place is needed.",
            "nfs" or "nfs4" or "cifs" or "smb" or "smb2" or "smb3" or "fuse" or "network" =>
                "This is a share, and its server may keep snapshots and backups that this program cannot reach.",
            "tmpfs" or "ramfs" => "This disk is memory, which may have been written out to another disk.",
            _ => "A solid state drive or the log of the file system may still hold old bytes.",
        };
        yield return "Backups, snapshots and copies on other PCs or in other programs are not erased.";
        yield return "Copies of a profile that was protected stay closed to anybody without the passphrase.";
    }

    private static string Format(string path)
    {
        try
        {
            // Of its folder: the file itself is gone by now.
            var drive = new DriveInfo(Path.GetDirectoryName(Path.GetFullPath(path))!);
            return drive.DriveType == DriveType.Network ? "network" : drive.DriveFormat.ToLowerInvariant();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return string.Empty;
        }
    }
}
