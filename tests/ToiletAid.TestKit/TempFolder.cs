namespace ToiletAid.TestKit;

/// <summary>A folder that is gone after the test.</summary>
internal sealed class TempFolder : IDisposable
{
    internal string Path { get; } = Directory.CreateTempSubdirectory("toiletaid-test-").FullName;

    internal string File(string name, string? text = null)
    {
        string path = System.IO.Path.Combine(Path, name);
        if (text is not null)
        {
            System.IO.File.WriteAllText(path, text);
        }

        return path;
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
