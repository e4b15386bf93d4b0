using System.Collections.Immutable;
using ToiletAid.Core.Knowledge;
using ToiletAidTui.Commands.Calculators;
using ToiletAidTui.Host;
using ToiletAidTui.Screens;

namespace ToiletAidTui.Commands;

/// <summary>What commands do, for the screens: over the knowledge that is loaded, with what they say caught.</summary>
/// <param name="terminal">What the program talks to; nobody can be asked anything meanwhile.</param>
/// <param name="knowledge">What advice rests on.</param>
internal sealed class ScreenFunctions(Terminal terminal, KnowledgeBase knowledge)
{
    /// <summary>The calculators.</summary>
    internal ImmutableArray<CalculatorForm> Calculators =>
    [
        .. CalcCommand.All.Select(c => new CalculatorForm(
            c.Name,
            c.Description,
            [.. c.Options.Select(o => new FormField("--" + o.Name, FormWords.Of(c.Name, "--" + o.Name), o.Description))],
            given => Caught(t => c.Run(t, knowledge, option => given.GetValueOrDefault("--" + option))))),
    ];

    /// <summary>Compares the last two visits in one profile or two.</summary>
    internal Caught Compare(ImmutableArray<string> paths) => Caught(t => CompareCommand.Run(t, knowledge, paths));

    /// <summary>Explains kinds side by side, for a saved profile or for nobody.</summary>
    internal Caught Explain(ImmutableArray<string> kinds, string? path) => Caught(t => ExplainCommand.Run(t, knowledge, kinds, path));

    /// <summary>Writes or says a document about a saved profile.</summary>
    internal Caught Document(string path, ImmutableDictionary<string, string> given) => Caught(t => ReportCommand.Run(t, knowledge, path, given));

    private Caught Caught(Func<Terminal, int> says)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        int code = says(new()
        {
            Input = Stream.Null,
            Output = output,
            Error = error,
            Variable = terminal.Variable,
            Clock = terminal.Clock,
            Passphrase = terminal.Passphrase.WithoutTyping(),
        });
        return new(code, output.ToString(), error.ToString());
    }
}
