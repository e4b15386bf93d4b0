using ToiletAid.App.Files;
using ToiletAid.App.Sessions;
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
        var files = new ProfileFile(questions);
        Profile? earlier = null;
        if (save is not null && Path.Exists(save))
        {
            var read = files.Read(save);
            if (!read.TryGet(out earlier))
            {
                terminal.Error.WriteLine(read.Issues[0].Sentence(save) + ". Nothing was asked.");
                return ExitCode.InputRefused;
            }
        }

        _lines.Line("Linear mode. Type help at any question.");
        var advisor = new Advisor(knowledge, new());
        var planner = new QuestionPlanner(knowledge, advisor);
        var engine = new InterviewEngine(questions, answers => planner.Open(depth, answers));
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

        return Save(files, earlier, engine.Answers) is { } fault ? fault : code;
    }

    private int? Save(ProfileFile files, Profile? earlier, Answers answers)
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
        var profile = earlier is null ? new Profile(person ?? AskCode(), [session]) : earlier with { Sessions = earlier.Sessions.Add(session) };
        while (true)
        {
            try
            {
                files.Write(profile, save);
                _lines.Line($"Saved as {profile.Person} in {save}.");
                return null;
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
