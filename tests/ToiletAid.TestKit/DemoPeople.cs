namespace ToiletAid.TestKit;

/// <summary>The invented people of profiles/.</summary>
public static class DemoPeople
{
    public static readonly string Folder = Repository.Path("profiles");

    /// <summary>File names without folder and ending.</summary>
    public static TheoryData<string> Names => [.. Directory.GetFiles(Folder, "*.json").Order(StringComparer.Ordinal).Select(f => Path.GetFileNameWithoutExtension(f)!)];

    /// <summary>Every file.</summary>
    public static IEnumerable<string> Files => Directory.GetFiles(Folder, "*.json").Order(StringComparer.Ordinal);

    public static string File(string name) => Path.Combine(Folder, name + ".json");
}
