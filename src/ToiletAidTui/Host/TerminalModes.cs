using System.Runtime.InteropServices;

namespace ToiletAidTui.Host;

/// <summary>The settings of a terminal as they were at one moment.</summary>
internal sealed partial class TerminalModes
{
    // The structure termios: four numbers of four bytes on Linux, of eight on macOS, the last of them the local modes.
    private const int MoreThanTermios = 256;
    private const int LinuxLocalModes = 12;
    private const int MacLocalModes = 24;

    // ECHO is the same on both; the mode in which a line is edited and ended by Enter is not.
    private const uint Echo = 0x8;
    private const uint LinuxLineMode = 0x2;
    private const uint MacLineMode = 0x100;

    // IXON, in the input modes, which come first.
    private const int InputModesAt = 0;
    private const uint LinuxFlowControl = 0x400;
    private const uint MacFlowControl = 0x200;

    /// <summary>TCSANOW: what was typed before is read.</summary>
    private const int AtOnce = 0;

    /// <summary>TCSAFLUSH: what was typed before is dropped, it was not meant for what comes.</summary>
    private const int AfterFlush = 2;

    private readonly int _descriptor;
    private readonly byte[] _termios;

    private TerminalModes(int descriptor, byte[] termios) => (_descriptor, _termios) = (descriptor, termios);

    private static int LocalModesAt => OperatingSystem.IsMacOS() ? MacLocalModes : LinuxLocalModes;

    private static uint LineMode => OperatingSystem.IsMacOS() ? MacLineMode : LinuxLineMode;

    /// <summary>As they are now; null for what is no terminal.</summary>
    internal static TerminalModes? Of(int descriptor)
    {
        byte[] termios = new byte[MoreThanTermios];
        return !OperatingSystem.IsWindows() && Get(descriptor, termios) == 0 ? new(descriptor, termios) : null;
    }

    /// <summary>The same for typing that is not shown, a line at a time.</summary>
    internal TerminalModes Hidden() => With(LocalModesAt, Echo, LineMode);

    /// <summary>The same for typing that the program reads key by key and shows itself. Signals keep their keys; Control S and Q stop nothing.</summary>
    internal TerminalModes ByKey() => With(LocalModesAt, Echo | LineMode, 0).With(InputModesAt, OperatingSystem.IsMacOS() ? MacFlowControl : LinuxFlowControl, 0);

    /// <summary>The same with some modes off and others on.</summary>
    private TerminalModes With(int at, uint off, uint on)
    {
        byte[] changed = [.. _termios];
        var modes = changed.AsSpan(at, sizeof(uint));
        uint value = (MemoryMarshal.Read<uint>(modes) & ~off) | on;
        MemoryMarshal.Write(modes, in value);
        return new(_descriptor, changed);
    }

    /// <summary>Sets the terminal so; false when it does not take that.</summary>
    /// <param name="drops">True to drop what was typed before.</param>
    internal bool Set(bool drops = true) => Set(_descriptor, drops ? AfterFlush : AtOnce, _termios) == 0;

    /// <summary>True while typing is shown as it is in these settings: the runtime has its own idea of the terminal, and sets it when the program is woken.</summary>
    internal bool IsSet() => Of(_descriptor) is not { } now || LocalModes(now) == LocalModes(this);

    private static uint LocalModes(TerminalModes modes) =>
        MemoryMarshal.Read<uint>(modes._termios.AsSpan(LocalModesAt, sizeof(uint))) & (Echo | LineMode);

    [LibraryImport("libc", EntryPoint = "tcgetattr")]
    private static partial int Get(int descriptor, [Out] byte[] termios);

    [LibraryImport("libc", EntryPoint = "tcsetattr")]
    private static partial int Set(int descriptor, int when, [In] byte[] termios);
}
