using System.CommandLine;
using ToiletAidTui.Commands.Help;
using ToiletAidTui.Host;
using ToiletAidTui.Keys;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands.Manual;

/// <summary>Prints the manual: all pages of help as one.</summary>
internal static class ManualCommand
{
    private const string Roff = "roff";

    internal static Command Define(Terminal terminal, RootCommand root)
    {
        var format = Formats.Option(Roff, Formats.Text);
        var command = new Command("man", "Print the manual of all commands, as a manual page or as text to be read aloud.") { format };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(format) == Roff)
            {
                terminal.Output.Write(ManualPage.Of(root));
                return ExitCode.Good;
            }

            terminal.Results.Lines([.. HelpPage.All(root).SelectMany(HelpText.Lines), .. EnvironmentVariables.All.Select(v => $"{v.Name}: {v.Meaning}"), .. KeyTopics.All().SelectMany(t => t.Sentences.Prepend($"{t.Heading}:"))]);
            return ExitCode.Good;
        });
        return command;
    }
}
