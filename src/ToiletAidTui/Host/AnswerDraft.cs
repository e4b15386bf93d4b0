using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAidTui.Screens;

namespace ToiletAidTui.Host;

/// <summary>
/// Keeps the answers of a visit after each one, beside the profile that they are for. Only for a visit that has a file to be
/// saved in: otherwise no answer is written to a shared PC unless something stops the program.
/// </summary>
/// <param name="tell">Told of a fault, once, in a sentence.</param>
/// <param name="path">The profile.</param>
/// <param name="questions">The questions.</param>
/// <param name="passphrase">Gives the passphrase of a protected profile; null for an open one.</param>
internal sealed class AnswerDraft(Action<string> tell, string path, QuestionSet questions, Func<string?>? passphrase) : IDisposable
{
    private readonly List<string> _takenUp = [];
    private AnswerJournal? _file;
    private bool _failed;

    /// <summary>Drafts for the profile that nobody is writing.</summary>
    internal IReadOnlyList<string> Left() => AnswerJournal.Left(path);

    /// <summary>What a draft holds.</summary>
    internal Checked<Session> Read(string draft) => AnswerJournal.Read(draft, questions, passphrase);

    /// <summary>Goes on with what a draft holds. It stays until the visit is saved.</summary>
    internal void TakeUp(string draft, Session session, Visit visit)
    {
        visit.Engine.TakeUp(session.Answers);
        _takenUp.Add(draft);
    }

    /// <summary>Keeps what is answered in the visit from now on.</summary>
    internal void Attach(Visit visit)
    {
        visit.Kept = this;
        visit.Engine.OnChange = _ => Keep(visit.Session);
    }

    /// <summary>Keeps the answers; false when that fails, which is told once.</summary>
    internal bool Keep(Session session)
    {
        if (_failed)
        {
            return false;
        }

        return Guarded(() =>
        {
            ProfileFolder.Prepare(path);
            _file ??= AnswerJournal.Start(path, questions, passphrase?.Invoke());
            _file.Save(session);
        });
    }

    /// <summary>The visit is saved, so the draft goes.</summary>
    internal void Discard() => Guarded(() =>
    {
        var file = _file;
        _file = null;
        file?.Discard();
        _takenUp.ForEach(Wipe);
        _takenUp.Clear();
    });

    /// <summary>Erases a draft that nobody wants.</summary>
    internal void Drop(string draft) => Guarded(() => Wipe(draft));

    /// <inheritdoc/>
    public void Dispose() => _file?.Dispose();

    private static void Wipe(string draft) => AnswerJournal.Drop(draft);

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
            tell($"The draft of the answers beside {path} could not be written or erased, {ProfileFile.Reason(e)}. The visit goes on without it.");
            return false;
        }
    }
}
