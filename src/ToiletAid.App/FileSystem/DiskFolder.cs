using System.Runtime.InteropServices;

namespace ToiletAid.App.FileSystem;

/// <summary>What the base library lacks for keeping files: flushing a folder, so that a file renamed in it stays renamed when the power fails, and second names.</summary>
internal static partial class DiskFolder
{
    /// <summary>O_RDONLY, the same number on Linux and macOS.</summary>
    private const int ReadOnly = 0;

    /// <summary>Flushes <paramref name="folder"/>, as far as the disk does it. Windows has no such call, its file systems log renames themselves.</summary>
    /// <remarks>A fault is not told: what was renamed is in its place, and to say that it was not written would not be so.</remarks>
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

        _ = Sync(descriptor);
        _ = Close(descriptor);
    }

    /// <summary>Gives a file a second name; false where the disk or the system cannot.</summary>
    internal static bool TryLink(string path, string name) => !OperatingSystem.IsWindows() && Link(path, name) == 0;

    [LibraryImport("libc", EntryPoint = "link", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Link(string path, string name);

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync")]
    private static partial int Sync(int descriptor);

    [LibraryImport("libc", EntryPoint = "close")]
    private static partial int Close(int descriptor);
}
