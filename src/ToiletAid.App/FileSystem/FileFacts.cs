using System.Runtime.InteropServices;

namespace ToiletAid.App.FileSystem;

/// <summary>What the system knows of a file, whatever path leads to it. Two paths with the same <see cref="Identity"/> are one file.</summary>
/// <param name="Identity">Device and number of the file; where the system is not asked for them, its full path.</param>
/// <param name="Names">How many names it has on its disk; 1 where that is not known.</param>
/// <param name="Owner">Number of the account that owns it.</param>
/// <param name="Group">Number of its group.</param>
/// <param name="Mode">Rights, as chmod takes them.</param>
internal sealed partial record FileFacts(string Identity, long Names, uint Owner, uint Group, uint Mode)
{
    /// <summary>Files and others may only be renamed or removed by their owner, as in /tmp.</summary>
    internal const uint Sticky = 0x200;

    // S_IFMT and S_IFREG.
    private const uint Kind = 0xF000;
    private const uint Ordinary = 0x8000;

    // statx(2): AT_FDCWD, AT_EMPTY_PATH, STATX_BASIC_STATS and the places in its structure, which are the same on every processor.
    private const int CurrentFolder = -100;
    private const int TheDescriptor = 0x1000;
    private const int TheLink = 0x100;
    private const uint Basic = 0x7ff;
    private const int Bytes = 256;
    private const int NamesAt = 16;
    private const int OwnerAt = 20;
    private const int GroupAt = 24;
    private const int ModeAt = 28;
    private const int NumberAt = 32;
    private const int DeviceAt = 136;

    /// <summary>Of what the path leads to, through links; null when nothing is there or it may not be asked.</summary>
    internal static FileFacts? Of(string path)
    {
        if (OperatingSystem.IsLinux())
        {
            return Of(CurrentFolder, path, 0);
        }

        // Only names are compared here: other names of the same file are not seen.
        string full = WholeFile.RealPath(path);
        return Path.Exists(full) ? new(OperatingSystem.IsWindows() ? full.ToUpperInvariant() : full, 1, 0, 0, 0) : null;
    }

    /// <summary>Of an open file.</summary>
    internal static FileFacts? Of(FileStream file) =>
        OperatingSystem.IsLinux() ? Of((int)file.SafeFileHandle.DangerousGetHandle(), string.Empty, TheDescriptor) : Of(file.Name);

    /// <summary>False for a pipe, a device or a link, which somebody may have put where files are looked for.</summary>
    internal static bool IsOrdinary(string path) => !OperatingSystem.IsLinux() || (Of(CurrentFolder, path, TheLink)?.Mode & Kind) == Ordinary;

    /// <summary>Files of a folder whose names begin with a dot and end so.</summary>
    /// <remarks>Names are compared here: the system may be asked for a pattern, and not every one knows a dot before an asterisk.</remarks>
    internal static IEnumerable<string> Hidden(string folder, string ending = "") =>
        Directory.EnumerateFiles(folder).Where(f => Path.GetFileName(f) is ['.', ..] name && name.EndsWith(ending, StringComparison.Ordinal));

    /// <summary>True when a name is that of an open file itself, and not of a link to it.</summary>
    internal static bool IsItself(FileStream file, string path) => !OperatingSystem.IsLinux() || Of(CurrentFolder, path, TheLink)?.Identity == Of(file)?.Identity;

    /// <summary>True when a name still leads to an open file.</summary>
    /// <remarks>Windows takes no name from a file that is open, unless whoever opened it lets others do so.</remarks>
    internal static bool IsAt(FileStream file, string path) => OperatingSystem.IsWindows() ? File.Exists(path) : Of(path) is { } there && there.Identity == Of(file)?.Identity;

    private static FileFacts? Of(int folder, string path, int flags)
    {
        Span<byte> facts = stackalloc byte[Bytes];
        if (Ask(folder, path, flags, Basic, ref MemoryMarshal.GetReference(facts)) != 0)
        {
            return null;
        }

        string identity = $"{MemoryMarshal.Read<ulong>(facts[DeviceAt..]):x}:{MemoryMarshal.Read<ulong>(facts[NumberAt..]):x}";
        return new(identity, MemoryMarshal.Read<uint>(facts[NamesAt..]), MemoryMarshal.Read<uint>(facts[OwnerAt..]), MemoryMarshal.Read<uint>(facts[GroupAt..]), MemoryMarshal.Read<ushort>(facts[ModeAt..]));
    }

    [LibraryImport("libc", EntryPoint = "statx", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Ask(int folder, string path, int flags, uint mask, ref byte facts);
}
