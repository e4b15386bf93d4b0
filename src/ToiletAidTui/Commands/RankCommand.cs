using System.CommandLine;
using ToiletAid.App.Files;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Explaining;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands;

/// <summary>Scores saved profiles.</summary>
internal static class RankCommand
{
    internal static Command Define(Terminal terminal)
    {
        var paths = new Argument<string[]>("PATH") { Description = "Profile, folder of profiles, or - for one profile a line on standard input.", Arity = ArgumentArity.OneOrMore };
        var format = Formats.Option(Formats.Text, Formats.Json, Formats.Ndjson, Formats.Csv);
        var top = Formats.Top();
        var aids = StockOption.Define();
        var command = new Command("rank", "Rank the plans for saved profiles, the latest session of each.") { paths, format, top, aids };
        command.SetAction(parsed => Run(terminal, parsed.GetValue(paths)!, parsed.GetValue(format)!, parsed.GetValue(top), parsed.GetValue(aids)));
        return command;
    }

    private static int Run(Terminal terminal, string[] paths, string format, int top, string? aids)
    {
        if (StockOption.Over(BuiltIn.Knowledge(), aids, terminal) is not { } knowledge)
        {
            return ExitCode.InputRefused;
        }

        var advisor = new Advisor(knowledge, new());
        var source = new ProfileSource(knowledge.Questions, terminal);
        int code = ExitCode.Good;
        using var writer = ResultWriter.Of(format, terminal, knowledge, top);
        foreach (var (name, read) in paths.SelectMany(source.Read))
        {
            if (read.TryGet(out var profile))
            {
                var known = profile.Latest.Answers;
                var advice = advisor.Advise(known);

                // A table has no place for it, and it takes two more rankings.
                writer.Write(profile, format == Formats.Csv ? advice : advice with { Grip = GripDependence.Of(knowledge, advisor, known) });
                continue;
            }

            foreach (var issue in read.Issues)
            {
                terminal.Error.WriteLine(issue.Sentence(name) + ".");
            }

            code = ExitCode.InputRefused;
        }

        return code;
    }
}
