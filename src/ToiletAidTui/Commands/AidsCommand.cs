using System.CommandLine;
using ToiletAid.App.Files;
using ToiletAid.App.Pictures;
using ToiletAid.App.Wording;
using ToiletAid.Core.Catalogue;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>Lists the kinds of aid, or says and draws one.</summary>
internal static class AidsCommand
{
    internal static Command Define(Terminal terminal)
    {
        var format = Formats.Option(Formats.Text, Formats.Json);
        var aid = new Option<string?>("--aid") { HelpName = "ID", Description = "One kind of aid alone, such as long-clamp." };
        var picture = new Option<string?>("--picture") { HelpName = "FILE", Description = "File such as clamp.svg for a drawing of that kind, with a description in words." };
        var stock = StockOption.Define();
        var command = new Command("aids", "List the kinds of aid and add-ons with their attributes and where the numbers come from. Draw one. Check or measure the clinic's own.") { format, aid, picture, stock };
        command.Add(AidsCheckCommand.Define(terminal));
        command.Add(AidsMeasureCommand.Define(terminal));
        command.SetAction(parsed => parsed.GetValue(format) == Formats.Json && parsed.GetValue(aid) is null && parsed.GetValue(picture) is null && parsed.GetValue(stock) is null
            ? Copy(terminal)
            : List(terminal, parsed.GetValue(aid), parsed.GetValue(picture), parsed.GetValue(stock), parsed.GetValue(format) == Formats.Json));
        return command;
    }

    private static int Copy(Terminal terminal)
    {
        KnowledgeText.Copy("aids.json", terminal.Output);
        return ExitCode.Good;
    }

    private static int List(Terminal terminal, string? id, string? picture, string? stock, bool json)
    {
        if (json)
        {
            return Usage(terminal, "JSON is the whole built-in file, leave out --aid, --picture and --aids");
        }

        if (picture is not null && id is null)
        {
            return Usage(terminal, "A picture shows one kind of aid, name it with --aid, such as --aid long-clamp");
        }

        if (OutputFile.Fault(terminal, picture) is { } refused)
        {
            terminal.Error.WriteLine(refused);
            return ExitCode.InputRefused;
        }

        if (StockOption.Alone(BuiltIn.Knowledge(), stock, terminal) is not { } knowledge)
        {
            return ExitCode.InputRefused;
        }

        var all = knowledge.Catalogue;
        if (id is null)
        {
            terminal.Results.Lines(KnowledgeText.Aids(all));
            return ExitCode.Good;
        }

        if (all.Aids.FirstOrDefault(a => a.Id == id) is not { } one)
        {
            return Usage(terminal, $"{id} is not a kind of aid, use one of {string.Join(", ", all.Aids.Select(a => a.Id))}");
        }

        if (picture is not null && OutputFile.Write(terminal, picture, AidPicture.Svg(one)) is { } fault)
        {
            terminal.Error.WriteLine(fault);
            return ExitCode.InputRefused;
        }

        terminal.Results.Lines([.. KnowledgeText.Aids(new AidCatalogue([one], [])).Where(l => l.Length > 0), $"Its shape: {AidPicture.Words(one)}"]);
        if (picture is not null)
        {
            terminal.Results.Lines([$"The picture in {picture} shows it, with a scale. It contains the same description."]);
        }

        return ExitCode.Good;
    }

    private static int Usage(Terminal terminal, string sentence)
    {
        terminal.Error.WriteLine(sentence + ".");
        return ExitCode.WrongUsage;
    }
}
