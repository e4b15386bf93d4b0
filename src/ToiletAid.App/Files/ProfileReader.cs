using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Files;

/// <summary>Reads a profile from JSON and says everything that is wrong with it.</summary>
public sealed class ProfileReader
{
    /// <summary>The format number that this program writes, and the newest that it reads.</summary>
    public const int Format = 1;

    /// <summary>Largest file that is read, bytes. A profile with a hundred visits takes about a fifth of it.</summary>
    public const int MostBytes = 4 * 1024 * 1024;

    private static readonly TrialReader Trials = new(BuiltIn.Trials());

    private const int DeepestNesting = 16;

    private static readonly JsonDocumentOptions Strict = new() { MaxDepth = DeepestNesting, AllowDuplicateProperties = false };

    private readonly AnswerReader _answers;
    private readonly Migrations _migrations;

    /// <summary>Creates a reader.</summary>
    /// <param name="questions">The questions that answers are checked against.</param>
    public ProfileReader(QuestionSet questions)
        : this(questions, Migrations.Known)
    {
    }

    internal ProfileReader(QuestionSet questions, Migrations migrations)
    {
        _answers = new(questions);
        _migrations = migrations;
    }

    /// <summary>Reads a profile.</summary>
    /// <param name="utf8">The text of one profile, UTF-8.</param>
    public Checked<Profile> Read(ReadOnlyMemory<byte> utf8)
    {
        var read = ReadStored(utf8);
        return read.TryGet(out var stored) ? Checked<Profile>.Good(stored.Profile) : Checked<Profile>.Bad(read.Issues);
    }

    /// <summary>Reads a profile with what the store noted in it.</summary>
    /// <param name="utf8">The text of one profile, UTF-8.</param>
    public Checked<StoredProfile> ReadStored(ReadOnlyMemory<byte> utf8)
    {
        if (utf8.Length > MostBytes)
        {
            return Checked<StoredProfile>.Bad(new Issue("too-large", string.Empty, $"it is larger than {MostBytes / 1024 / 1024} megabytes, which no profile is, check that it is the right file"));
        }

        if (TextForm.Fault(utf8.Span) is { } form)
        {
            return Checked<StoredProfile>.Bad(form);
        }

        utf8 = JsonText.WithoutMark(utf8);
        try
        {
            using var document = JsonDocument.Parse(utf8, Strict);
            var issues = new List<Issue>();
            var stored = Stored(new(document.RootElement, string.Empty, issues), utf8.Span);
            return stored is not null && issues.Count == 0 ? Checked<StoredProfile>.Good(stored) : Checked<StoredProfile>.Bad(issues);
        }
        catch (JsonException e)
        {
            return Checked<StoredProfile>.Bad(Broken(e, utf8.Span));
        }
        catch (InvalidOperationException)
        {
            // A string with half a surrogate pair or bytes that are not UTF-8 is found only when it is taken out.
            return Checked<StoredProfile>.Bad(new Issue("not-utf-8", string.Empty, "it has characters that are not UTF-8, save it as UTF-8"));
        }
    }

    private static Issue Broken(JsonException e, ReadOnlySpan<byte> text) => JsonEnd.IsMissing(text)
        ? new("cut-short", string.Empty, "it ends before it should, so a part is missing, restore it from a copy")
        : JsonText.Broken(e, "restore the file from a copy or fix it here");

    private StoredProfile? Stored(JsonWalker root, ReadOnlySpan<byte> text)
    {
        if (root.Element.ValueKind == JsonValueKind.Object && root.Member("format")?.Element is { ValueKind: JsonValueKind.Number } f
            && f.TryGetInt32(out int format) && format >= 1 && format < _migrations.Newest)
        {
            var upgraded = _migrations.Upgrade(JsonObject.Create(root.Element)!, format);
            using var document = JsonDocument.Parse(upgraded.ToJsonString(), Strict);
            return Stored(root with { Element = document.RootElement }, text);
        }

        if (Profile(root) is not { } profile)
        {
            return null;
        }

        int revision = 0;
        if (root.Member("revision") is { } r && (r.Element.ValueKind != JsonValueKind.Number || !r.Element.TryGetInt32(out revision) || revision < 1))
        {
            r.Fault("revision", $"{r.Quote()} is not a revision, write 1 or more or leave it out");
        }

        var seal = Seal.None;
        if (root.Member("hash") is { } h && h.Text() is { } hash)
        {
            if (ContentHash.IsOne(hash))
            {
                seal = ContentHash.Check(text, hash);
            }
            else
            {
                h.Fault("hash", $"{h.Quote()} is not a hash, leave the member hash out");
            }
        }

        return new(profile, revision, seal);
    }

