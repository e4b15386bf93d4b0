using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAidTui.Screens;

namespace ToiletAidTui.Host;

/// <summary>
/// Keeps the answers of a visit after each one: beside the profile that they are for, or in the user's own folder while the visit
/// has no file. They are gone once the visit is saved, or left without saving.
/// </summary>
/// <param name="path">The profile, or the name that stands for a visit without one.</param>
/// <param name="questions">The questions.</param>
/// <param name="passphrase">Gives the passphrase of a protected profile; null for an open one.</param>
/// <param name="ownFolder">True when the folder is the user's own and is made when it is missing.</param>
/// <param name="profiles">The user's folder of profiles, which is made when the profile lies in it.</param>
internal sealed class AnswerDraft(string path, QuestionSet questions, Func<string?>? passphrase, bool ownFolder, ProfileFolder profiles) : IDisposable
{
    private readonly Lock _lock = new();
    private AnswerJournal? _file;
    private bool _failed;

    /// <summary>Told of a fault, once, in a sentence.</summary>
    internal Action<string> Tell { get; set; } = _ => { };

    /// <summary>Where the answers are, as the end of a sentence, and when they are offered.</summary>
    internal string Where => ownFolder ? "in your data folder. The next start offers them" : $"beside {path}. The next assessment that saves there offers them";

    /// <summary>Drafts that nobody is writing.</summary>
    internal IReadOnlyList<string> Left()
    {
        try
        {
            return ownFolder ? [.. AnswerJournal.Left(path), .. DraftFile.Kept(Path.GetDirectoryName(path)!)] : AnswerJournal.Left(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // What cannot be listed cannot be offered; the visit itself tells what is wrong with the folder.
            return [];
        }
    }

    /// <summary>What a draft holds.</summary>
    internal Checked<Profile> Read(string draft) =>
        DraftFile.IsOne(draft) ? new ProfileFile(questions).Read(draft, passphrase) : AnswerJournal.Read(draft, questions, passphrase);

    /// <summary>Keeps what is answered in the visit from now on.</summary>
    internal void Attach(Visit visit)
    {
        visit.Kept = this;
        visit.Engine.OnChange = _ => Keep(visit);
    }

    /// <summary>Keeps the answers; false when that fails, which is told once.</summary>
    internal bool Keep(Visit visit)
    {
        // A signal keeps the answers from a thread of its own.
        lock (_lock)
        {
            if (_failed || !Guarded(() => Write(visit)))
            {
                return false;
            }

            // It holds all that the one before it held.
            DraftFile.Remove(visit.Draft);
            visit.Draft = null;
            return true;
        }
    }

    /// <summary>The visit is saved or left, so the draft goes.</summary>
    internal void Discard()
    {
        lock (_lock)
        {
            var file = _file;
            _file = null;
            Guarded(() => file?.Discard());
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _file?.Dispose();

    private void Write(Visit visit)
    {
        if (_file is null)
        {
            if (ownFolder)
            {
                OwnerOnly.Folder(Path.GetDirectoryName(path)!);
            }

            profiles.Prepare(path);
            if (passphrase is null)
            {
                _file = AnswerJournal.Start(path, questions, passphrase: null);
            }
            else
            {
                // Without it the answers of somebody who wanted them protected would lie open.
                _file = AnswerJournal.Start(path, questions, passphrase() ?? throw new UnauthorizedAccessException("there is no passphrase"));
            }
        }

        _file.Save(visit.Session, visit.Earlier?.Profile.Person ?? visit.Person);
    }

    private bool Guarded(Action action)
    {
        try
        {
            action();
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            _failed = true;
            Tell($"The draft of the answers in {Path.GetDirectoryName(Path.GetFullPath(path))} could not be written or erased, {ProfileFile.Reason(e)}. The visit goes on without it.");
            return false;
        }
    }
}
