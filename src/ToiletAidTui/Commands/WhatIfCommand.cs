using System.CommandLine;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Explaining;
using ToiletAid.Core.Knowledge;
using ToiletAidTui.Batch;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>Says how first places of saved profiles move when aids or priorities change.</summary>
internal static class WhatIfCommand
{
    internal static Command Define(Terminal terminal)
    {
        var paths = ProfileArgument.Many();
        var change = new Option<string[]>("--change") { HelpName = "CHANGE", Description = "What is different: aids=FILE with a clinic's own aids, or priorities=skin,reach=handling,upkeep for everybody.", Required = true, AllowMultipleArgumentsPerToken = false };
        var summary = new Option<bool>("--summary") { Description = "Only the counts, for planning of stock." };
        var picture = new Option<string?>("--picture") { HelpName = "FILE", Description = "File for a bar chart of the counts: text where its name ends in .txt, otherwise SVG with a description in words." };
        var format = Formats.Option(Formats.Text, Formats.Json, Formats.Csv);
        var batch = new BatchOptions();
        var command = new Command("whatif", "Say how first places of a set of profiles move when aids or priorities change, and why.") { paths, change, summary, picture, format, ClinicOption.Define() };
        batch.AddTo(command);
        command.SetAction(parsed =>
        {
            if (OutputFile.Fault(terminal, parsed.GetValue(picture)) is { } refused)
            {
                terminal.Error.WriteLine(refused);
                return ExitCode.InputRefused;
            }

            if (ClinicOption.Over(BuiltIn.Knowledge(), terminal) is not { } knowledge)
            {
                return ExitCode.InputRefused;
            }

            var (found, code) = WhatIfChange.Of(parsed.GetValue(change)!, knowledge, terminal);
            if (found is null)
            {
                return code;
            }

            var tally = new WhatIfTally(knowledge, found.After);
            var settings = batch.Of(parsed);
            var form = WhatIfForm.Of(parsed.GetValue(format)!, terminal, found.Said, parsed.GetValue(summary), resumed: settings.Resume > 0);
            code = Run(terminal, knowledge, found, parsed.GetValue(paths)!, settings, tally, form);
            return parsed.GetValue(picture) is { } file ? Math.Max(code, Draw(terminal, file, found, tally)) : code;
        });
        return command;
    }

    private static int Run(Terminal terminal, KnowledgeBase before, WhatIfChange change, string[] paths, BatchSettings settings, WhatIfTally tally, WhatIfForm form)
    {
        form.Begin();
        int code = new BatchRun(terminal, before.Questions, settings).Run<Moved>(
            paths,
            () =>
            {
                var now = new Advisor(before, settings.Advice with { AsksGrip = false });
                var then = ReferenceEquals(before, change.After) ? now : now.WithStock(change.After.Catalogue, change.After.Prices);
                return profile => new(
                    profile.Person,
                    FirstPlaceMove.Of(now.Advise(profile.Latest.Answers), then.Advise(change.Apply(profile.Latest.Answers))));
            },
            moved =>
            {
                tally.Add(moved.Move);
                form.Person(moved.Person, moved.Move);
            },
            form.Join);
        form.End(tally);
        terminal.Output.Flush();
        return code;
    }

    private static int Draw(Terminal terminal, string file, WhatIfChange change, WhatIfTally tally)
    {
        string title = $"First places before and after: {change.Said}";
        string drawing = file.EndsWith(".txt", StringComparison.OrdinalIgnoreCase) ? WhatIfBars.Text(title, tally) : WhatIfPicture.Svg(title, tally);
        if (OutputFile.Write(terminal, file, drawing) is not { } fault)
        {
            return ExitCode.Good;
        }

        terminal.Error.WriteLine(fault);
        return ExitCode.InputRefused;
    }

    private sealed record Moved(string Person, FirstPlaceMove Move);
}
