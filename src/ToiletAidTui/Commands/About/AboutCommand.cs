using System.CommandLine;
using ToiletAid.App.Files;
using ToiletAidTui.Host;
using ToiletAidTui.Notices;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands.About;

/// <summary>What the program is made of and what its numbers rest on.</summary>
internal static class AboutCommand
{
    internal static Command Define(Terminal terminal)
    {
        var format = Formats.Option(Formats.Text, Formats.Json);
        var sources = new Option<bool>("--sources") { Description = "Also every publication that numbers were taken from." };
        var notices = new Option<bool>("--notices") { Description = "The licences of all libraries in full, and nothing else." };
        var command = new Command("about", "Tell the versions, the licences, and how many numbers rest on what.") { format, sources, notices };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(notices))
            {
                terminal.Output.Write(Shipped.Notices());
                return ExitCode.Good;
            }

            if (parsed.GetValue(format) == Formats.Json)
            {
                terminal.Output.WriteLine(JsonText.Of(JsonText.Indented, AboutJson.Of(AboutFacts.Of())));
                return ExitCode.Good;
            }

            terminal.Results.Lines(AboutText.Lines(AboutFacts.Of(), parsed.GetValue(sources)));
            return ExitCode.Good;
        });
        return command;
    }
}
