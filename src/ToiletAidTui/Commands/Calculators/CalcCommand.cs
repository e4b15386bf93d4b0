using System.CommandLine;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands.Calculators;

/// <summary>The quick calculators: one computation of the assessment by itself.</summary>
internal static class CalcCommand
{
    internal static Command Define(Terminal terminal) => new("calc", "Quick calculators: grip, paper, water, reach.")
    {
        GripCommand.Define(terminal),
        PaperCommand.Define(terminal),
        WaterCommand.Define(terminal),
        ReachCommand.Define(terminal),
    };
}
