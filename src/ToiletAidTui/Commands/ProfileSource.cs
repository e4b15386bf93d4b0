using ToiletAid.App.Files;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands;

/// <summary>Profiles from files, folders and standard input, one at a time.</summary>
internal sealed class ProfileSource(QuestionSet questions, Terminal terminal)
{
    internal const string StandardInput = "-";

    private readonly ProfileFile _files = new(questions);
    private readonly ProfileReader _reader = new(questions);

    /// <summary>Every profile under a path, or what is wrong with it; each with a name for messages.</summary>
    internal IEnumerable<(string Name, Checked<Profile> Profile)> Read(string path)
    {
        if (path == StandardInput)
        {
            return Lines();
        }

        return Directory.Exists(path) ? Folder(path) : [(path, _files.Read(path, terminal.Passphrase.Get))];
    }

    private IEnumerable<(string Name, Checked<Profile> Profile)> Folder(string path)
    {
        string[] files;
        try
        {
            files = Directory.GetFiles(path, "*.json");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [(path, Refused("cannot-read", $"the folder cannot be read, {ProfileFile.Reason(e)}"))];
        }

        Array.Sort(files, StringComparer.Ordinal);
        return files.Length == 0
            ? [(path, Refused("empty-folder", "the folder has no profiles, give a folder with files that end in .json"))]
            : files.Select(f => (f, _files.Read(f, terminal.Passphrase.Get)));
    }

    private IEnumerable<(string Name, Checked<Profile> Profile)> Lines()
    {
        var reader = new LineReader(terminal.Input, longest: ProfileReader.MostBytes + 1);
        int number = 0;
        while (reader.ReadBytes() is { } line)
        {
            number++;
            if (line.AsSpan().IndexOfAnyExcept(" \t\r"u8) >= 0)
            {
                yield return ($"Standard input line {number}", _reader.Read(line));
            }
        }

        if (number == 0)
        {
            yield return ("Standard input", Refused("empty", "there was nothing on it, give one profile a line"));
        }
    }

    private static Checked<Profile> Refused(string code, string message) => Checked<Profile>.Bad(new Issue(code, string.Empty, message));
}
