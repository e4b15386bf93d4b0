using System.Collections.Immutable;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Sessions;
using ToiletAid.App.Store;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAidTui.Visits;

/// <summary>One visit under way, whichever mode shows it.</summary>
/// <param name="questions">The questions.</param>
/// <param name="open">The questions still to be asked, the next one first.</param>
/// <param name="depth">How much is asked.</param>
/// <param name="day">Day of the visit.</param>
internal sealed class Visit(QuestionSet questions, Func<Depth, Answers, ImmutableArray<Question>> open, Depth depth, DateOnly day)
{
    private readonly Lock _drafts = new();
    private Answers _saved = Answers.None;
    private bool _wasProtected;

    /// <summary>The interview.</summary>
    internal InterviewEngine Engine { get; } = new(questions, answers => open(depth, answers));

    /// <summary>The user's folder of profiles, which a save makes when it is missing.</summary>
    internal required ProfileFolder Profiles { get; init; }

    /// <summary>True when it is written down after a visit of a later day.</summary>
    internal bool IsLate { get; init; }

    /// <summary>How much is asked.</summary>
    internal Depth Depth => depth;

    /// <summary>What was saved about the person before; null for a new person.</summary>
    internal StoredProfile? Earlier { get; set; }

    /// <summary>The file that it is saved in; null until the person names one.</summary>
    internal string? Path { get; set; }

    /// <summary>Code of the person; null until it is given.</summary>
    internal string? Person { get; set; }

    /// <summary>The file that its answers were taken up from, or in which a signal kept them; null for none.</summary>
    internal string? Draft { get; set; }

    /// <summary>The visit as it stands, with what is noted and not saved yet.</summary>
    internal Session Session => new(day, depth, Engine.AnswersSoFar) { Note = Engine.Note.Unsaved, IsLate = IsLate };

    /// <summary>The visit as it is ranked: with what was tried before.</summary>
    internal Session Ranked => Session with { Answers = WithTrials(Session.Answers) };

    /// <summary>Answers with what was tried before.</summary>
    internal Answers WithTrials(Answers answers) => answers.With(Earlier?.Profile.Tried ?? []);

    /// <summary>True while something was answered or noted that is not in the file.</summary>
    internal bool IsUnsaved => HasNewAnswers || !Engine.Note.Unsaved.IsEmpty;

    private bool HasNewAnswers => Session.Answers is var answers && answers.Ids.Any() && !ReferenceEquals(answers, _saved);

    /// <summary>Keeps each answer on disk while the visit lasts; null when nothing is kept.</summary>
    internal AnswerDraft? Kept { get; private set; }

    /// <summary>Keeps each answer in a draft from now on, in place of the one before; null for none.</summary>
    internal void KeepIn(AnswerDraft? draft)
    {
        lock (_drafts)
        {
            var before = Kept;
            Kept = draft;
            Engine.OnChange = draft is null ? null : _ => draft.Keep(this);
            if (before is { HoldsAnswers: true } && draft is not null)
            {
                // One visit has one draft, also where a signal began one first. Where the new one cannot be written, the one before stays.
                _ = draft.Keep(this);
                if (draft.HoldsAnswers)
                {
                    before.Discard();
                }
            }

            before?.Dispose();
        }
    }

    /// <summary>Keeps the answers as they are now, in a new draft where there is none yet; gives the sentence that says where they are.</summary>
    internal string Keep(Func<AnswerDraft> begin)
    {
        lock (_drafts)
        {
            return (Kept ??= begin()).Keep(this);
        }
    }

    /// <summary>What the last save led to, a sentence an item.</summary>
    internal ImmutableArray<string> Said { get; private set; } = [];

    /// <summary>Takes the code of the person as it was typed; gives why not, one sentence, or null.</summary>
    internal string? TakeCode(string typed)
    {
        if (PersonCode.Fault(typed) is { } fault)
        {
            return $"{(typed.Length == 0 ? "That" : "The code")} {fault}.";
        }

        Person = typed;
        return null;
    }

    /// <summary>Saves in <see cref="Path"/>; gives why not, one sentence, or null.</summary>
    /// <param name="passphrase">Asked when the file is protected.</param>
    internal string? Save(Func<string?> passphrase) => Write(passphrase) is { } fault ? $"{Path} could not be written, {fault}." : null;

    /// <summary>Erases what was kept of the answers besides the file: they are saved, or nobody wants them.</summary>
    internal void Forget()
    {
        Kept?.Discard();
        _ = AnswerDraft.Remove(Draft);
        Draft = null;
    }

    private string? Write(Func<string?> passphrase)
    {
        // What is noted after the answers were saved is added alone: the same answers again would look like another visit.
        var session = HasNewAnswers ? Session : Session with { Answers = Answers.None };
        try
        {
            Profiles.Prepare(Path!);
            var saved = new ProfileStore(questions).Add(Path!, Earlier?.Profile.Person ?? Person!, session, Earlier, passphrase, _wasProtected);
            if (!saved.TryGet(out var now))
            {
                if (saved.Issues[0].Code == "removed")
                {
                    // The next try starts a new file, with this visit only, and as protected as the one before.
                    (Person, _wasProtected, Earlier) = (Earlier!.Profile.Person, Earlier.IsProtected, null);
                }

                return saved.Issues[0].Message;
            }

            Said = Words(now);
            (Earlier, Person) = (now.Stored, now.Stored.Profile.Person);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return FileFault.Reason(e);
        }

        _saved = HasNewAnswers ? session.Answers : _saved;
        Engine.Note.Saved();
        Forget();
        return null;
    }

    private ImmutableArray<string> Words(Saved saved)
    {
        int others = saved.AddedElsewhere.Length;
        string last = saved.WasThere ? $"This visit is in {Path} already." : $"Saved as {saved.Stored.Profile.Person} in {Path}.";
        return others == 0 ? [last] : [$"In the meantime {others} other {(others == 1 ? "visit" : "visits")} of this person came from elsewhere. All are kept.", last];
    }
}
