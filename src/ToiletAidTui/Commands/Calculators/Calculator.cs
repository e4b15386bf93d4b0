using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Completions;
using ToiletAid.App.Calculators;
using ToiletAid.App.Files;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands.Calculators;

/// <summary>A calculator: options as text, text or JSON out, one sentence for each refused option.</summary>
/// <param name="Name">Name of the command.</param>
/// <param name="Description">What it computes.</param>
/// <param name="Options">Names without dashes, and descriptions.</param>
/// <param name="Compute">Computes, or gives null after noting a fault.</param>
internal sealed record Calculator(
    string Name, string Description, ImmutableArray<(string Name, string Description)> Options, Func<CalculatorInput, Calculation?> Compute)
{
    /// <summary>Its command.</summary>
    /// <param name="terminal">What it talks to.</param>
    internal Command Define(Terminal terminal)
    {
        var byName = Options.ToDictionary(o => o.Name, o => new Option<string?>("--" + o.Name) { HelpName = ValueName(o.Name), Description = o.Description }, StringComparer.Ordinal);
        foreach (var option in byName)
        {
            option.Value.CompletionSources.Add(_ => Words(option.Key));
        }

        var format = Formats.Option(Formats.Text, Formats.Json);
        var command = new Command(Name, Description);
        foreach (var option in byName.Values)
        {
            command.Add(option);
        }

        command.Add(format);
        command.SetAction(parsed => Run(terminal, BuiltIn.Knowledge(), option => parsed.GetValue(byName[option]), parsed.GetValue(format)!));
        return command;
    }

    /// <summary>Computes and says what comes out.</summary>
    /// <param name="terminal">What it talks to.</param>
    /// <param name="knowledge">What it rests on.</param>
    /// <param name="text">Text of an option by its name without dashes; null when it was not given.</param>
    /// <param name="format">Text or JSON.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    internal int Run(Terminal terminal, KnowledgeBase knowledge, Func<string, string?> text, string format = Formats.Text)
    {
        var input = new CalculatorInput(knowledge, text, terminal);
        var calculation = Compute(input);
        foreach (string fault in input.Typed.Faults)
        {
            terminal.Error.WriteLine(fault);
        }

        if (calculation is null || input.Typed.Faults.Count > 0)
        {
            return ExitCode.WrongUsage;
        }

        Show(terminal, calculation, format);
        return ExitCode.Good;
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

        terminal.Output.Write(JsonText.Of(JsonText.Indented, calculation.Json()) + "\n");
    }
}
