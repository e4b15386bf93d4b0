using System.CommandLine;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Outcomes;
using ToiletAidTui.Batch;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>Lists for a clinic's week: who is due, what is in use, what came back, what will be wanted.</summary>
internal static class CaseloadCommand
{
    private const int MostWeeks = 520;

    internal static Command Define(Terminal terminal)
    {
        var paths = ProfileArgument.Many();
        var date = DayOption.Define("list");
        var weeks = new Option<int>("--weeks") { Description = "Weeks after the last visit at which a review is due.", DefaultValueFactory = _ => CaseloadTally.UsualWeeks(BuiltIn.Evidence()) };
        weeks.Validators.Add(r => NumberRange.Check(r, 1, MostWeeks, "--weeks"));
        var format = Formats.Option(Formats.Text, Formats.Csv);
        var aids = StockOption.Define();
        var batch = new BatchOptions();
        var command = new Command("caseload", "List who is due for review, what is in use, what was given up and what will be wanted.") { paths, date, weeks, format, aids, ClinicOption.Define() };
        batch.AddTo(command);
        command.SetAction(parsed =>
        {
            if (DayOption.Of(terminal, parsed.GetValue(date)) is not { } day)
            {
                return ExitCode.WrongUsage;
            }

            if (StockOption.Over(BuiltIn.Knowledge(), parsed.GetValue(aids), terminal) is not { } knowledge)
            {
                return ExitCode.InputRefused;
            }

            var settings = batch.Of(parsed);
            var tally = new CaseloadTally(knowledge.Catalogue);
            int code = new BatchRun(terminal, knowledge.Questions, settings).Run<CaseloadEntry>(
                parsed.GetValue(paths)!,
                () =>
                {
                    var advisor = new Advisor(knowledge, settings.Advice);
                    return profile => CaseloadEntry.Of(knowledge, profile, advisor.Advise);
                },
                tally.Add,
                ". It lists only the rest");
            var text = new CaseloadText(knowledge, day, parsed.GetValue(weeks));
            if (parsed.GetValue(format) == Formats.Csv)
            {
                foreach (string row in text.Rows(tally))
                {
                    terminal.Output.Write(row + "\n");
                }
            }
            else
            {
                terminal.Results.Lines(text.Lines(tally).Concat(ClinicText.Used(knowledge)));
            }

            terminal.Output.Flush();
            return code;
        });
        return command;
    }
}
