using System.CommandLine;
using ToiletAid.App.Files;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAidTui.Batch;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>Scores saved profiles.</summary>
internal static class RankCommand
{
    internal static Command Define(Terminal terminal)
    {
        var paths = ProfileArgument.Many();
        var format = Formats.Option(Formats.Text, Formats.Json, Formats.Ndjson, Formats.Csv);
        var top = Formats.Top();
        var aids = StockOption.Define();
        var batch = new BatchOptions();
        var command = new Command("rank", "Rank the plans for saved profiles, the latest visit of each.") { paths, format, top, aids, ClinicOption.Define() };
        batch.AddTo(command);
        var level = new LevelOptions();
        level.AddTo(command);
        command.SetAction(parsed => StockOption.Over(BuiltIn.Knowledge(), parsed.GetValue(aids), terminal) is { } knowledge
            ? Run(terminal, knowledge, parsed.GetValue(paths)!, parsed.GetValue(format)!, parsed.GetValue(top), level.IsBrief(parsed, terminal), batch.Of(parsed))
            : ExitCode.InputRefused);
        return command;
    }

    private static int Run(Terminal terminal, KnowledgeBase knowledge, string[] paths, string format, int top, bool isBrief, BatchSettings settings)
    {
        var form = ResultForm.Of(format, terminal, knowledge, top, isBrief, resumed: settings.Resume > 0);
        bool any = false;

        // One profile leaves the other cores idle.
        var advice = paths is [var one] && BatchSource.IsOne(one) ? AllCores.On(settings.Advice, settings.Jobs) : settings.Advice;
        int code = new BatchRun(terminal, knowledge.Questions, settings).Run<string>(
            paths,
            () =>
            {
                // A table has no place for what a grip that was not measured does.
                var advisor = new Advisor(knowledge, advice with { AsksGrip = format != Formats.Csv });
                return profile => form.Of(profile, advisor.Advise(profile.Latest.Answers));
            },
            result =>
            {
                terminal.Output.Write(form.Before(!any));
                terminal.Output.Write(result);
                any = true;
            },
            form.Join);
        terminal.Output.Write(form.After(any));
        terminal.Output.Flush();
        return code;
    }
}
