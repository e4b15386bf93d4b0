using ToiletAid.App.FileSystem;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>The one way in which the program writes files.</summary>
public sealed class WholeFileTests
{
    private const UnixFileMode Owner = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_new_file_is_for_its_owner_and_an_open_one_stays_open_only_when_that_is_wanted(bool keepRights)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has lists of rights instead of a mode");
        using var folder = new TempFolder();
        string fresh = folder.File("fresh"), open = folder.File("open", "old");
        const UnixFileMode everybody = Owner | UnixFileMode.GroupRead | UnixFileMode.OtherRead;
        Mode(open, everybody);

        WholeFile.Write(fresh, "new"u8.ToArray(), keepRights);
        WholeFile.Write(open, "new"u8.ToArray(), keepRights);

        Assert.Equal(Owner, Mode(fresh));
        Assert.Equal(keepRights ? everybody : Owner, Mode(open));
        Assert.Equal("new", File.ReadAllText(open));
        Assert.Equal(2, Directory.GetFiles(folder.Path).Length);
    }

    [Fact]
    public void A_link_and_a_device_stay_what_they_are()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has other devices");
        using var folder = new TempFolder();
        string file = folder.File("file", "old"), link = folder.File("link");
        File.CreateSymbolicLink(link, file);

        WholeFile.Write(link, "new"u8.ToArray());
        WholeFile.Write("/dev/null", "new"u8.ToArray());

        Assert.Equal(file, new FileInfo(link).LinkTarget);
        Assert.Equal("new", File.ReadAllText(file));
        Assert.Equal(string.Empty, File.ReadAllText("/dev/null"));
    }

    [Fact]
    public void What_cannot_be_written_leaves_the_old_file_and_no_other()
    {
        using var folder = new TempFolder();
        string inside = Path.Combine(folder.Path, "a-folder");
        Directory.CreateDirectory(inside);

        Assert.ThrowsAny<IOException>(() => WholeFile.Write(inside, "new"u8.ToArray()));

        Assert.Empty(Directory.GetFiles(folder.Path));
        Assert.True(Directory.Exists(inside));
    }

    /// <summary>Settings, stock, pictures, papers and profiles: a second way to write would have its own faults. Refused profiles are added one by one,
    /// so their file cannot be put in place whole.</summary>
    [Fact]
    public void No_other_part_of_the_program_writes_a_file_of_its_own()
    {
        string[] writers = ["File.WriteAll", "File.Create", "File.Move(", "File.OpenWrite", "File.AppendAll", "FileMode.Create", "FileMode.OpenOrCreate", "File.Delete(", "SetUnixFileMode"];
        string source = TestKit.Repository.Path("src");

        var found = Directory.GetFiles(source, "*.cs", SearchOption.AllDirectories)
            .Where(f => writers.Any(File.ReadAllText(f).Contains))
            .Select(f => Path.GetFileName(f))
            .Order(StringComparer.Ordinal);

        Assert.Equal(["Disk.cs", "FolderLock.cs", "OutputTarget.cs", "OwnerOnly.cs"], found);
    }

    private static UnixFileMode Mode(string path, UnixFileMode? set = null)
    {
        if (OperatingSystem.IsWindows())
        {
            return default;
        }

        if (set is { } mode)
        {
            File.SetUnixFileMode(path, mode);
        }

        return File.GetUnixFileMode(path);
    }
}
