using System.Security.Cryptography;
using System.Text;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Protection;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Store;

/// <summary>
/// The answers of an interview under way, beside the profile that they are for. Each answer adds one line with all answers so far,
/// so a program that dies loses at most the line it was writing. The file is held open and locked while the interview lasts:
/// another PC can tell a draft that is being written from one that was left.
/// </summary>
public sealed class AnswerJournal : IDisposable
{
    /// <summary>Stands in for a code that was not given yet.</summary>
    public const string NoCode = "P-0";

    private const string Ending = ".draft";
    private const int MarkLength = 8;

    /// <summary>A person waits for each answer, so a folder that is busy is soon given up.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    private readonly FileStream _file;

    // Windows does not tell the name of a file that was opened with rights of its own.
    private readonly string _path;
    private readonly ProfileWriter _writer;
    private readonly Protector? _protector;

    private AnswerJournal(FileStream file, string path, QuestionSet questions, Protector? protector)
    {
        (_file, _path) = (file, path);
        _writer = new(questions);
        _protector = protector;
    }

    /// <summary>Starts a draft.</summary>
    /// <param name="profilePath">The profile that the answers are for, there or not.</param>
    /// <param name="questions">The questions.</param>
    /// <param name="passphrase">The passphrase of the profile when it is protected; then the draft is too.</param>
    /// <exception cref="NeedsPassphraseException">The profile is protected, and the passphrase does not open it or there is none.</exception>
    /// <exception cref="IOException">It could not be made.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be made.</exception>
    public static AnswerJournal Start(string profilePath, QuestionSet questions, string? passphrase) => Start(profilePath, questions, passphrase, Protector.Iterations);

    /// <summary>Starts a draft, protected with so many rounds.</summary>
    internal static AnswerJournal Start(string profilePath, QuestionSet questions, string? passphrase, int iterations)
    {
        string full = WholeFile.RealPath(profilePath), folder = Path.GetDirectoryName(full)!;

        // Under the lock: nobody protects the profile between the look at it and the draft, and from then on the draft keeps them from it.
        using var held = FolderLock.Take(folder, Patience);
        if (ProfileFile.Bytes(full).TryGet(out byte[]? profile) && ProtectedFile.Is(profile) && (passphrase is null || ProtectedFile.Open(profile, passphrase).Value is null))
        {
            throw new NeedsPassphraseException();
        }

        string name = $".{Path.GetFileName(full)}.{RandomNumberGenerator.GetHexString(MarkLength, lowercase: true)}{Ending}";
        string path = Path.Combine(folder, name);
        return new(FolderRights.Create(path), path, questions, passphrase is null ? null : new(passphrase, iterations));
    }

    /// <summary>Drafts with answers that nobody is writing.</summary>
    /// <param name="profilePath">The profile that the answers are for, there or not.</param>
    /// <exception cref="IOException">The folder cannot be listed.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be listed.</exception>
    public static IReadOnlyList<string> Left(string profilePath)
    {
        string full = WholeFile.RealPath(profilePath), folder = Path.GetDirectoryName(full)!;
        if (!Directory.Exists(folder))
        {
            return [];
        }

        if (Removal.IsUnderWay(full))
        {
            // A program died while it took them away: the lock gives them back, or ends it.
            FolderLock.Take(folder, Patience).Dispose();
        }

        return [.. All(full).Where(d => HasAnswers(d) == true)];
    }

