using System.Collections.Immutable;
using ToiletAid.App.Files;
using ToiletAid.App.Sessions;
using ToiletAid.App.Store;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Asking;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Keys;
using ToiletAidTui.Linear;
using ToiletAidTui.Modes;
using ToiletAidTui.Options;
using ToiletAidTui.Visits;

namespace ToiletAidTui.Commands;

/// <summary>One interview from the first line to the saved file.</summary>
internal sealed class Assessment(Terminal terminal, InterfaceMode interfaceMode, Depth depth, string? save, string? person, DateOnly day, bool late, int top, string? aids)
{
    private SpeechLines _lines = terminal.Dialogue;
    private readonly DraftFile _drafts = new(BuiltIn.Questions(), terminal.Variable);
    private LineReader _input = terminal.Lines();
    private DateOnly _day = day;
    private bool _isLate = late;

    /// <summary>Answers that were typed with the command.</summary>
    internal string[] Given { get; init; } = [];

    internal int Run()
    {
        if (StockOption.Over(BuiltIn.Knowledge(), aids, terminal) is not { } knowledge)
        {
            return ExitCode.InputRefused;
        }

        if (!Opened(knowledge.Questions, out var earlier))
        {
            return ExitCode.InputRefused;
        }

        var advisor = new Advisor(knowledge, AllCores.Advice);
        using var each = save is null && !terminal.InputIsTerminal ? null : _drafts.EachAnswer(save, terminal.Passphrase.Get, earlier is { IsProtected: true });
        var goOn = new DraftQuestion(terminal, _lines, _input).Ask(each);
        if (goOn is null && !DayIsRight(earlier))
        {
            return ExitCode.WrongUsage;
        }

        var planner = QuestionPlanner.For(knowledge);
        var visit = Begun(knowledge.Questions, planner.Open, earlier, each, goOn);
        if (Given.Length > 0 && visit.Engine.Give(string.Join(' ', Given)) is { Accepted: false } refused)
        {
            terminal.Error.WriteLine(refused.Text);
            return ExitCode.WrongUsage;
        }

        if (interfaceMode.Mode == Mode.FullScreen)
        {
            return new ScreenCommand(terminal, knowledge, advisor, interfaceMode, top, aids).Run(visit);
        }

        each?.Tell = terminal.Error.WriteLine;
        return LineByLine(knowledge, advisor, planner, visit);
    }

    private int LineByLine(KnowledgeBase knowledge, Advisor advisor, QuestionPlanner planner, Visit visit)
    {
        using var guard = new ShutdownGuard(terminal, _drafts, () => visit);
        terminal.Keyboard?.Word = key => KeyWords.Of(interfaceMode.Settings.Keys, key);
        terminal.Keyboard?.Wake();
        _input = terminal.Lines(guard.Turn);
        _lines = _lines.Paged(terminal.InputIsTerminal ? terminal.Height : 0, _input);
        _lines.Line("Linear mode. Type help at any question.");
        var engine = visit.Engine;
        bool talks = terminal.InputIsTerminal && terminal.OutputIsTerminal;
        var interview = new LinearInterview(engine, _lines, _input, terminal.InputIsTerminal) { CanSwitch = interfaceMode.CanDraw, HasPages = talks, OneKey = interfaceMode.Settings.OneKey };
        var end = interview.Run();
        if (end is InterviewEnd.Switch or InterviewEnd.Page || (end == InterviewEnd.Done && talks))
        {
            guard.Dispose();
            return new ScreenCommand(terminal, knowledge, advisor, interfaceMode with { Mode = end == InterviewEnd.Switch ? Mode.FullScreen : Mode.Linear }, top, aids)
            {
                IsGreeted = end != InterviewEnd.Switch,
                AfterResult = v => save is null || !v.IsUnsaved ? null : Save(v),
            }.Run(visit, end == InterviewEnd.Page ? interview.Wanted : null);
        }

        int code = end == InterviewEnd.InputEnded && !terminal.InputIsTerminal ? ExitCode.InputRefused : ExitCode.Good;
        if (end == InterviewEnd.InputEnded)
        {
            _lines.Line($"Input ended at question {engine.Position} of {engine.Total}.");
        }
        else if (end == InterviewEnd.Done)
        {
            SayResult(knowledge, advisor, planner, visit);
        }

        return Save(visit) is { } fault ? fault : code;
    }

    /// <summary>Says why the questions ended, and the result.</summary>
    private void SayResult(KnowledgeBase knowledge, Advisor advisor, QuestionPlanner planner, Visit visit)
    {
        var engine = visit.Engine;
        var outlook = planner.OutlookFor(visit.Depth, engine.Answers);
        _lines.Line(engine.IsEndedEarly ? "The questions were ended early. Result:" : $"{ExplainText.End(outlook)} Result:");
        var known = visit.WithTrials(engine.Answers);
        Advice advice;
        using (terminal.InputIsTerminal ? new WorkNotice(_lines.LineNow, terminal.Clock) : null)
        {
            advice = advisor.Advise(known);
        }

        _lines.Lines(new AdviceText(knowledge).Lines(advice, known, top));
        _lines.Lines(ExplainText.Besides(outlook, advice));
    }

