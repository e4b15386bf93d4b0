using System.CommandLine;
using ToiletAid.App.Clinics;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Outcomes;
using ToiletAidTui.Batch;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>Says what came out of a clinic's trials, and saves what it can learn from them.</summary>
internal sealed class OutcomesCommand
{
    private readonly Argument<string[]> _paths = ProfileArgument.Many();
    private readonly Option<string> _format = Formats.Option(Formats.Text, Formats.Csv);
    private readonly Option<string?> _picture = new("--picture") { HelpName = "FILE", Description = "File such as outcomes.svg for a picture of how often plans worked against how often they were said to, with a description in words." };
    private readonly Option<string?> _save = new("--save") { HelpName = "FILE", Description = "File for the clinic's own values, for use with --clinic. It names nobody." };
    private readonly Option<string?> _aids = StockOption.Define();
    private readonly BatchOptions _batch = new();
    private readonly Terminal _terminal;

    private OutcomesCommand(Terminal terminal) => _terminal = terminal;

    internal static Command Define(Terminal terminal)
    {
        var outcomes = new OutcomesCommand(terminal);
        var command = new Command("outcomes", "Say what was predicted and what was seen in the clinic's own trials, and learn from them.")
        {
            outcomes._paths, outcomes._format, outcomes._picture, outcomes._save, outcomes._aids,
        };
        outcomes._batch.AddTo(command);
        command.SetAction(outcomes.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        // What is held against trials are the built-in values, whatever the clinic learnt before.
        if (StockOption.Alone(BuiltIn.Knowledge(), parsed.GetValue(_aids), _terminal) is not { } knowledge)
        {
            return ExitCode.InputRefused;
        }

        if ((OutputFile.Fault(_terminal, parsed.GetValue(_picture)) ?? OutputFile.Fault(_terminal, parsed.GetValue(_save))) is { } refused)
        {
            return Complain(refused);
        }

        var settings = _batch.Of(parsed);
        var tally = new OutcomeTally(knowledge);
        int code = new BatchRun(_terminal, knowledge.Questions, settings).Run<PersonOutcome>(
            parsed.GetValue(_paths)!,
            () =>
            {
                var advisor = new Advisor(knowledge, settings.Advice);
                return profile => PersonOutcome.Of(knowledge, profile, advisor.Predict);
            },
            tally.Add,
            ". It counts only the rest, so add its counts to these");
        if (parsed.GetValue(_format) == Formats.Csv)
        {
            foreach (string row in OutcomeTable.Rows(tally))
            {
                _terminal.Output.Write(row + "\n");
            }
        }
        else
        {
            _terminal.Results.Lines(new OutcomeText(knowledge).Lines(tally));
        }

        if (parsed.GetValue(_picture) is { } picture && OutputFile.Write(_terminal, picture, CalibrationPicture.Svg(tally)) is { } fault)
        {
            code = Math.Max(code, Complain(fault));
        }

        if (parsed.GetValue(_save) is { } file)
        {
            code = Math.Max(code, Save(file, knowledge, tally));
        }

        _terminal.Output.Flush();
        return code;
    }

    private int Save(string file, KnowledgeBase knowledge, OutcomeTally tally)
    {
        var fit = new ClinicFit(knowledge.Evidence);
        if (fit.Fit(tally, KnowledgeVersion.Knowledge) is not { } clinic)
        {
            return Complain($"{file} was not written: a plan was tried with {tally.PeopleWithTries} people, and fewer than {fit.LeastPeople} tell less than the built-in values.");
        }

        byte[] bytes = ClinicFile.Write(clinic, knowledge);
        try
        {
            // It tells nothing about a person, and colleagues who were let in stay let in.
            WholeFile.Write(file, bytes, keepRights: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return Complain($"{(file.Length == 0 ? "The file" : file)} could not be written, {FileFault.Reason(e)}.");
        }

        // Where the results go to a program, what was learnt is told beside them.
        var lines = new SpeechLines(_terminal.OutputIsTerminal ? _terminal.Output : _terminal.Error, _terminal.OutputIsTerminal ? _terminal.Width : 0);
        lines.Line($"Saved in {file}, from {clinic.Tries} first tries with {clinic.People} people. It is used only where --clinic or the setting clinic names it.");
        lines.Lines(new ClinicText(knowledge).Lines(clinic));
        return ExitCode.Good;
    }

    private int Complain(string sentence)
    {
        _terminal.Error.WriteLine(sentence);
        return ExitCode.InputRefused;
    }
}
