using ToiletAid.App.Files;
using ToiletAid.App.Store;

namespace ToiletAid.TestKit;

/// <summary>A home folder of its own for a program under test, with nothing in it.</summary>
internal sealed class Home : IDisposable
{
    private readonly TempFolder _folder = new();

    internal string Path => _folder.Path;

    /// <summary>The folder for drafts.</summary>
    internal string Data => System.IO.Path.Combine(Path, "data", "toiletaid");

    /// <summary>Drafts of visits without a file.</summary>
    internal string[] Drafts => Directory.Exists(Data) ? [.. Directory.GetFiles(Data).Where(f => f.EndsWith(".draft", StringComparison.Ordinal) || System.IO.Path.GetFileName(f).StartsWith("draft", StringComparison.Ordinal))] : [];

    /// <summary>Answers in the only draft; 0 when there is none.</summary>
    internal int KeptAnswers()
    {
        if (Drafts.Length == 0)
        {
            return 0;
        }

        // While it is being written it is locked for our own programs, not for others.
        using var folder = new TempFolder();
        string copy = folder.File("copy.draft");
        Assert.Equal(0, OutsideTool.Run("cp", string.Empty, Assert.Single(Drafts), copy).Code);
        return AnswerJournal.Read(copy, BuiltIn.Questions(), passphrase: null).Value!.Latest.Answers.Ids.Count();
    }

    /// <summary>The user's settings.</summary>
    internal string SettingsFile => System.IO.Path.Combine(Path, "config", "toiletaid", "settings.json");

    internal IReadOnlyDictionary<string, string?> Environment(params (string Name, string? Value)[] more) =>
        new Dictionary<string, string?>(more.Select(p => KeyValuePair.Create(p.Name, p.Value)))
        {
            ["HOME"] = Path,
            ["XDG_DATA_HOME"] = System.IO.Path.Combine(Path, "data"),
            ["XDG_CONFIG_HOME"] = System.IO.Path.Combine(Path, "config"),
        };

    public void Dispose() => _folder.Dispose();
}
