using System.Runtime.InteropServices;

namespace ToiletAid.App.Store;

/// <summary>What the base library lacks for keeping files: flushing a folder, so that a file renamed in it stays renamed when the power fails, and second names.</summary>
internal static partial class DiskFolder
{
    /// <summary>O_RDONLY, the same number on Linux and macOS.</summary>
    private const int ReadOnly = 0;

    // errno values of Linux; some shares refuse to flush a folder, and then there is nothing more that could be done.
    private const int InvalidArgument = 22;
    private const int NotSupported = 95;
    private const int NotPermitted = 1;
    private const int BadDescriptor = 9;

    /// <summary>Flushes <paramref name="folder"/>. Windows has no such call, its file systems log renames themselves.</summary>
    /// <exception cref="IOException">The disk reports a fault.</exception>
    internal static void Flush(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        int descriptor = Open(folder, ReadOnly);
        if (descriptor < 0)
        {
            // A folder that may be written but not listed cannot be opened.
            return;
        }

        int error = Sync(descriptor) == 0 ? 0 : Marshal.GetLastPInvokeError();
        _ = Close(descriptor);
        if (error is not (0 or InvalidArgument or NotSupported or NotPermitted or BadDescriptor))
        {
            throw new IOException("the folder could not be flushed", error);
        }
    }

    /// <summary>Gives a file a second name; false where the disk or the system cannot.</summary>
    internal static bool TryLink(string path, string name) => !OperatingSystem.IsWindows() && Link(path, name) == 0;

    [LibraryImport("libc", EntryPoint = "link", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Link(string path, string name);

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync", SetLastError = true)]
    private static partial int Sync(int descriptor);

    [LibraryImport("libc", EntryPoint = "close")]
    private static partial int Close(int descriptor);
}
