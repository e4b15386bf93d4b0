using System.Runtime.InteropServices;

namespace ToiletAid.TestKit;

/// <summary>Reads a file past the locks of our own programs, as other programs do.</summary>
internal static partial class RawFile
{
    internal static byte[] Read(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            return File.ReadAllBytes(path);
        }

        byte[] bytes = new byte[new FileInfo(path).Length];
        int file = Open(path, 0);
        if (file < 0)
        {
            throw new UnauthorizedAccessException(path);
        }

        try
        {
            return bytes[..(int)Math.Max(0, Read(file, bytes, (nuint)bytes.Length))];
        }
        finally
        {
            _ = Close(file);
        }
    }

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "read")]
    private static partial nint Read(int file, [Out] byte[] bytes, nuint count);

    [LibraryImport("libc", EntryPoint = "close")]
    private static partial int Close(int file);
}
