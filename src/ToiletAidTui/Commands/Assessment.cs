using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Explaining;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Linear;
using ToiletAidTui.Screens;

namespace ToiletAidTui.Commands;

/// <summary>One interview from the first line to the saved file.</summary>
internal sealed class Assessment(Terminal terminal, Manner manner, Depth depth, string? save, string? person, DateOnly day, int top, string? aids)
{
    private readonly SpeechLines _lines = new(terminal.Talk, terminal.InputIsTerminal ? terminal.Width : 0);
    private LineReader _input = new(terminal.Input);

    internal int Run()
    {
        if (StockOption.Over(BuiltIn.Knowledge(), aids, terminal) is not { } knowledge)
        {
            return ExitCode.InputRefused;
        }

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

        var advisor = new Advisor(knowledge, new());
        var visit = new Visit(questions, new QuestionPlanner(knowledge, advisor).Open, depth, day) { Earlier = earlier, Path = save, Person = person };
        if (manner.Mode == Mode.FullScreen)
        {
            return new ScreenCommand(terminal, knowledge, advisor, manner, top).Run(visit);
        }

        using var keeper = new Keeper(terminal, new(files, DraftFile.UsualFolder(terminal.Variable)), () => visit);
        _input = new(terminal.Input, keeper.Turn);
        _lines.Line("Linear mode. Type help at any question.");
        var engine = visit.Engine;
        var end = new LinearInterview(engine, _lines, _input, terminal.InputIsTerminal) { CanSwitch = manner.CanDraw }.Run();
        if (end == InterviewEnd.Switch)
        {
            keeper.Dispose();
            return new ScreenCommand(terminal, knowledge, advisor, manner with { Mode = Mode.FullScreen }, top).Run(visit);
        }

        int code = end == InterviewEnd.InputEnded && !terminal.InputIsTerminal ? ExitCode.InputRefused : ExitCode.Good;
        if (end == InterviewEnd.InputEnded)
        {
            _lines.Line($"Input ended at question {engine.Position} of {engine.Total}.");
        }
        else if (end == InterviewEnd.Done)
        {
            _lines.Line("No other question can change the result. Result:");
            var known = visit.WithTrials(engine.Answers);
            var advice = advisor.Advise(known) with { Grip = GripDependence.Of(knowledge, advisor, known) };
            _lines.Lines(new AdviceText(knowledge).Lines(advice, known, top));
        }

        return Save(files, visit) is { } fault ? fault : code;
    }

    private int? Save(ProfileFile files, Visit visit)
    {
        if (save is null)
        {
            _lines.Line("Nothing was saved.");
            return null;
        }

        if (!visit.IsUnsaved)
        {
            _lines.Line("There is no answer to save.");
            return null;
        }

        if (visit.Earlier is null)
        {
            visit.Person ??= AskCode();
        }

        while (visit.Save(files) is { } fault)
        {
            terminal.Error.WriteLine($"{save} could not be written, {fault}. The answers are still here.");
            if (!terminal.InputIsTerminal || !AskAgain())
            {
                return ExitCode.InputRefused;
            }
        }

        _lines.Line($"Saved as {visit.Person} in {save}.");
        return null;
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
