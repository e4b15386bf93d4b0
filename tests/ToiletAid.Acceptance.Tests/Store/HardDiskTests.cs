using System.Runtime.InteropServices;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Store;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>Disks that refuse: the answers stay in memory, so the same save can be tried again.</summary>
public sealed partial class HardDiskTests
{
    private static readonly ProfileStore Profiles = new(BuiltIn.Questions());

    [Fact]
    public void A_full_disk_loses_nothing_and_a_save_succeeds_once_there_is_room()
    {
        OutsideTool.Needs(Environment.UserName == "root" && OutsideTool.Exists("mount"), "the right to mount a small disk");
        using var folder = new TempFolder();
        var (code, _, error) = OutsideTool.Run("mount", string.Empty, "-t", "tmpfs", "-o", "size=64k", "tmpfs", folder.Path);
        OutsideTool.Needs(code == 0, "the right to mount a small disk, " + error.Trim());
        try
        {
            string path = folder.File("K-014.json");
            var stored = Profiles.Add(path, "K-014", NumberedVisit.Session(0), seen: null).Value!.Stored;
            Fill(folder.File("filler"));

            var fault = Assert.ThrowsAny<IOException>(() => Profiles.Add(path, "K-014", NumberedVisit.Session(1), stored));
            Assert.Equal("the disk is full", FileFault.Reason(fault));
            Assert.Equal(1, Profiles.Open(path).Value!.Revision);
            Assert.Empty(Directory.GetFiles(folder.Path, ".*.new"));

            File.Delete(folder.File("filler"));
            Assert.Equal([0, 1], Profiles.Add(path, "K-014", NumberedVisit.Session(1), stored).Value!.Stored.Profile.Sessions.Select(NumberedVisit.Number));
        }
        finally
        {
            OutsideTool.Run("umount", string.Empty, folder.Path);
        }
    }

    [Fact]
    public void A_disk_that_can_only_be_read_is_named()
    {
        OutsideTool.Needs(Environment.UserName == "root" && OutsideTool.Exists("mount"), "the right to mount a small disk");
        using var folder = new TempFolder();
        var (code, _, error) = OutsideTool.Run("mount", string.Empty, "-t", "tmpfs", "-o", "ro", "tmpfs", folder.Path);
        OutsideTool.Needs(code == 0, "the right to mount a small disk, " + error.Trim());
        try
        {
            var fault = Assert.ThrowsAny<IOException>(() => Profiles.Add(folder.File("K-014.json"), "K-014", NumberedVisit.Session(0), seen: null));
            Assert.Equal("the disk is read-only", FileFault.Reason(fault));
        }
        finally
        {
            OutsideTool.Run("umount", string.Empty, folder.Path);
        }
    }

    [Fact]
    public void A_folder_that_this_account_may_only_read_is_named_and_the_save_succeeds_once_it_may_write()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has lists of rights instead of a mode");
        using var folder = new TempFolder();
        string path = folder.File("K-014.json");
        var stored = Profiles.Add(path, "K-014", NumberedVisit.Session(0), seen: null).Value!.Stored;
        Mode(folder.Path, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        File.Delete(folder.File(FolderLock.FileName));
        try
        {
            var fault = AsOrdinaryUser(() => Assert.Throws<UnauthorizedAccessException>(() => Profiles.Add(path, "K-014", NumberedVisit.Session(1), stored)));
            Assert.Equal("this account is not allowed to use it", FileFault.Reason(fault));
        }
        finally
        {
            Mode(folder.Path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }

        Assert.Equal([0, 1], Profiles.Add(path, "K-014", NumberedVisit.Session(1), stored).Value!.Stored.Profile.Sessions.Select(NumberedVisit.Number));
    }

    [Fact]
    public void A_folder_that_vanished_is_named_and_the_save_succeeds_when_it_is_back()
    {
        using var folder = new TempFolder();
        string away = Path.Combine(folder.Path, "share"), path = Path.Combine(away, "K-014.json");

        var fault = Assert.ThrowsAny<IOException>(() => Profiles.Add(path, "K-014", NumberedVisit.Session(0), seen: null));
        Assert.Equal("its folder does not exist", FileFault.Reason(fault));

        Directory.CreateDirectory(away);
        Assert.Equal(1, Profiles.Add(path, "K-014", NumberedVisit.Session(0), seen: null).Value!.Stored.Revision);
    }

    [Fact]
    public void The_interview_says_so_and_ends_with_a_code_when_its_folder_vanished()
    {
        using var folder = new TempFolder();

        var (code, _, error) = Cli.Run("none\n", "assess", "--linear", "--save", Path.Combine(folder.Path, "share", "a.json"), "--person", "K-014");

        Assert.Equal(3, code);
        Assert.Contains("could not be written, its folder does not exist. The answers are kept in your data folder.", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_locked_by_another_program_is_waited_for()
    {
        using var folder = new TempFolder();
        using var held = FolderLock.Take(folder.Path, TimeSpan.FromSeconds(1));

        var fault = Assert.Throws<FolderBusyException>(() => FolderLock.Take(folder.Path, TimeSpan.FromMilliseconds(50)));
        Assert.Equal("another program or PC is saving in its folder", FileFault.Reason(fault));
    }

    /// <summary>The administrator may write everywhere; on this thread and for a moment the rights of files hold for the test too.</summary>
    private static T AsOrdinaryUser<T>(Func<T> action)
    {
        if (Environment.UserName != "root")
        {
            return action();
        }

        const uint nobody = 65534;
        _ = SetFileUser(nobody);
        try
        {
            return action();
        }
        finally
        {
            _ = SetFileUser(0);
        }
    }

    private static void Mode(string path, UnixFileMode mode)
    {
        if (!OperatingSystem.IsWindows())
        {
            // Others get what the owner gets, since the test may look as another user.
            int bits = (int)mode;
            File.SetUnixFileMode(path, (UnixFileMode)(bits | (bits >> 3) | (bits >> 6)));
        }
    }

    [LibraryImport("libc", EntryPoint = "setfsuid")]
    private static partial int SetFileUser(uint user);

    private static void Fill(string path)
    {
        try
        {
            using var stream = File.Create(path, bufferSize: 1);
            while (true)
            {
                stream.Write(new byte[512]);
            }
        }
        catch (IOException)
        {
            // Full, as wanted.
        }
    }
}
