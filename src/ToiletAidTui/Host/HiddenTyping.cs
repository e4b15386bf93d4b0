using System.Runtime.InteropServices;

namespace ToiletAidTui.Host;

/// <summary>Turns the echo of the controlling terminal off, and back on whatever happens.</summary>
internal sealed partial class HiddenTyping : IDisposable
{
    // The structure termios: four numbers of four bytes on Linux, of eight on macOS, the last of them the local modes.
    private const int MoreThanTermios = 256;
    private const int LinuxLocalModes = 12;
    private const int MacLocalModes = 24;

    // ECHO is the same on both; the mode in which a line is edited and ended by Enter is not.
    private const uint Echo = 0x8;
    private const uint LinuxLineMode = 0x2;
    private const uint MacLineMode = 0x100;

    /// <summary>TCSAFLUSH: what was typed before the question is dropped, it was not meant for it.</summary>
    private const int AfterFlush = 2;

    private readonly int _descriptor;
    private readonly byte[] _before = new byte[MoreThanTermios];
    private readonly PosixSignalRegistration[] _signals;

    /// <summary>Turns the echo off.</summary>
    /// <param name="descriptor">Of a terminal.</param>
    /// <exception cref="IOException">It is no terminal.</exception>
    internal HiddenTyping(int descriptor)
    {
        _descriptor = descriptor;
        if (Get(descriptor, _before) != 0)
        {
            throw new IOException("this is no terminal");
        }

        // Before the echo goes off, so that no signal falls between.
        _signals = [.. ((PosixSignal[])[PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP, PosixSignal.SIGQUIT]).Select(s => PosixSignalRegistration.Create(s, _ => Restore()))];
        byte[] hidden = [.. _before];
        var modes = hidden.AsSpan(OperatingSystem.IsMacOS() ? MacLocalModes : LinuxLocalModes, sizeof(uint));
        uint value = MemoryMarshal.Read<uint>(modes);
        value = (value & ~Echo) | (OperatingSystem.IsMacOS() ? MacLineMode : LinuxLineMode);
        MemoryMarshal.Write(modes, in value);
        if (Set(descriptor, AfterFlush, hidden) != 0)
        {
            throw new IOException("the terminal does not hide typing");
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Restore();
        foreach (var signal in _signals)
        {
            signal.Dispose();
        }
    }

    private void Restore() => _ = Set(_descriptor, AfterFlush, _before);

    [LibraryImport("libc", EntryPoint = "tcgetattr")]
    private static partial int Get(int descriptor, [Out] byte[] termios);

    [LibraryImport("libc", EntryPoint = "tcsetattr")]
    private static partial int Set(int descriptor, int when, [In] byte[] termios);
}
