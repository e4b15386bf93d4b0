using System.CommandLine;
using Humanizer;
using ToiletAid.App.Files;
using ToiletAid.App.Stock;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands;

/// <summary>Checks a clinic's own stock.</summary>
internal static class AidsCheckCommand
{
    internal static Command Define(Terminal terminal)
    {
        var file = new Argument<string>("FILE") { Description = "File in the form that toiletaid aids --format json prints." };
        var command = new Command("check", "Check a file of the clinic's own aids and list everything that is wrong with it.") { file };
        command.SetAction(parsed =>
        {
            string path = parsed.GetValue(file)!;
            var read = new StockReader(BuiltIn.Aids()).ReadFile(path);
            if (read.TryGet(out var stock))
            {
                terminal.Output.WriteLine($"{path} is good. It has {"aid".ToQuantity(stock.Catalogue.Aids.Length)} and {"add-on".ToQuantity(stock.Catalogue.AddOns.Length)}.");
                if (stock.SetsPrices)
                {
                    terminal.Output.WriteLine("It sets prices of consumables.");
                }

                return ExitCode.Good;
            }

            terminal.Complain(path, read.Issues);
            return ExitCode.InputRefused;
        });
        return command;
    }
}
