using System.CommandLine;
using System.Text.Json.Nodes;
using Humanizer;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Stock;
using ToiletAid.App.Wording;
using ToiletAid.Core.Catalogue;
using ToiletAidTui.Host;
using ToiletAidTui.Linear;

namespace ToiletAidTui.Commands;

/// <summary>Guided measuring of one aid.</summary>
internal static class AidsMeasureCommand
{
    internal static Command Define(Terminal terminal)
    {
        var save = new Option<string?>("--save") { HelpName = "FILE", Description = "File to save the aid in, for the option --aids of other commands. Other aids in the file are kept." };
        var command = new Command("measure", "Measure one aid with ruler, kitchen scale and luggage scale, question by question.") { save };
        command.SetAction(parsed => Run(terminal, parsed.GetValue(save)));
        return command;
    }

    private static int Run(Terminal terminal, string? save)
    {
        var kinds = BuiltIn.Aids();
        if (save is not null && Path.Exists(save) && new StockReader(kinds).ReadFile(save) is { Value: null } bad)
        {
            terminal.Complain(save, bad.Issues);

            terminal.Error.WriteLine("Nothing was asked. Fix the file first, or save to another one.");
            return ExitCode.InputRefused;
        }

        var lines = terminal.Dialogue;
        lines.Line("Measuring one aid. Have a ruler, a kitchen scale and a luggage scale at hand. Type help at any question.");
        if (save is null)
        {
            lines.Line("Without --save the result is only read out.");
        }

        var measuring = new AidMeasuring(kinds);
        var end = new MeasureDialogue(measuring, lines, terminal.Lines(), terminal.InputIsTerminal).Run();
        if (end != InterviewEnd.Done)
        {
            lines.Line(end == InterviewEnd.Quit ? "Nothing was saved." : $"Input ended at question {measuring.Position + 1}. Nothing was saved.");
            return end == InterviewEnd.Quit ? ExitCode.Good : ExitCode.InputRefused;
        }

        lines.Line($"That was the last question. Measured: {"number".ToQuantity(measuring.Count)}.");
        lines.Lines(measuring.Summary());
        return save is null ? ExitCode.Good : Save(terminal, lines, measuring, save, kinds);
    }

    private static int Save(Terminal terminal, SpeechLines lines, AidMeasuring measuring, string save, AidCatalogue kinds)
    {
        try
        {
            using var text = new StringWriter { NewLine = "\n" };
            KnowledgeText.Copy("aids.json", text);
            var aid = measuring.Result(JsonNode.Parse(text.ToString())!, terminal.Today);
            var issues = StockFile.Put(save, aid, kinds);
            terminal.Complain(save, issues);

            lines.Line(issues.Count == 0 ? $"Saved {(string)aid["id"]!} in {save}. Use it with --aids {save}." : "Nothing was saved.");
            return issues.Count == 0 ? ExitCode.Good : ExitCode.InputRefused;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            terminal.Error.WriteLine($"{(save.Length == 0 ? "The file" : save)} could not be written, {FileFault.Reason(e)}. Nothing was saved.");
            return ExitCode.InputRefused;
        }
    }
}
