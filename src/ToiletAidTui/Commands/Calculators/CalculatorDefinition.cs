using System.CommandLine;
using System.CommandLine.Completions;
using ToiletAid.App.Calculators;
using ToiletAid.App.Files;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands.Calculators;

/// <summary>What all calculators share: options as text, text or JSON out, one sentence for each refused option.</summary>
internal static class CalculatorDefinition
{
    /// <summary>Makes a calculator's command.</summary>
    /// <param name="terminal">What it talks to.</param>
    /// <param name="name">Name of the command.</param>
    /// <param name="description">What it computes.</param>
    /// <param name="options">Names without dashes, and descriptions.</param>
    /// <param name="compute">Computes, or gives null after noting a fault.</param>
    internal static Command Of(
        Terminal terminal, string name, string description, IEnumerable<(string Name, string Description)> options, Func<CalculatorInput, Calculation?> compute)
    {
        var byName = options.ToDictionary(o => o.Name, o => new Option<string?>("--" + o.Name) { HelpName = ValueName(o.Name), Description = o.Description }, StringComparer.Ordinal);
        foreach (var option in byName)
        {
            option.Value.CompletionSources.Add(_ => Words(option.Key));
        }

        var format = Formats.Option(Formats.Text, Formats.Json);
        var command = new Command(name, description);
        foreach (var option in byName.Values)
        {
            command.Add(option);
        }

        command.Add(format);
        command.SetAction(parsed =>
        {
            var input = new CalculatorInput(BuiltIn.Knowledge(), option => parsed.GetValue(byName[option]), terminal);
            var calculation = compute(input);
            foreach (string fault in input.Typed.Faults)
            {
                terminal.Error.WriteLine(fault);
            }

            if (calculation is null || input.Typed.Faults.Count > 0)
            {
                return ExitCode.WrongUsage;
            }

            Show(terminal, calculation, parsed.GetValue(format)!);
            return ExitCode.Good;
        });
        return command;
    }

    private static string ValueName(string option) => option switch { "aid" => "ID", "add-on" => "IDS", "picture" => "FILE", _ => "VALUE" };

    /// <summary>Ids that an option takes, or those of the question of the same name.</summary>
    private static IEnumerable<CompletionItem> Words(string option) => (option switch
    {
        "aid" => BuiltIn.Aids().Aids.Select(a => a.Id),
        "add-on" => BuiltIn.Aids().AddOns.Select(a => a.Id),
        "approach" => ToiletAid.Core.Person.Words.All<Approach>(),
        _ => BuiltIn.Questions().All.FirstOrDefault(q => q.Id == option)?.Options.Select(o => o.Id) ?? [],
    }).Select(id => new CompletionItem(id));

    private static void Show(Terminal terminal, Calculation calculation, string format)
    {
        if (format == Formats.Text)
        {
            terminal.Results.Lines(calculation.Lines());
            return;
        }

        terminal.Output.Write(JsonText.Of(JsonText.Indented, json => calculation.Write(json)) + "\n");
    }
}
