namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>Started with one of its streams closed, the program ends with a sentence and a documented code, and never reads or writes a file of its own instead.</summary>
public sealed class ClosedStreamTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("rank PROFILE >&-", 3, "", "Standard output is closed, so no result could be given. Nothing was done.\n")]
    [InlineData("rank PROFILE >&- 2>&-", 3, "", "")]
    [InlineData("rank - --format ndjson <&-", 3, "", "Standard input: there was nothing on it, give one profile a line.\n")]
    [InlineData("settings 2>&-", 0, null, "")]
    [InlineData("rank PROFILE --passphrase-fd 9 9<&-", 0, null, "")]
    [InlineData("rank PROTECTED --passphrase-fd 9 9<&-", 3, "", null)]
    public void Ends_with_a_sentence(string line, int expected, string? output, string? error)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no numbers of open files");
        string profile = TestKit.Repository.Path("profiles", "k-014-stiff-shoulder.json"), secret = _folder.File("secret", "four quiet otters swim\n");
        string guarded = _folder.File("S-1.json");
        new App.Store.ProfileStore(App.Files.BuiltIn.Questions()).Add(guarded, "S-1", NumberedVisit.Session(0), seen: null);
        Assert.Equal(0, Cli.Run("", "protect", guarded, "--passphrase-file", secret).Code);

        var (code, said, complained) = OutsideTool.Run("timeout", "", "20", "bash", "-c", $"'{BuiltProgram.Path}' {line.Replace("PROFILE", $"'{profile}'", StringComparison.Ordinal).Replace("PROTECTED", $"'{guarded}'", StringComparison.Ordinal)}");

        Assert.Equal(expected, code);
        Assert.Equal(output ?? said, said);
        Assert.Equal(error ?? complained, complained);
        if (error is null)
        {
            Assert.Contains("File descriptor 9 is not open.", complained, StringComparison.Ordinal);
        }
    }
}
