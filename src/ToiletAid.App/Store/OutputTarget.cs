using System.Collections.Immutable;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;

namespace ToiletAid.App.Store;

/// <summary>
/// A file that a command was asked to write: the one door through which every such file goes. It may be new, or hold what can be made again.
/// It is never a file that the command reads, whatever name leads to it, nor a profile, a file of aids or a passphrase.
/// </summary>
public sealed class OutputTarget
{
    private readonly string _path;
    private readonly ImmutableArray<string> _others;

    private OutputTarget(string path, ImmutableArray<string> others) => (_path, _others) = (path, others);

    /// <summary>The file, or why it is not written, known before any work is done.</summary>
    /// <param name="path">As typed.</param>
    /// <param name="others">Every other file and folder that the command names.</param>
    public static Checked<OutputTarget> Of(string path, IEnumerable<string> others)
    {
        var target = new OutputTarget(path, [.. others]);
        return target.Fault() is { } fault ? Checked<OutputTarget>.Bad(fault) : Checked<OutputTarget>.Good(target);
    }

    /// <summary>Code of an issue that has only the reason why a file could not be written.</summary>
    public const string CannotWrite = "cannot-write";

    /// <summary>Writes it whole or not at all; gives why not.</summary>
    /// <param name="bytes">What it is to hold.</param>
    public Issue? Write(byte[] bytes) => Guarded(() => WholeFile.Write(_path, bytes));

    /// <summary>Opens it to be written bit by bit as a list of refused profiles; another file that is there is not cut short for it.</summary>
    /// <param name="append">True to add to what is there.</param>
    /// <param name="file">The open file, or null.</param>
    public Issue? OpenList(bool append, out FileStream? file)
    {
        FileStream? opened = null;
        var fault = Guarded(() => opened = List(append), () => IsFile && !HeldContent.IsRejects(_path)
            ? new("in-use", string.Empty, "it holds something other than a list of refused profiles, give another file")
            : null);
        file = opened;
        return fault;
    }

    private bool IsFile => File.Exists(_path) && !WholeFile.IsDevice(WholeFile.RealPath(_path));

    private Issue? Guarded(Action write, Func<Issue?>? check = null)
    {
        try
        {
            // Looked at again: it may have changed while the command worked.
            if ((Fault() ?? check?.Invoke()) is { } fault)
            {
                return fault;
            }

            write();
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return new(CannotWrite, string.Empty, FileFault.Reason(e));
        }
    }

    private Issue? Fault()
    {
        try
        {
            if (_path.Length == 0)
            {
                return new(CannotWrite, string.Empty, "that is not a file name");
            }

            if (WholeFile.IsDevice(WholeFile.RealPath(_path)))
            {
                return null;
            }

            if (_others.Any(IsSame))
            {
                return new("is-input", string.Empty, "the command names it for something else too, so nothing was written to it, give another file");
            }

            if (_others.Any(IsInFolderOf))
            {
                return new("is-input", string.Empty, "profiles are read from its folder, so nothing was written to it, give a file in another folder");
            }

            return IsFile && HeldContent.Precious(_path) is { } what
                ? new("is-precious", string.Empty, $"it holds {what}, so nothing was written to it, give another file")
                : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return new(CannotWrite, string.Empty, FileFault.Reason(e));
        }
    }

    private bool IsSame(string other)
    {
        if (other.Length == 0)
        {
            return false;
        }

        return FileFacts.Of(_path) is { } there ? FileFacts.Of(other)?.Identity == there.Identity : WholeFile.RealPath(other) == WholeFile.RealPath(_path);
    }

    /// <summary>A file that would be read as a profile the next time.</summary>
    private bool IsInFolderOf(string other) =>
        Directory.Exists(other) && _path.EndsWith(".json", StringComparison.OrdinalIgnoreCase)
        && FileFacts.Of(Path.GetDirectoryName(WholeFile.RealPath(_path))!) is { } folder && FileFacts.Of(other)?.Identity == folder.Identity;

    private FileStream List(bool append)
    {
        var options = new FileStreamOptions { Mode = append ? FileMode.Append : FileMode.Create, Access = FileAccess.Write };
        if (OperatingSystem.IsWindows())
        {
            return new(_path, options);
        }

        const UnixFileMode owner = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        options.UnixCreateMode = owner;
        var file = new FileStream(_path, options);
        if (!WholeFile.IsDevice(WholeFile.RealPath(_path)))
        {
            // The mode above is only that of a file that was not there.
            File.SetUnixFileMode(file.SafeFileHandle, owner);
        }

        return file;
    }
}
