using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Store;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;

namespace ToiletAidTui.Batch;

/// <summary>Profiles from files, folders, files with one profile a line, and standard input.</summary>
internal sealed class BatchSource(QuestionSet questions, Terminal terminal)
{
    internal const string StandardInput = "-";

    private readonly ProfileFile _files = new(questions);
    private readonly ProfileFolder _profiles = new(terminal.Variable);
    private readonly Lock _asking = new();
    private readonly ProfileReader _reader = new(questions);

    /// <summary>Everything under the paths, in their order; files of a folder in the order of their names.</summary>
    internal IEnumerable<BatchInput> All(IEnumerable<string> paths) => paths.SelectMany(Under);

    /// <summary>Reads one of them that has no fault yet; may be called on any thread.</summary>
    internal Checked<Profile> Read(BatchInput input) => input.Utf8 is { } line ? _reader.Read(line) : _files.Read(input.Source, Passphrase);

    private string? Passphrase()
    {
        lock (_asking)
        {
            return terminal.Passphrase.Get();
        }
    }

    /// <summary>True for a path that names one profile: no folder, and no lines of many.</summary>
    internal static bool IsOne(string path) => path != StandardInput && !Directory.Exists(path) && !HasLines(path);

    private static bool HasLines(string path) => path.EndsWith(".ndjson", StringComparison.OrdinalIgnoreCase);

    private IEnumerable<BatchInput> Under(string path) =>
        IsOne(path) ? [new(_profiles.Find(path), 0, null, null)]
        : path == StandardInput ? Lines(path, terminal.Input)
        : Directory.Exists(path) ? Folder(path)
        : LinesOf(path);

    private static IEnumerable<BatchInput> Folder(string path)
    {
        string[] files;
        try
        {
            files = Directory.GetFiles(path, "*.json");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [Faulty(path, "cannot-read", $"the folder cannot be read, {FileFault.Reason(e)}")];
        }

        Array.Sort(files, StringComparer.Ordinal);
        return files.Length == 0
            ? [Faulty(path, "empty-folder", "the folder has no profiles, give a folder with files that end in .json")]
            : files.Select(f => new BatchInput(f, 0, null, null));
    }

    private static IEnumerable<BatchInput> LinesOf(string path)
    {
        FileStream stream;
        try
        {
            stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [Faulty(path, "cannot-read", $"it cannot be read, {FileFault.Reason(e)}")];
        }

        return Closing(path, stream);
    }

    private static IEnumerable<BatchInput> Closing(string path, FileStream stream)
    {
        using (stream)
        {
            foreach (var line in Lines(path, stream))
            {
                yield return line;
            }
        }
    }

    private static IEnumerable<BatchInput> Lines(string source, Stream stream)
    {
        var splitter = new LineSplitter(stream, ProfileReader.MostBytes);
        int number = 0;
        while (splitter.Read(out byte[]? line))
        {
            number++;
            if (line is null)
            {
                string most = $"the line is longer than {ProfileReader.MostBytes / 1024 / 1024} megabytes, which no profile is, check that it is the right file";
                yield return new(source, number, null, new("too-large", string.Empty, most));
            }
            else if (line.AsSpan().IndexOfAnyExcept(" \t\r"u8) >= 0)
            {
                yield return new(source, number, line, null);
            }
        }

        if (number == 0)
        {
            yield return Faulty(source, "empty", "there was nothing on it, give one profile a line");
        }
    }

    private static BatchInput Faulty(string source, string code, string message) => new(source, 0, null, new(code, string.Empty, message));
}
