namespace ToiletAid.App.FileSystem;

/// <summary>Why a file could not be used, in words.</summary>
public static class FileFault
{
    /// <summary>ENOSPC on Linux.</summary>
    private const int DiskFull = 28;

    /// <summary>EDQUOT on Linux.</summary>
    private const int QuotaFull = 122;

    /// <summary>EROFS on Linux.</summary>
    private const int ReadOnlyDisk = 30;

    /// <summary>ERROR_DISK_FULL on Windows.</summary>
    private const int WindowsDiskFull = unchecked((int)0x80070070);

    /// <summary>The reason as the end of a sentence, without the path.</summary>
    public static string Reason(Exception e) => e switch
    {
        UnauthorizedAccessException => "this account is not allowed to use it",
        ArgumentException => "that is not a file name",
        DirectoryNotFoundException => "its folder does not exist",
        FileNotFoundException => "there is no such file",
        NeedsPassphraseException => "the profile is protected and the passphrase is not known",
        FolderBusyException => "another program or PC is saving in its folder",
        FileInUseException or IOException { HResult: Disk.WindowsSharing } => "another program has it open, close it there or wait until it is done",
        IOException { HResult: DiskFull or WindowsDiskFull } => "the disk is full",
        IOException { HResult: QuotaFull } => "the disk space of this account is full",
        IOException { HResult: ReadOnlyDisk } => "the disk is read-only",
        _ => "the disk or share is not responding as it should",
    };
}
