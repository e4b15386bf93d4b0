using System.Runtime.InteropServices;

namespace ToiletAidTui.Host;

/// <summary>Whether Windows says that a screen reader runs. Elsewhere nothing says so reliably, and nothing is guessed.</summary>
internal static partial class WindowsReader
{
    /// <summary>SPI_GETSCREENREADER.</summary>
    private const uint GetScreenReader = 0x0046;

    internal static bool Runs()
    {
        if (!OperatingSystem.IsWindows())
        {
            return false;
        }

        int on = 0;
        if (SystemParametersInfo(GetScreenReader, 0, ref on, 0) && on != 0)
        {
            return true;
        }

        if (Mutex.TryOpenExisting("NarratorRunning", out var narrator))
        {
            narrator.Dispose();
            return true;
        }

        return false;
    }

    [LibraryImport("user32.dll", EntryPoint = "SystemParametersInfoW")]
    [return: MarshalAs(UnmanagedType.Bool)]
    private static partial bool SystemParametersInfo(uint action, uint size, ref int value, uint update);
}
