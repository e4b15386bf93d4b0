using ToiletAid.App.Files;
using ToiletAid.App.Sessions;
using ToiletAid.App.Store;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands;

/// <summary>
/// Keeps the answers of an interview after each one, and takes up those of one that broke off.
/// Only for an interview that is to be saved: otherwise no answer is written to a shared PC.
/// </summary>
internal sealed class Draft(Terminal terminal, SpeechLines lines, LineReader input, string save, QuestionSet questions, DateOnly day, Depth depth, Func<string?>? passphrase) : IDisposable
{
    private readonly List<string> _taken = [];
    private DraftFile? _file;
    private bool _failed;

    /// <summary>Takes up what was left, if the person wants it, and keeps what is answered from now on.</summary>
    internal void Attach(InterviewEngine engine)
    {
        engine.OnChange = Keep;
        if (!terminal.InputIsTerminal)
        {
            return;
        }

        foreach (string left in DraftFile.Left(save))
        {
            var read = DraftFile.Read(left, questions, passphrase);
            if (!read.TryGet(out var session))
            {
                terminal.Error.WriteLine($"{read.Issues[0].Sentence(left)}.");
                continue;
            }

            int count = session.Answers.Ids.Count();
            lines.Line($"An interview of {session.Date:yyyy-MM-dd} with {count} {(count == 1 ? "answer" : "answers")} was not finished.");
            if (Asked("Go on with it? yes or no: "))
            {
                engine.Resume(session.Answers);
                _taken.Add(left);
                return;
            }

            if (Asked("Erase it? yes or no: "))
            {
                Guarded(() => DraftFile.Drop(left));
            }
        }
    }

    /// <summary>The session is saved, so the draft goes.</summary>
    internal void Discard() => Guarded(() =>
    {
        _file?.Discard();
        _taken.ForEach(DraftFile.Drop);
    });

    /// <inheritdoc/>
    public void Dispose() => _file?.Dispose();

    private void Keep(Answers answers)
    {
        if (!_failed)
        {
            Guarded(() =>
            {
                ProfileFolder.Prepare(save);
                (_file ??= DraftFile.Start(save, questions, day, depth, passphrase?.Invoke())).Save(answers);
            });
        }
    }

    /// <summary>A draft that cannot be kept is told once; the interview goes on.</summary>
    private void Guarded(Action action)
    {
        try
        {
            action();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            _failed = true;
            terminal.Error.WriteLine($"The draft of the answers could not be kept or erased, {ProfileFile.Reason(e)}. The interview goes on.");
        }
    }

    private bool Asked(string question)
    {
        lines.Prompt(question);
        return input.ReadLine()?.Trim().StartsWith("y", StringComparison.OrdinalIgnoreCase) ?? false;
    }
}
