namespace ToiletAid.App.FileSystem;

/// <summary>
/// Every change that is made to files that are kept, each a step that the system does whole or not at all. What is made of steps must hold when the program
/// dies between any two of them; tests let it die before each.
/// </summary>
internal static class Disk
{
    /// <summary>ERROR_SHARING_VIOLATION: another program has the file open and lets nobody change it.</summary>
    internal const int WindowsSharing = unchecked((int)0x80070020);

    /// <summary>Programs that copy or search folders hold a file for a moment.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(3);

    /// <summary>Told of every step on this thread before it is done; a test ends the work there.</summary>
    [field: ThreadStatic]
    internal static Action<string>? Before { get; set; }

    /// <summary>A new file for its owner only; an old one of that name is a fault.</summary>
    internal static FileStream Create(string path)
    {
        Before?.Invoke($"create {path}");
        return OwnerOnly.Create(path);
    }

    /// <summary>Writes where the file stands.</summary>
    internal static void Write(FileStream file, ReadOnlySpan<byte> bytes)
    {
        Before?.Invoke($"write {file.Name}");
        file.Write(bytes);
    }

    /// <summary>Waits until the disk has it.</summary>
    internal static void Flush(FileStream file)
    {
        Before?.Invoke($"flush {file.Name}");
        file.Flush(flushToDisk: true);
    }

    /// <summary>Gives a file another name, in place of what has it.</summary>
    /// <remarks>Without the permission to replace, the base library gives a second name and takes the first away, which are two steps.</remarks>
    internal static void Move(string from, string to)
    {
        Before?.Invoke($"move {from} to {to}");
        Patiently(to, () => File.Move(from, to, overwrite: true));
    }

    /// <summary>Takes a name away.</summary>
    internal static void Delete(string path)
    {
        Before?.Invoke($"delete {path}");
        Patiently(path, () => File.Delete(path));
    }

    /// <summary>Gives a file a second name; false where the disk or the system cannot, or something has it.</summary>
    internal static bool TryLink(string path, string name)
    {
        Before?.Invoke($"link {path} to {name}");
        return DiskFolder.TryLink(path, name);
    }

    /// <summary>Lets others use an open file.</summary>
    internal static void SetMode(FileStream file, UnixFileMode mode)
    {
        Before?.Invoke($"rights {file.Name}");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(file.SafeFileHandle, mode);
        }
    }

    /// <summary>On Windows a file that is open elsewhere cannot be replaced or deleted; whoever has it open may be done with it soon.</summary>
    /// <exception cref="FileInUseException">It was open all the time.</exception>
    private static void Patiently(string path, Action step)
    {
        long start = Environment.TickCount64;
        while (true)
        {
            try
            {
                step();
                return;
            }
            catch (Exception e) when (OperatingSystem.IsWindows() && e is IOException or UnauthorizedAccessException && IsInUse(path))
            {
                if (Environment.TickCount64 - start > Patience.TotalMilliseconds)
                {
                    throw new FileInUseException(e);
                }
            }

            Thread.Sleep(Random.Shared.Next(20, 60));
        }
    }

    /// <summary>Windows says only that replacing it is denied.</summary>
    private static bool IsInUse(string path)
    {
        try
        {
            new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.None, bufferSize: 0).Dispose();
            return false;
        }
        catch (IOException e)
        {
            return e.HResult == WindowsSharing;
        }
        catch (UnauthorizedAccessException)
        {
            return false;
        }
    }
}
