using System.Runtime.InteropServices;

namespace ToiletAidTui.Host;

/// <summary>
/// Which numbers of open files the program was started with. One that was closed is soon given to a file of the program's own, from which it would
/// read for ever or into which it would write: those are closed when another program is started, and what was handed on cannot be.
/// </summary>
internal static partial class Inherited
{
    /// <summary>F_GETFD and FD_CLOEXEC, the same numbers on Linux and macOS.</summary>
    private const int GetFlags = 1;
    private const int CloseOnExec = 1;

    /// <summary>True when whoever started the program handed it this file. Windows has no such numbers.</summary>
    internal static bool Has(int descriptor) => OperatingSystem.IsWindows() || (descriptor >= 0 && Ask(descriptor, GetFlags) is >= 0 and var flags && (flags & CloseOnExec) == 0);

    [LibraryImport("libc", EntryPoint = "fcntl")]
    private static partial int Ask(int descriptor, int command);
}
