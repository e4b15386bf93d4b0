using System.CommandLine;
using System.CommandLine.Completions;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;
using System.Globalization;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands.Completion;

/// <summary>What the directive [suggest] does, which the scripts for shells call with the place of the cursor and the line.</summary>
internal sealed class SuggestAction(Terminal terminal, RootCommand root, SuggestDirective directive) : SynchronousCommandLineAction
{
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        string line = parseResult.Tokens is [.., { Type: not TokenType.Directive } last] ? last.Value : string.Empty;
        if (parseResult.GetResult(directive)?.Values is [var place, ..] && int.TryParse(place, NumberStyles.None, CultureInfo.InvariantCulture, out int cursor))
        {
            // Some shells leave the blank before the cursor out.
            line = line.PadRight(cursor)[..cursor];
        }

        foreach (string suggestion in Suggestions.Of(root, line))
        {
            terminal.Output.WriteLine(suggestion);
        }

        return ExitCode.Good;
    }
}