    private Profile? Profile(JsonWalker root)
    {
        if (root.Element.ValueKind != JsonValueKind.Object)
        {
            root.Fault("wrong-kind", "a profile is an object in braces with format, person and sessions");
            return null;
        }

        if (root.Required("format") is { } format && !IsFormat(format))
        {
            return null;
        }

        root.OnlyMembers("format", "revision", "hash", "person", "sessions");
        string? person = root.Required("person")?.Text();
        if (person is not null && PersonCode.Fault(person) is { } fault)
        {
            // The refused code is not repeated: it may be a name.
            root.Member("person")!.Value.Fault("person-code", "the person's code " + fault);
        }

        ImmutableArray<Session> sessions = root.Required("sessions") is { } list ? [.. list.Items().Select(Session).OfType<Session>()] : [];
        if (root.Issues.Count == 0 && sessions.IsEmpty)
        {
            root.Fault("no-session", "there is no session, add one");
        }

        return person is null || sessions.IsEmpty ? null : new(person, sessions);
    }

    private bool IsFormat(JsonWalker format)
    {
        if (format.Element.ValueKind != JsonValueKind.Number || !format.Element.TryGetInt32(out int number) || number < 1)
        {
            format.Fault("format", $"{format.Quote()} is not a format number, this program writes {Format}");
            return false;
        }

        if (number > _migrations.Newest)
        {
            format.Fault("newer-format", $"format {number} is newer than this program, which reads up to {_migrations.Newest}, use a newer version of toiletaid");
            return false;
        }

        return true;
    }

    private Session? Session(JsonWalker at)
    {
        at.OnlyMembers("date", "depth", "late", "answers", "trials", "note");
        DateOnly? date = null;
        if (at.Required("date") is { } d && d.Text() is { } text)
        {
            date = IsoDay.Find(text);
            if (date is null)
            {
                d.Fault("date", $"{d.Quote()} is not a date, write year, month and day such as 2026-03-09");
            }
        }

        Depth? depth = null;
        if (at.Required("depth") is { } p && p.Text() is { } word && (depth = Words.Find<Depth>(word)) is null)
        {
            p.Fault("depth", $"{p.Quote()} is not a depth, use {string.Join(", ", Words.All<Depth>())}");
        }

        if (at.Member("late") is { } l && l.Element.ValueKind is not (JsonValueKind.True or JsonValueKind.False))
        {
            l.Fault("wrong-kind", $"{l.Quote()} should be true or false");
        }

        bool isLate = at.Member("late")?.Element.ValueKind == JsonValueKind.True;
        var answers = at.Required("answers") is { } a ? _answers.Read(a) : Answers.None;
        var trials = at.Member("trials") is { } t ? Trials.Read(t) : [];
        var note = at.Member("note") is { } n ? Note(n) : [];
        return date is { } when && depth is { } how ? new(when, how, answers) { IsLate = isLate, Trials = trials, Note = note } : null;
    }

    private static ImmutableArray<string> Note(JsonWalker at)
    {
        JsonWalker[] items = [.. at.Items().Take(NoteLine.Most + 1)];
        if (items.Length > NoteLine.Most)
        {
            at.Fault("note-too-long", $"a note has at most {NoteLine.Most} lines, put the rest into another visit");
        }

        foreach (var item in items)
        {
            if (item.Text() is { } line && NoteLine.Fault(line) is { } fault)
            {
                item.Fault("note-line", $"this line of the note {fault}");
            }
        }

        return [.. items.Where(i => i.Element.ValueKind == JsonValueKind.String).Select(i => i.Element.GetString()!)];
    }
}
