using System.Collections.Immutable;
using System.CommandLine;
using ToiletAid.App.Sessions;
using ToiletAid.App.Store;
using ToiletAid.App.Trials;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Linear;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>Records how a plan was tried.</summary>
internal sealed class TrialCommand
{
    private readonly Argument<string> _path = ProfileArgument.One();
    private readonly Option<string?> _date = DayOption.Define("trial");
    private readonly Option<string?> _aids = StockOption.Define();
    private readonly ImmutableDictionary<string, Option<string?>> _answers;
    private readonly Terminal _terminal;

    private TrialCommand(Terminal terminal)
    {
        _terminal = terminal;
        _answers = TrialInterview.Ids.ToImmutableDictionary(id => id, id => new Option<string?>("--" + id) { Description = Description(id) });
    }

    internal static Command Define(Terminal terminal)
    {
        var trial = new TrialCommand(terminal);
        var command = new Command("trial", "Record how a plan was tried, dry and for real. The next ranking uses it.") { trial._path, trial._date, trial._aids, ClinicOption.Define() };
        foreach (string id in TrialInterview.Ids)
        {
            command.Options.Add(trial._answers[id]);
        }

        command.SetAction(trial.Run);
        return command;
    }

    private static string Description(string id) => id switch
    {
        "plan" => "Place of the plan in the shortlist, or id of a kind of aid. Whatever no option gives is asked.",
        "before" => "Help needed until now, code of item GG0130C: 06 to 01, 07, 09, 10, 88, or unknown.",
        "goal" => "Goal, the most help that should be needed: 06 to 01, or unknown.",
        "dry" => "Whether it was tried dry and clothed: yes or no.",
        "real" => "Whether it was tried for real: yes or no.",
        "real-cleanliness" => "How clean it got: clean, traces, not-clean, or unknown.",
        _ when id.EndsWith("level", StringComparison.Ordinal) => "Help needed at that try, code of item GG0130C, or unknown.",
        _ when id.EndsWith("minutes", StringComparison.Ordinal) => "Minutes that the try took, or unknown.",
        _ when id.EndsWith("effort", StringComparison.Ordinal) => "Effort of the person from 0 to 10, or unknown.",
        _ => "What went wrong at that try: numbers or ids with commas between them, none, or unknown.",
    };

    private int Run(ParseResult parsed)
    {
        if (DayOption.Of(_terminal, parsed.GetValue(_date)) is not { } day)
        {
            return ExitCode.WrongUsage;
        }

        string path = new ProfileFolder(_terminal.Variable).Find(parsed.GetValue(_path)!);
        return OneProfile.With(_terminal, path, parsed.GetValue(_aids), (knowledge, profile) => Ask(parsed, knowledge, profile, path, day));
    }

    private int Ask(ParseResult parsed, KnowledgeBase knowledge, Profile profile, string path, DateOnly day)
    {
        if (TrialRecording.Begin(knowledge, new Advisor(knowledge, AllCores.Advice), profile, day, _terminal.Today, out var faults) is not { } recording)
        {
            return VisitDay.Doubt(day, _terminal.Today, profile) is { Kind: not DayDoubt.LaterVisit }
                ? Fault($"{faults[0]} Give its day with --date.", ExitCode.WrongUsage)
                : Fault(string.Join(_terminal.Error.NewLine, faults.Append("Nothing was saved.")), ExitCode.InputRefused);
        }

        var lines = _terminal.Dialogue;
        var interview = recording.Interview;
        lines.Line($"{recording.Title} Type help at any question.");
        var dialogue = new TrialDialogue(recording, lines, _terminal.Lines(), _terminal.InputIsTerminal, id => Given(parsed, id));
        var end = dialogue.Run();
        if (dialogue.Refusal is { } refusal)
        {
            return Fault($"{refusal} Nothing was saved.", ExitCode.WrongUsage);
        }

        if (end != InterviewEnd.Done || interview.Result is null)
        {
            return end switch
            {
                InterviewEnd.Quit => Say(lines, "Nothing was saved.", ExitCode.Good),
                InterviewEnd.Done => Say(lines, "Nothing was tried, so nothing was saved.", ExitCode.Good),
                _ => Fault($"Input ended at question {interview.Position}, {interview.Asked}. Nothing was saved.", ExitCode.InputRefused),
            };
        }

        lines.Lines(recording.Summary);
        var (saved, fault) = recording.Save(path, _terminal.Passphrase.Get);
        if (saved is null)
        {
            return Fault($"{path} could not be written, {fault}. Nothing was saved.", ExitCode.InputRefused);
        }

        lines.Line($"Saved as {profile.Person} in {path}.");
        lines.Lines(recording.Moved(saved.Profile));
        return ExitCode.Good;
    }

    /// <summary>What an option answers; a try of which anything is said took place.</summary>
    private string? Given(ParseResult parsed, string id) => parsed.GetValue(_answers[id])
        ?? (id is "dry" or "real" && _answers.Any(a => a.Key.StartsWith(id + "-", StringComparison.Ordinal) && parsed.GetValue(a.Value) is not null) ? "yes" : null);

    private static int Say(SpeechLines lines, string sentence, int code)
    {
        lines.Line(sentence);
        return code;
    }

    private int Fault(string sentence, int code)
    {
        _terminal.Error.WriteLine(sentence);
        return code;
    }
}
