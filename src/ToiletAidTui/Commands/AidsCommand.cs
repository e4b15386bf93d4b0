using System.CommandLine;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands;

/// <summary>Lists the kinds of aid.</summary>
internal static class AidsCommand
{
    internal static Command Define(Terminal terminal)
    {
        var format = Formats.Option(Formats.Text, Formats.Json);
        var command = new Command("aids", "List the kinds of aid and add-ons with their attributes and where the numbers come from. Check or measure the clinic's own.") { format };
        command.Add(AidsCheckCommand.Define(terminal));
        command.Add(AidsMeasureCommand.Define(terminal));
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(format) == Formats.Json)
            {
                KnowledgeText.Copy("aids.json", terminal.Output);
                return ExitCode.Good;
            }

            terminal.Results.Lines(KnowledgeText.Aids(BuiltIn.Aids()));
            return ExitCode.Good;
        });
        return command;
    }
}
