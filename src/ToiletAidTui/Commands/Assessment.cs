using Humanizer;
using ToiletAid.App.Files;
using ToiletAid.App.Sessions;
using ToiletAid.App.Store;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Explaining;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Linear;

namespace ToiletAidTui.Commands;

/// <summary>One interview from the first line to the saved file.</summary>
internal sealed class Assessment(Terminal terminal, Depth depth, string? save, string? person, DateOnly day, int top)
{
    private readonly SpeechLines _lines = new(terminal.Talk, terminal.InputIsTerminal ? terminal.Width : 0);
    private readonly LineReader _input = new(terminal.Input);

    internal int Run()
    {
        var knowledge = BuiltIn.Knowledge();
        var questions = knowledge.Questions;
        var store = new ProfileStore(questions);
        StoredProfile? earlier = null;
        if (save is not null && Path.Exists(save))
        {
            var read = store.Open(save, terminal.Passphrase.Get);
            if (!read.TryGet(out earlier))
            {
                terminal.Error.WriteLine(string.Join(". ", read.Issues.Select(i => i.Sentence(save))) + ". Nothing was asked.");
                return ExitCode.InputRefused;
            }

            if (earlier.Seal == Seal.Changed)
            {
                _lines.Line("The file was changed by something else than toiletaid since it was saved.");
            }
        }

        _lines.Line("Linear mode. Type help at any question.");
        var advisor = new Advisor(knowledge, new());
        var planner = new QuestionPlanner(knowledge, advisor);
        var engine = new InterviewEngine(questions, answers => planner.Open(depth, answers));
        using var draft = save is null ? null : new Draft(terminal, _lines, _input, save, questions, day, depth, earlier is { IsProtected: true } ? terminal.Passphrase.Get : null);
        draft?.Attach(engine);
        var end = new LinearInterview(engine, _lines, _input, terminal.InputIsTerminal).Run();
        int code = end == InterviewEnd.InputEnded && !terminal.InputIsTerminal ? ExitCode.InputRefused : ExitCode.Good;
        if (end == InterviewEnd.InputEnded)
        {
            _lines.Line($"Input ended at question {engine.Position} of {engine.Total}.");
        }
        else if (end == InterviewEnd.Done)
        {
            _lines.Line("No other question can change the result. Result:");
            var advice = advisor.Advise(engine.Answers);
            _lines.Lines(new AdviceText(knowledge).Lines(advice, engine.Answers, top));
        }

        if (Save(store, earlier, engine.Answers) is { } fault)
        {
            return fault;
        }

        draft?.Discard();
        return code;
    }

    private int? Save(ProfileStore store, StoredProfile? earlier, Answers answers)
    {
        if (save is null)
        {
            _lines.Line("Nothing was saved.");
            return null;
        }

        if (!answers.Ids.Any())
        {
            _lines.Line("There is no answer to save.");
            return null;
        }

        var session = new Session(day, depth, answers);
        string code = earlier?.Profile.Person ?? person ?? AskCode();
        while (true)
        {
            try
            {
                ProfileFolder.Prepare(save);
                var saved = store.Add(save, code, session, earlier, terminal.Passphrase.Get);
                if (saved.TryGet(out var now))
                {
                    Tell(now);
                    return null;
                }

                terminal.Error.WriteLine($"{saved.Issues[0].Sentence(save)}. The answers are still here.");
                earlier = null;
                if (!terminal.InputIsTerminal || !AskAgain())
                {
                    return ExitCode.InputRefused;
                }
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                terminal.Error.WriteLine($"{save} could not be written, {ProfileFile.Reason(e)}. The answers are still here.");
                if (!terminal.InputIsTerminal || !AskAgain())
                {
                    return ExitCode.InputRefused;
                }
            }
        }
    }

    private void Tell(Saved saved)
    {
        if (!saved.AddedElsewhere.IsEmpty)
        {
            _lines.Line($"In the meantime {"session".ToQuantity(saved.AddedElsewhere.Length)} of this person came from elsewhere. All are kept.");
        }

        _lines.Line(saved.WasThere ? $"This session is in {save} already." : $"Saved as {saved.Stored.Profile.Person} in {save}.");
    }

    private bool AskAgain()
    {
        _lines.Prompt("Try again? yes or no: ");
        return _input.ReadLine()?.Trim().StartsWith("y", StringComparison.OrdinalIgnoreCase) ?? false;
    }

    private string AskCode()
    {
        string wanted = "Code of the person, such as K-014: ";
        while (true)
        {
            _lines.Prompt(wanted);
            string? typed = _input.ReadLine()?.Trim();
            if (typed is null || !terminal.InputIsTerminal)
            {
                _lines.EndPrompt();
            }

            if (typed is null)
            {
                return "P-0";
            }

            if (PersonCode.Fault(typed) is not { } fault)
            {
                return typed;
            }

            _lines.Line($"Error: {(typed.Length == 0 ? "That" : "The code")} {fault}.");
            wanted = "Not taken. Code: ";
        }
    }
}
