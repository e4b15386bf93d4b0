using ToiletAid.App.Store;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>Where data and settings of the user lie: the cases are those of the XDG Base Directory Specification 0.8 (from memory).</summary>
public sealed class OwnFolderTests
{
    [Theory]
    [InlineData("/data", "/home/k", "/data/toiletaid")]
    [InlineData(null, "/home/k", "/home/k/.local/share/toiletaid")]
    [InlineData("", "/home/k", "/home/k/.local/share/toiletaid")]
    [InlineData("data", "/home/k", "/home/k/.local/share/toiletaid")] // would lie in the current folder
    public void Data_lie_where_the_variable_says_or_in_the_home_folder(string? variable, string home, string wanted)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "the system has folders of its own");
        Assert.Equal(wanted, OwnFolder.Data(name => name switch { "XDG_DATA_HOME" => variable, "HOME" => home, _ => null }));
    }

    [Theory]
    [InlineData("/etc/k", "/etc/k/toiletaid")]
    [InlineData("../k", "/home/k/.config/toiletaid")]
    public void Settings_lie_likewise(string? variable, string wanted)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "the system has folders of its own");
        Assert.Equal(wanted, OwnFolder.Settings(name => name switch { "XDG_CONFIG_HOME" => variable, "HOME" => "/home/k", _ => null }));
    }

    /// <summary>A program that the system starts has no HOME, and its drafts belong beside its profiles all the same.</summary>
    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("k")]
    public void Without_a_home_in_the_environment_it_is_that_of_the_account(string? home)
    {
        string data = OwnFolder.Data(name => name == "HOME" ? home : null);
        Assert.True(Path.IsPathFullyQualified(data));
        Assert.EndsWith("toiletaid", data, StringComparison.Ordinal);
    }

    [Fact]
    public void Profiles_lie_in_the_folder_for_data() =>
        Assert.Equal(Path.Combine(OwnFolder.Data(Environment.GetEnvironmentVariable), "profiles"), new ProfileFolder(Environment.GetEnvironmentVariable).Path);

    /// <summary>The environment that is passed in counts, and not the one of the process.</summary>
    [Fact]
    public void A_code_stands_for_a_file_in_the_folder_that_the_environment_names()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "the system has folders of its own");
        using var folder = new TempFolder();
        using var input = new MemoryStream("none\nfinish\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\n"u8.ToArray());
        using var output = new StringWriter();

        int code = ToiletAidTui.Commands.CliHost.Run(["assess", "--linear", "--save", "K-014"], new() { Input = input, Output = output, Error = output, Variable = name => name == "XDG_DATA_HOME" ? folder.Path : null });

        Assert.Equal(0, code);
        Assert.True(File.Exists(Path.Combine(folder.Path, "toiletaid", "profiles", "K-014.json")));
    }
}
