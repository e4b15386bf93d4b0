using System.CommandLine;
using System.Text;
using ToiletAid.App.Files;
using ToiletAid.Core.Person;
using ToiletAid.Core.Simulation;
using ToiletAidTui.Batch;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>Makes invented people.</summary>
internal static class SimulateCommand
{
    /// <summary>Day of every session: not today, so that the same command gives the same bytes on any day.</summary>
    private static readonly DateOnly Day = new(2026, 1, 1);

    internal static Command Define(Terminal terminal)
    {
        var people = new Option<long>("--people") { Description = "How many people.", Required = true };
        people.Validators.Add(r => NumberRange.Check(r, 1, PeopleSimulator.Most, "--people"));
        var seed = BatchOptions.Seed();
        var depth = new Option<string>("--depth") { Description = $"Which questions are answered: {string.Join(", ", Words.All<Depth>())}.", DefaultValueFactory = _ => Words.Of(Depth.Full) };
        depth.AcceptOnlyFromAmong([.. Words.All<Depth>()]);
        var command = new Command("simulate", "Make invented people, one profile a line, for load tests, demonstrations and what-if studies.") { people, seed, depth };
        command.SetAction(parsed => Run(terminal, parsed.GetValue(people), parsed.GetValue(seed), Words.Find<Depth>(parsed.GetValue(depth))!.Value));
        return command;
    }

    private static int Run(Terminal terminal, long people, ulong seed, Depth depth)
    {
        var knowledge = BuiltIn.Knowledge();
        var simulator = new PeopleSimulator(knowledge, BuiltIn.People());
        var writer = new ProfileWriter(knowledge.Questions);
        using var signals = new StopSignals(_ => { });
        for (long number = 0; number < people && !signals.HasCome; number++)
        {
            terminal.Output.Write(Encoding.UTF8.GetString(writer.Line(simulator.Make(seed, number, depth, Day))));
            terminal.Output.Write('\n');
        }

        terminal.Output.Flush();
        return signals.HasCome ? signals.ExitCode : ExitCode.Good;
    }
}
