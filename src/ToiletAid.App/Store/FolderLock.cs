using ToiletAid.App.FileSystem;

namespace ToiletAid.App.Store;

/// <summary>
/// Held while a profile of a folder is changed, also against other PCs on a share. One empty file serves the whole folder:
/// it never has to be deleted, so no two programs can hold different files of one name, and it tells nothing about a person.
/// The system gives the lock back when a program dies. Whoever takes it first ends what such a program left half done.
/// </summary>
internal sealed class FolderLock : IDisposable
{
    /// <summary>Name of the file that is locked.</summary>
    internal const string FileName = ".toiletaid.lock";

    // EAGAIN on Linux and macOS.
    private const int LinuxBusy = 11;
    private const int MacBusy = 35;

    private readonly FileStream _file;

    private FolderLock(FileStream file) => _file = file;

    /// <summary>Takes the lock of the folder, waiting for others.</summary>
    /// <param name="folder">A folder that is there.</param>
    /// <param name="patience">Longest wait.</param>
    /// <exception cref="IOException">The folder cannot be written, or another program held the lock all the time.</exception>
    internal static FolderLock Take(string folder, TimeSpan patience)
    {
        var held = Wait(Path.Combine(folder, FileName), patience);
        try
        {
            EndAll(folder);
            return held;
        }
        catch
        {
            held.Dispose();
            throw;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _file.Dispose();

    /// <summary>True when a file cannot be opened because somebody holds it.</summary>
    internal static bool IsBusy(IOException e) => e is FileInUseException || e.HResult is Disk.WindowsSharing or LinuxBusy or MacBusy;

    /// <summary>Ends what programs left that died.</summary>
    private static void EndAll(string folder)
    {
        Removal.EndAll(folder);
        foreach (string left in FileFacts.Hidden(folder).Where(FileFacts.IsOrdinary).ToList())
        {
            try
            {
                if (WholeFile.IsHalfWritten(left))
                {
                    WholeFile.RemoveHalfWritten(left);
                }
                else if (AnswerJournal.IsOne(Path.GetFileName(left)))
                {
                    AnswerJournal.RemoveEmpty(left);
                }
                else if (IsUnusedLock(left))
                {
                    Disk.Delete(left);
                }
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                // Another account's: it keeps nobody from saving.
            }
        }
    }

    /// <summary>One that never got its name. Another program that makes one just now can do without it: there is one already.</summary>
    private static bool IsUnusedLock(string path) =>
        Path.GetFileName(path) is var name && name.StartsWith(FileName + ".", StringComparison.Ordinal) && Guid.TryParseExact(name[(FileName.Length + 1)..], "N", out _);

    private static FolderLock Wait(string path, TimeSpan patience)
    {
        long start = Environment.TickCount64;
        while (true)
        {
            try
            {
                return new(Open(path));
            }
            catch (IOException e) when (IsBusy(e))
            {
                if (Environment.TickCount64 - start > patience.TotalMilliseconds)
                {
                    throw new FolderBusyException(e);
                }
            }

            // Unequal waits, or two programs would keep meeting.
            Thread.Sleep(Random.Shared.Next(1, 5));
        }
    }

    private static FileStream Open(string path)
    {
        if (!File.Exists(path))
        {
            Make(path);
        }

        try
        {
            return new(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, bufferSize: 0);
        }
        catch (UnauthorizedAccessException) when (!OperatingSystem.IsWindows() && File.Exists(path) && new DriveInfo(path).DriveType != DriveType.Network)
        {
            // Somebody else's, from a time when the folder was not shared: to lock it on a disk of this machine, reading is enough.
            return new(path, FileMode.Open, FileAccess.Read, FileShare.None, bufferSize: 0);
        }
    }

    /// <summary>Made under another name first: at no moment is there a lock that others in the folder may not use.</summary>
    private static void Make(string path)
    {
        string beside = $"{path}.{Guid.NewGuid():N}";
        FolderRights.CreateLock(beside).Dispose();
        try
        {
            // In vain when another program was faster; where the disk has no second names the file is made when it is opened.
            _ = Disk.TryLink(beside, path);
        }
        finally
        {
            Disk.Delete(beside);
        }
    }
}
