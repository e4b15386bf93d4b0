using System.CommandLine;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>Lists the questions.</summary>
internal static class QuestionsCommand
{
    internal static Command Define(Terminal terminal)
    {
        var format = Formats.Option(Formats.Text, Formats.Json, Formats.Schema);
        var command = new Command("questions", "List the questions with their ids, answers, units, and how to find out. The form schema gives the JSON Schema of a profile.") { format };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(format) == Formats.Json)
            {
                KnowledgeText.Copy("questions.json", terminal.Output);
                return ExitCode.Good;
            }

            if (parsed.GetValue(format) == Formats.Schema)
            {
                terminal.Output.Write(ProfileSchema.Of(BuiltIn.Questions()));
                return ExitCode.Good;
            }

            terminal.Results.Lines(KnowledgeText.Questions(BuiltIn.Questions()));
            return ExitCode.Good;
        });
        return command;
    }
}
