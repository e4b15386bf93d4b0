using System.CommandLine;
using ToiletAid.App.Stock;
using ToiletAid.Core.Knowledge;
using ToiletAidTui.Host;

namespace ToiletAidTui.Options;

/// <summary>The option that lays a clinic's own stock over the built-in kinds.</summary>
internal static class StockOption
{
    internal static Option<string?> Define() => new("--aids") { HelpName = "FILE", Description = "The clinic's own aids and prices, over the built-in kinds." };

    /// <summary>Knowledge with the stock over it, and with the clinic's own values where they were chosen; null after faults were told.</summary>
    internal static KnowledgeBase? Over(KnowledgeBase knowledge, string? file, Terminal terminal) =>
        Alone(knowledge, file, terminal) is { } stocked ? ClinicOption.Over(stocked, terminal) : null;

    /// <summary>Knowledge with the stock over it; null after its faults were told.</summary>
    internal static KnowledgeBase? Alone(KnowledgeBase knowledge, string? file, Terminal terminal)
    {
        if (file is null)
        {
            return knowledge;
        }

        var read = new StockReader(knowledge.Catalogue).ReadFile(file);
        if (read.TryGet(out var stock))
        {
            return stock.Over(knowledge);
        }

        terminal.Complain(file, read.Issues);

        return null;
    }
}
