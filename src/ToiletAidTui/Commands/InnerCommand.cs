using System.Collections.Immutable;
using ToiletAidTui.Commands.Calculators;
using ToiletAidTui.Host;
using ToiletAidTui.Screens;

namespace ToiletAidTui.Commands;

/// <summary>Commands run from a screen, with what they say caught.</summary>
internal static class InnerCommand
{
    /// <summary>The calculators with their options.</summary>
    internal static ImmutableArray<CalculatorForm> Calculators(Terminal terminal) =>
    [
        .. CalcCommand.Define(terminal).Subcommands.Select(c => new CalculatorForm(
            c.Name,
            c.Description ?? string.Empty,
            [.. c.Options.Where(o => o.Name != "--format").Select(o => new FormField(o.Name, FormWords.Of(c.Name, o.Name), o.Description ?? string.Empty))])),
    ];

    /// <summary>Runs one; nobody can be asked anything meanwhile.</summary>
    internal static (int Code, string Output, string Error) Run(Terminal terminal, ImmutableArray<string> words)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var inner = new Terminal
        {
            Input = Stream.Null,
            Output = output,
            Error = error,
            Variable = terminal.Variable,
            Clock = terminal.Clock,
            Passphrase = terminal.Passphrase.WithoutTyping(),
        };
        int code = CliHost.Run([.. words], inner, keepsPassphrase: true);
        return (code, output.ToString(), error.ToString());
    }
}
