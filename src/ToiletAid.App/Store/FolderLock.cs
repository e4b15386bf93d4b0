namespace ToiletAid.App.Store;

/// <summary>
/// Held while a profile of a folder is changed, also against other PCs on a share. One empty file serves the whole folder:
/// it never has to be deleted, so no two programs can hold different files of one name, and it tells nothing about a person.
/// The system gives the lock back when a program dies.
/// </summary>
internal sealed class FolderLock : IDisposable
{
    /// <summary>Name of the file that is locked.</summary>
    internal const string FileName = ".toiletaid.lock";

    private const int WindowsSharing = unchecked((int)0x80070020);

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
        long start = Environment.TickCount64;
        string path = Path.Combine(folder, FileName);
        while (true)
        {
            try
            {
                return new(new(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, bufferSize: 0));
            }
            catch (IOException e) when (e.HResult is WindowsSharing or LinuxBusy or MacBusy)
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

    /// <inheritdoc/>
    public void Dispose() => _file.Dispose();
}
