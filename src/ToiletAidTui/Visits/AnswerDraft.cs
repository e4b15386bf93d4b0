using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Store;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAidTui.Visits;

/// <summary>
/// Keeps the answers of a visit after each one: beside the profile that they are for or, while the visit has no file or its folder does not take
/// them, in the user's own folder. They are gone once the visit is saved, or left without saving. It alone knows whether and where they are kept:
/// what it says was looked at after it was written.
/// </summary>
/// <param name="profile">The profile; null while the visit has none.</param>
/// <param name="own">The name that stands for a visit without a profile, in the user's own folder; null where there is no such folder.</param>
/// <param name="questions">The questions.</param>
/// <param name="passphrase">Gives the passphrase, asked for when the profile is protected.</param>
/// <param name="isProtected">True when the profile was protected when it was opened: then nothing of it is written in clear, wherever.</param>
/// <param name="profiles">The user's folder of profiles, which is made when the profile lies in it.</param>
internal sealed class AnswerDraft(string? profile, string? own, QuestionSet questions, Func<string?> passphrase, bool isProtected, ProfileFolder profiles) : IDisposable
{
    private readonly Lock _lock = new();
    private readonly List<AnswerJournal> _files = [];
    private string? _place;
    private string _fault = "this account has no folder for data";
    private bool? _toldKept;
    private string? _last;
    private bool _isOver;

    /// <summary>Told when answers are no longer kept where they should be, and when they are again, a sentence each time.</summary>
    internal Action<string> Tell { get; set; } = _ => { };

    /// <summary>Drafts that nobody is writing.</summary>
    internal IReadOnlyList<string> Left()
    {
        try
        {
            return (profile ?? own) is { } place ? AnswerJournal.Left(place) : [];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // What cannot be listed cannot be offered; the visit itself tells what is wrong with the folder.
            return [];
        }
    }

    /// <summary>What a draft holds.</summary>
    internal Checked<Profile> Read(string draft) => AnswerJournal.Read(draft, questions, passphrase);

    /// <summary>True while answers are in it.</summary>
    internal bool HoldsAnswers
    {
        get
        {
            lock (_lock)
            {
                return _place is not null;
            }
        }
    }

    /// <summary>Keeps the answers; gives the sentence that says where they are, or why they are not.</summary>
    internal string Keep(Visit visit)
    {
        // A signal keeps the answers from a thread of its own.
        lock (_lock)
        {
            if (_isOver && _last is not null)
            {
                // The program has ended meanwhile: what was kept stays, and a second draft of the same answers would be offered beside it.
                return _last;
            }

            bool isKept = GoesOn(visit) || Places().Any(p => Begins(p, visit));
            string said = isKept ? $"The answers are kept {Where(_place!)}." : $"The answers could not be kept, {_fault}.";
            bool asHoped = isKept && (_place == profile || profile is null);
            if (_toldKept is { } told ? told != asHoped : !asHoped)
            {
                Tell(said);
            }

            _toldKept = asHoped;
            _last = said;
            if (isKept)
            {
                // It holds all that the one before it held.
                _ = Remove(visit.Draft);
                visit.Draft = null;
            }

            return said;
        }
    }

    /// <summary>The visit is saved or left, so the drafts go. What cannot be erased is offered again, where it can be thrown away.</summary>
    internal void Discard()
    {
        lock (_lock)
        {
            foreach (var file in _files)
            {
                Try(file.Discard);
            }

            _files.Clear();
            (_place, _last) = (null, null);
        }
    }

    /// <summary>Erases a draft; gives the sentence that says why it is still there, or null.</summary>
    internal static string? Remove(string? draft)
    {
        try
        {
            if (draft is not null)
            {
                AnswerJournal.Drop(draft);
            }

            return null;
        }
        catch (FileNotFoundException)
        {
            // Another window was faster.
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"It could not be erased, {FileFault.Reason(e)}, and is offered again.";
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_lock)
        {
            _isOver = true;
            _files.ForEach(f => f.Dispose());
        }
    }

    private string Where(string place) => place == profile ? $"beside {profile}. The next assessment that saves there offers them" : "in your data folder. Start toiletaid without a file and it offers them";

    private IEnumerable<string> Places() => ((string?[])[profile, own]).OfType<string>();

    /// <summary>Adds to the draft that was begun last, while it is to be found.</summary>
    private bool GoesOn(Visit visit)
    {
        if (_place is null)
        {
            return false;
        }

        string place = _place;
        _place = null;
        if (!Guarded(() => Write(_files[^1], visit)))
        {
            return false;
        }

        _place = place;
        return true;
    }

    private bool Begins(string place, Visit visit) => Guarded(() =>
    {
        if (place == own)
        {
            OwnerOnly.Folder(Path.GetDirectoryName(place)!);
        }

        profiles.Prepare(place);

        // Also when the profile was protected by somebody else meanwhile: without it the answers would lie open.
        string? secret = isProtected || (profile is not null && ProfileFile.IsProtected(profile)) ? passphrase() ?? throw new NeedsPassphraseException() : null;
        var file = AnswerJournal.Start(place, questions, secret);
        _files.Add(file);
        Write(file, visit);
        _place = place;
    });

    private static void Write(AnswerJournal file, Visit visit) => file.Save(visit.Session, visit.Earlier?.Profile.Person ?? visit.Person);

    private bool Guarded(Action action)
    {
        try
        {
            action();
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            _fault = FileFault.Reason(e);
            return false;
        }
    }

    private static void Try(Action action)
    {
        try
        {
            action();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // It stays and is offered at the next start.
        }
    }
}
