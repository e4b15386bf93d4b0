using System.Collections.Immutable;
using System.CommandLine;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands.Calculators;

/// <summary>The quick calculators: one computation of the assessment by itself.</summary>
internal static class CalcCommand
{
    /// <summary>All of them.</summary>
    internal static ImmutableArray<Calculator> All { get; } = [GripCommand.Calculator, PaperCommand.Calculator, WaterCommand.Calculator, ReachCommand.Calculator];

    internal static Command Define(Terminal terminal)
    {
        var command = new Command("calc", "Quick calculators: grip, paper, water, reach.");
        foreach (var calculator in All)
        {
            command.Add(calculator.Define(terminal));
        }

        return command;
    }
}
