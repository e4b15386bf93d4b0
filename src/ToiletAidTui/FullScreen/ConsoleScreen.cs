using System.ComponentModel;
using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace ToiletAidTui.FullScreen;

/// <summary>
/// The console of Windows, written to by its own calls, so that nothing depends on whether it takes escape sequences. Each row in which something changed
/// is written whole and by one call, and the cursor moves once: readers there compare rows, or are told of each call.
/// </summary>
internal sealed partial class ConsoleScreen : IDisposable
{
    private const uint ReadAndWrite = 0xC0000000;
    private const uint Shared = 3;
    private const uint Existing = 3;

    /// <summary>Light grey and white on black.</summary>
    private const ushort Plain = 0x07;
    private const ushort HighContrast = 0x0F;

    private readonly SafeFileHandle _console;
    private readonly ushort _colours;
    private string[]? _before;
    private (int Row, int Column)? _cursor;

    /// <summary>Opens what is shown now.</summary>
    /// <param name="highContrast">True for white on black.</param>
    /// <exception cref="IOException">There is no console.</exception>
    internal ConsoleScreen(bool highContrast)
    {
        _colours = highContrast ? HighContrast : Plain;
        _console = Open("CONOUT$", ReadAndWrite, Shared, 0, Existing, 0, 0);
        if (_console.IsInvalid)
        {
            throw new IOException("there is no console", new Win32Exception(Marshal.GetLastPInvokeError()));
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _console.Dispose();

    /// <summary>Writes the rows that changed and puts the cursor on the answer.</summary>
    /// <param name="now">All rows, each as wide as the screen.</param>
    /// <param name="rows">What was drawn.</param>
    /// <exception cref="IOException">The console is gone.</exception>
    internal void Show(string[] now, ScreenRows rows)
    {
        if (!GetInfo(_console, out var info))
        {
            throw new IOException("the console is gone", new Win32Exception(Marshal.GetLastPInvokeError()));
        }

        if (_before is null || _before.Length != now.Length || _before[0].Length != now[0].Length)
        {
            Clear(info);
            _before = [.. now.Select(r => new string(' ', r.Length))];
            _cursor = null;
        }

        for (int y = 0; y < now.Length; y++)
        {
            if (now[y] != _before[y])
            {
                _ = WriteAt(_console, now[y], (uint)now[y].Length, new((short)info.Left, (short)(info.Top + y)), out _);
            }
        }

        _before = now;
        var cursor = (rows.CursorRow, rows.CursorColumn);
        if (_cursor != cursor)
        {
            _ = MoveTo(_console, new((short)(info.Left + cursor.CursorColumn), (short)(info.Top + cursor.CursorRow)));
            _cursor = cursor;
        }
    }

    private void Clear(in Info info)
    {
        uint cells = (uint)((info.Right - info.Left + 1) * (info.Bottom - info.Top + 1));
        var start = new Place((short)info.Left, (short)info.Top);
        _ = Fill(_console, ' ', cells, start, out _);
        _ = Colour(_console, _colours, cells, start, out _);
        var cursor = new Cursor { Size = 25, Visible = 1 };
        _ = SetCursor(_console, ref cursor);
    }

    [StructLayout(LayoutKind.Sequential)]
    private readonly struct Place(short x, short y)
    {
        private readonly short _x = x;
        private readonly short _y = y;
    }

    [StructLayout(LayoutKind.Sequential)]
    private struct Cursor
    {
        public uint Size;
        public int Visible;
    }

    /// <summary>CONSOLE_SCREEN_BUFFER_INFO.</summary>
    [StructLayout(LayoutKind.Sequential)]
    private struct Info
    {
        public short Width;
        public short Height;
        public short CursorX;
        public short CursorY;
        public ushort Attributes;
        public short Left;
        public short Top;
        public short Right;
        public short Bottom;
        public short MostWidth;
        public short MostHeight;
    }

    [LibraryImport("kernel32.dll", EntryPoint = "CreateFileW", StringMarshalling = StringMarshalling.Utf16, SetLastError = true)]
    private static partial SafeFileHandle Open(string name, uint access, uint share, nint security, uint how, uint flags, nint template);

    [LibraryImport("kernel32.dll", EntryPoint = "GetConsoleScreenBufferInfo", SetLastError = true)]
    [return: MarshalAs(UnmanagedType.Bool)]
    private static partial bool GetInfo(SafeFileHandle console, out Info info);

    [LibraryImport("kernel32.dll", EntryPoint = "WriteConsoleOutputCharacterW", StringMarshalling = StringMarshalling.Utf16)]
    [return: MarshalAs(UnmanagedType.Bool)]
    private static partial bool WriteAt(SafeFileHandle console, string text, uint length, Place place, out uint written);

    [LibraryImport("kernel32.dll", EntryPoint = "FillConsoleOutputCharacterW")]
    [return: MarshalAs(UnmanagedType.Bool)]
    private static partial bool Fill(SafeFileHandle console, ushort character, uint length, Place place, out uint written);

    [LibraryImport("kernel32.dll", EntryPoint = "FillConsoleOutputAttribute")]
    [return: MarshalAs(UnmanagedType.Bool)]
    private static partial bool Colour(SafeFileHandle console, ushort colours, uint length, Place place, out uint written);

    [LibraryImport("kernel32.dll", EntryPoint = "SetConsoleCursorPosition")]
    [return: MarshalAs(UnmanagedType.Bool)]
    private static partial bool MoveTo(SafeFileHandle console, Place place);

    [LibraryImport("kernel32.dll", EntryPoint = "SetConsoleCursorInfo")]
    [return: MarshalAs(UnmanagedType.Bool)]
    private static partial bool SetCursor(SafeFileHandle console, ref Cursor cursor);
}
