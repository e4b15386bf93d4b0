using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using ToiletAid.App.Files;
using ToiletAid.App.Store;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>
/// Hears what the program says and looks at the disk at that moment: is it so? A sentence with one of the words of the store that no check knows is a
/// fault too, so that a new sentence needs its check.
/// </summary>
internal sealed partial class Witness : TextWriter
{
    private readonly StringBuilder _line = new();
    private readonly StringBuilder _all = new();
    private readonly string _path;
    private readonly string _folder;
    private readonly string _data;
    private readonly ImmutableArray<(Regex Words, Func<Match, bool> IsSo)> _claims;
    private Dictionary<string, byte[]> _before = [];
    private int _visitsBefore;

    /// <summary>Looks at a profile, its folder, and a folder for data.</summary>
    internal Witness(string path, string data)
        : base(CultureInfo.InvariantCulture)
    {
        (_path, _folder, _data) = (path, Path.GetDirectoryName(path)!, data);
        NewLine = "\n";
        _claims = [.. Claims().Select(c => (new Regex(c.Words, RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)), c.IsSo))];
        Begin();
    }

    public override Encoding Encoding => Encoding.UTF8;

    /// <summary>Passphrases that were ever given to the profile.</summary>
    internal List<string> Passphrases { get; } = [];

    /// <summary>The passphrase that is given with the command.</summary>
    internal string? Given { get; set; }

    /// <summary>Another name of the profile on the disk.</summary>
    internal string? Backup { get; set; }

    /// <summary>A file that the command is asked to write.</summary>
    internal string? Output { get; set; }

    /// <summary>True while the disk was made to fail.</summary>
    internal bool DiskFails { get; set; }

    /// <summary>True when a person sits there who can try again.</summary>
    internal bool HasPerson { get; set; }

    /// <summary>Sentences that were looked at.</summary>
    internal int Checked { get; private set; }

    /// <summary>Sentences that were not so, or that nothing was known of.</summary>
    internal List<string> Untrue { get; } = [];

    internal string All => _all.ToString();

    /// <summary>Notes how everything is before a command.</summary>
    internal void Begin()
    {
        _before = Look();
        _visitsBefore = Opened()?.Profile.Sessions.Length ?? 0;
    }

    public override void Write(char value)
    {
        _all.Append(value);
        if (value == '\n')
        {
            Examine(_line.ToString());
            _line.Clear();
        }
        else
        {
            _line.Append(value);
        }
    }

    internal void Examine(string line)
    {
        string rest = line;
        foreach (var (words, isSo) in _claims)
        {
            rest = words.Replace(rest, match =>
            {
                Checked++;
                bool so;
                try
                {
                    so = isSo(match);
                }
                catch (Exception e) when (e is IOException or UnauthorizedAccessException or InvalidOperationException)
                {
                    so = false;
                }

                if (!so)
                {
                    Untrue.Add($"Not so: {match.Value}");
                }

                return string.Empty;
            });
        }

        if (StoreWords().IsMatch(rest))
        {
            Untrue.Add($"No check for: {rest}");
        }
    }

    [GeneratedRegex("[Ss]aved|[Ee]rased|are kept|is kept|be kept|still here|othing was|rotected|hrown away|was removed|could not be|offered again|not finished", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex StoreWords();

    private IEnumerable<(string Words, Func<Match, bool> IsSo)> Claims() =>
    [
        (@"Saved as (?<who>\S+) in (?<path>\S+)\.", m => m.Groups["path"].Value == _path && Opened() is { Seal: Seal.Whole } now && now.Profile.Person == m.Groups["who"].Value && now.Profile.Sessions.Length > _visitsBefore && File.Exists(_path)),
        (@"This visit is in (?<path>\S+) already\.", _ => Opened() is not null && SameProfile()),
        (@"The answers are kept beside (?<path>\S+)\. The next assessment that saves there offers them\.", m => m.Groups["path"].Value == _path && Kept(_path)),
        (@"The answers are kept in your data folder\. Start toiletaid without a file and it offers them\.", _ => Kept(OwnPlace)),
        (@"The answers could not be kept, (?<why>[^.]+)\.", m => !Kept(_path) && !Kept(OwnPlace) && (Because(m.Groups["why"].Value, _path) || Because(m.Groups["why"].Value, OwnPlace))),
        (@"It could not be erased, (?<why>[^.]+), and is offered again\.", _ => AnswerJournal.Left(_path).Count > 0),
        (@"Nothing was saved\.|There are no answers to save\.", _ => SameProfile()),
        (@"(?<path>\S+) could not be written, (?<why>[^.]+)\.", m => Same(m.Groups["path"].Value) && Because(m.Groups["why"].Value, m.Groups["path"].Value)),
        (@"(?<path>\S+) could not be changed, (?<why>[^.]+)\.", m => Same(null) && Because(m.Groups["why"].Value, m.Groups["path"].Value)),
        (@"The answers are still here\.", _ => HasPerson),
        (@"Erased (?<name>\S+)\.$", m => _before.ContainsKey(m.Groups["name"].Value) && !File.Exists(Path.Combine(_folder, m.Groups["name"].Value)) && !Look().Keys.Any(n => n.StartsWith('.') && n.Contains(m.Groups["name"].Value, StringComparison.Ordinal))),
        (@"(?<name>\S+) has another name on this disk, as backups make them\. What is under that name was left as it is\.", m => File.ReadAllBytes(Backup!).SequenceEqual(_before[m.Groups["name"].Value])),
        (@"(?<name>\S+) could not be overwritten and removed\. It is no longer offered, but it is on the disk: repair the disk and erase again\.", m => !File.Exists(Path.Combine(_folder, m.Groups["name"].Value)) && Look().Keys.Any(n => n.EndsWith(".going", StringComparison.Ordinal))),
        (@"it was changed, but the disk could not overwrite and remove (?<name>\S+) as it was before, mend the disk and give the command again", _ => IsProtected() && Look().Keys.Any(n => n.EndsWith(".going", StringComparison.Ordinal))),
        (@"^A solid state drive or the log of the file system may still hold old bytes\.$", _ => Disk() is not ("tmpfs" or "ramfs" or "overlayfs" or "btrfs" or "nfs")),
        (@"^This disk is memory, which may have been written out to another disk\.$", _ => Disk() is "tmpfs" or "ramfs"),
        (@"^This disk writes anew instead of over the old, so the old bytes stay until their place is needed\.$", _ => Disk() is "overlayfs" or "btrfs" or "zfs"),
        (@"^Backups, snapshots and copies on other PCs or in other programs are not erased\.$|^Copies of a profile that was protected stay closed to anybody without the passphrase\.$", _ => true),
        (@"Nothing was asked\.", _ => Same(null)),
        (@"Nothing was erased\.|so nothing was erased, end that visit first|so nothing was changed|so it was left alone, check the path", _ => Same(null)),
        (@"another window or PC has it or a draft of it open,?", _ => AnswerJournal.All(_path).Length > AnswerJournal.Left(_path).Count),
        (@"an interview of this person is not finished", _ => AnswerJournal.All(_path).Length > 0 && Same(null)),
        (@"^Protected\. Copies made earlier are not\.$", _ => IsProtected() && !Look().Any(f => f.Key != Name(Backup) && IsClear(f.Value))),
        (@"it is protected already, use change-passphrase to give it another passphrase", _ => IsProtected() && !Look().Any(f => f.Key.Contains(Path.GetFileName(_path), StringComparison.Ordinal) && IsClear(f.Value))),
        (@"it is not protected", _ => !IsProtected()),
        (@"The profile can now be read without a passphrase\.", _ => !IsProtected() && Opened() is { Seal: Seal.Whole }),
        (@"The new passphrase is needed from now on\.", _ => IsProtected() && Look().All(f => !f.Key.EndsWith(".previous", StringComparison.Ordinal)) && new ProfileFile(BuiltIn.Questions()).Open(_path, () => Passphrases[^1]).Value is not null && new ProfileFile(BuiltIn.Questions()).Open(_path, () => Passphrases[^2]).Value is null),
        (@"it is protected and there is no passphrase, type it when asked or give the option --passphrase-file", _ => IsProtected() && Given is null),
        (@"the passphrase does not open it", _ => IsProtected() && Given is not null && new ProfileFile(BuiltIn.Questions()).Open(_path, () => Given).Value is null),
        (@"so nothing was written to it", _ => Same(Output!)),
        (@"it was removed since it was opened, so nothing was written", _ => !File.Exists(_path)),
        (@"it was removed since it was opened and another was begun in its place, so nothing was written", _ => Opened() is not null),
        (@"In the meantime (?<count>\d+) other visits? of this person came from elsewhere\. All are kept\.", m => Opened()!.Profile.Sessions.Length > Math.Max(_visitsBefore, int.Parse(m.Groups["count"].Value, CultureInfo.InvariantCulture))),
        (@"A visit of (?<day>\S+) with (?<count>\d+) answers? was not finished\.", m => AnswerJournal.Left(_path).Any(d => AnswerJournal.Read(d, BuiltIn.Questions(), () => Given).Value is { } kept && kept.Latest.Answers.Ids.Count() == int.Parse(m.Groups["count"].Value, CultureInfo.InvariantCulture) && IsoDay.Of(kept.Latest.Date) == m.Groups["day"].Value)),
        (@"the version before it is kept in (?<name>\S+), copy that over it to go back", m => new ProfileFile(BuiltIn.Questions()).Open(Path.Combine(_folder, m.Groups["name"].Value)).Value is not null),
        (@"Something other than toiletaid has changed the file since it was saved\.", _ => Opened() is { Seal: Seal.Changed }),
    ];

    private string OwnPlace => Path.Combine(_data, "toiletaid", "visit");

    private static string? Name(string? path) => path is null ? null : Path.GetFileName(path);

    /// <summary>A whole line with answers stands in a draft that can be found there.</summary>
    private static bool Kept(string place) => Directory.Exists(Path.GetDirectoryName(place)) && AnswerJournal.All(place).Any(d => Array.IndexOf(RawFile.Read(d), (byte)'\n') > 0 && RawFile.Read(d)[0] != 0);

    private bool Because(string why, string path) => why switch
    {
        "its folder does not exist" => !Directory.Exists(Path.GetDirectoryName(path)),
        "this account is not allowed to use it" => Refuses(path) is UnauthorizedAccessException,
        "the disk is full" => Refuses(path) is IOException,
        "the disk is read-only" => Refuses(path) is IOException,
        "there is no such file" => true,
        "this account has no folder for data" => false,
        _ when why.StartsWith("it was removed", StringComparison.Ordinal) => true,
        "the disk or share is not responding as it should" => DiskFails,
        _ => false,
    };

    /// <summary>What happens to somebody who tries to put a little file there.</summary>
    private static Exception? Refuses(string path)
    {
        string tried = Path.Combine(Path.GetDirectoryName(path)!, $"tried-{Guid.NewGuid():N}");
        try
        {
            File.WriteAllBytes(tried, new byte[8192]);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return e;
        }
        finally
        {
            if (File.Exists(tried))
            {
                File.Delete(tried);
            }
        }
    }

    private string Disk() => OutsideTool.Run("stat", string.Empty, "-f", "-c", "%T", _folder).Output.Trim();

    private static bool IsClear(byte[] bytes) => bytes.AsSpan().IndexOf("\"answers\""u8) >= 0;

    private bool IsProtected() => ProfileFile.IsProtected(_path);

    private StoredProfile? Opened()
    {
        var files = new ProfileFile(BuiltIn.Questions());
        return ((string?[])[null, .. Passphrases]).Select(p => files.Open(_path, () => p).Value).FirstOrDefault(s => s is not null);
    }

    private bool SameProfile() => Same(_path);

    /// <summary>A file, or with null every file of the folder, is as it was before the command.</summary>
    private bool Same(string? path)
    {
        var now = Look();
        return path is null ? now.Count == _before.Count && now.All(f => _before.TryGetValue(f.Key, out byte[]? old) && old.SequenceEqual(f.Value))
            : now.GetValueOrDefault(Path.GetFileName(path)) is { } bytes ? _before.TryGetValue(Path.GetFileName(path), out byte[]? was) && was.SequenceEqual(bytes)
            : !_before.ContainsKey(Path.GetFileName(path));
    }

    private Dictionary<string, byte[]> Look() => !Directory.Exists(_folder) ? [] : Directory.GetFiles(_folder)
        .Where(f => !Path.GetFileName(f).StartsWith(FolderLock.FileName, StringComparison.Ordinal) && Path.GetFileName(f) != "filler")
        .ToDictionary(f => Path.GetFileName(f), RawFile.Read);
}