    /// <summary>A draft as a profile with one session, or why its answers cannot be taken up.</summary>
    /// <param name="draft">Path of the draft.</param>
    /// <param name="questions">The questions that answers are checked against.</param>
    /// <param name="passphrase">Asked when the draft is protected.</param>
    public static Checked<Profile> Read(string draft, QuestionSet questions, Func<string?>? passphrase)
    {
        var bytes = ProfileFile.Bytes(draft);
        if (!bytes.TryGet(out byte[]? text))
        {
            return Checked<Profile>.Bad(bytes.Issues);
        }

        int end = Array.LastIndexOf(text, (byte)'\n');
        if (end < 0)
        {
            return Checked<Profile>.Bad(new Issue("empty", string.Empty, "it holds no answer, drop it"));
        }

        int start = Array.LastIndexOf(text, (byte)'\n', Math.Max(0, end - 1), Math.Max(0, end)) + 1;
        var read = new ProfileFile(questions).Open(text[start..end], passphrase);
        return read.TryGet(out var stored) ? Checked<Profile>.Good(stored.Profile) : Checked<Profile>.Bad(read.Issues);
    }

    /// <summary>Erases a draft.</summary>
    /// <exception cref="IOException">It could not be erased.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be erased.</exception>
    public static void Drop(string draft) => Wiping.Delete(draft);

    /// <summary>Adds the answers so far.</summary>
    /// <param name="session">The visit with them.</param>
    /// <param name="person">Code of the person when it is known.</param>
    /// <exception cref="IOException">They could not be written, or the draft was taken away.</exception>
    public void Save(Session session, string? person = null)
    {
        byte[] line = _writer.Line(new(person ?? NoCode, [session]));
        Disk.Write(_file, [.. _protector is null ? line : Encoding.ASCII.GetBytes(_protector.Compact(line)), (byte)'\n']);
        Disk.Flush(_file);
        if (!IsThere)
        {
            // An open file is written to without a word also after its folder is gone.
            throw new FileNotFoundException();
        }
    }

    /// <summary>Ends and erases it, once the session is saved.</summary>
    /// <exception cref="IOException">It could not be erased.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be erased.</exception>
    public void Discard()
    {
        string path = _path;
        bool isThere = IsThere;
        try
        {
            if (Wiping.HasOnly(_file, 1))
            {
                Wiping.Overwrite(_file);
            }
        }
        finally
        {
            _file.Dispose();
            if (isThere)
            {
                Disk.Delete(path);
            }
        }
    }

    /// <summary>True while the draft can be found by its name.</summary>
    public bool IsThere => FileFacts.IsAt(_file, _path);

    /// <summary>Ends it and leaves it on disk.</summary>
    public void Dispose() => _file.Dispose();

    /// <summary>True for the name of a draft.</summary>
    internal static bool IsOne(string name) =>
        name.EndsWith(Ending, StringComparison.Ordinal) && name.Split('.') is { Length: >= 3 } parts && parts[^2].Length == MarkLength && parts[^2].All(char.IsAsciiHexDigitLower);

    /// <summary>All drafts for a profile, also those being written and those with nothing in them.</summary>
    internal static string[] All(string full) => [.. WholeFile.Beside(full, Ending).Where(d => IsOne(Path.GetFileName(d)))];

    /// <summary>Takes a draft away that a program left without answers in it, in a folder that the caller holds.</summary>
    internal static void RemoveEmpty(string draft)
    {
        if (HasAnswers(draft) == false)
        {
            Wiping.Delete(draft);
        }
    }

    /// <summary>True while answers for a profile are only in a draft, or somebody is giving some.</summary>
    internal static bool IsUnfinished(string full) => All(full).Any(d => HasAnswers(d) != false);

    /// <summary>Whether a draft that nobody is writing has answers in it; null while it cannot be told, because somebody is.</summary>
    private static bool? HasAnswers(string draft)
    {
        try
        {
            using var file = new FileStream(draft, FileMode.Open, FileAccess.ReadWrite, FileShare.None);

            // One that begins with a zero was being erased when the program died.
            return file.Length > 0 && file.ReadByte() != 0;
        }
        catch (UnauthorizedAccessException)
        {
            // Another account's, of a program that died before it gave the rights of the folder, or in a folder where each has its own.
            return new FileInfo(draft).Length > 0 ? null : false;
        }
        catch (IOException)
        {
            return null;
        }
    }
}