    /// <summary>Asks about a day that cannot be right, or that shows that another one was not; false when nobody can be asked and it is not taken.</summary>
    private bool DayIsRight(StoredProfile? earlier)
    {
        while (VisitDay.Doubt(_day, terminal.Today, earlier?.Profile) is { } doubt)
        {
            if (!terminal.InputIsTerminal)
            {
                bool goesOn = doubt.Kind == DayDoubt.LaterVisit || (doubt.Kind == DayDoubt.Earlier && _isLate);
                terminal.Error.WriteLine(goesOn ? doubt.Sentence : $"{doubt.Sentence} Nothing was asked. {doubt.Mend}");
                return goesOn;
            }

            _lines.Line(doubt.Sentence);
            if (_lines.AskYes($"Is {IsoDay.Of(_day)} the day of this visit?", _input))
            {
                _isLate = doubt.Kind == DayDoubt.Earlier;
                return true;
            }

            if (AskDay() is not { } right)
            {
                return false;
            }

            (_day, _isLate) = (right, false);
        }

        _isLate = false;
        return true;
    }

    private DateOnly? AskDay()
    {
        while (_lines.Ask("Day of the visit, such as 2026-03-09: ", _input, terminal.InputIsTerminal) is { } typed)
        {
            if (IsoDay.Find(typed.Trim()) is { } found)
            {
                return found;
            }

            _lines.Line("Error: That is not a date. Write year, month and day such as 2026-03-09.");
        }

        return null;
    }

    /// <summary>Opens the profile that is added to, if it is there; false when it cannot be used.</summary>
    private bool Opened(QuestionSet questions, out StoredProfile? earlier)
    {
        earlier = null;
        if (save is null || !Path.Exists(save))
        {
            return true;
        }

        var read = new ProfileStore(questions).Open(save, terminal.Passphrase.Get);
        if (!read.TryGet(out earlier))
        {
            terminal.Error.WriteLine(string.Join(". ", read.Issues.Select(i => i.Sentence(save))) + ". Nothing was asked.");
            return false;
        }

        if (earlier.Seal == Seal.Changed)
        {
            _lines.Line("Something other than toiletaid has changed the file since it was saved.");
        }

        return true;
    }

    /// <summary>A new visit, or one that broke off; each answer of it is kept.</summary>
    private Visit Begun(QuestionSet questions, Func<Depth, Answers, ImmutableArray<Question>> open, StoredProfile? earlier, AnswerDraft? each, (string Draft, Profile Kept)? goOn)
    {
        var visit = new Visit(questions, open, goOn?.Kept.Latest.Depth ?? depth, goOn?.Kept.Latest.Date ?? _day) { Profiles = new(terminal.Variable), Earlier = earlier, Path = save, Person = person, Draft = goOn?.Draft, IsLate = goOn?.Kept.Latest.IsLate ?? _isLate };
        if (goOn?.Kept is { } kept)
        {
            visit.Person ??= kept.Person == AnswerJournal.NoCode ? null : kept.Person;
            visit.Engine.TakeUp(kept.Latest);
        }

        visit.KeepIn(each);
        return visit;
    }

    private int? Save(Visit visit)
    {
        if (save is null)
        {
            visit.Forget();
            _lines.Line("Nothing was saved.");
            return null;
        }

        if (!visit.IsUnsaved)
        {
            visit.Forget();
            _lines.Line("There are no answers to save.");
            return null;
        }

        if (visit is { Earlier: null, Person: null })
        {
            AskCode(visit);
        }

        while (visit.Save(terminal.Passphrase.Get) is { } fault)
        {
            if (!terminal.InputIsTerminal)
            {
                // Nobody can try again: they are where the draft says they are.
                visit.Kept?.Tell = _ => { };
                terminal.Error.WriteLine($"{fault} {_drafts.Keep(visit)}");
                return ExitCode.InputRefused;
            }

            terminal.Error.WriteLine($"{fault} The answers are still here.");
            if (!_lines.AskYes("Try again?", _input))
            {
                terminal.Error.WriteLine(_drafts.Keep(visit));
                return ExitCode.InputRefused;
            }
        }

        _lines.Lines(visit.Said);
        return null;
    }

    private void AskCode(Visit visit)
    {
        string wanted = "Code of the person, such as K-014: ";
        while (visit.Person is null)
        {
            if (_lines.Ask(wanted, _input, terminal.InputIsTerminal)?.Trim() is not { } typed)
            {
                visit.Person = AnswerJournal.NoCode;
            }
            else if (visit.TakeCode(typed) is { } fault)
            {
                _lines.Line($"Error: {fault}");
                wanted = "Not taken. Code: ";
            }
        }
    }
}
