using System.CommandLine;
using System.CommandLine.Invocation;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands.Help;

/// <summary>What --help does.</summary>
internal sealed class HelpPageAction(Terminal terminal) : SynchronousCommandLineAction
{
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        terminal.Results.Lines(HelpText.Lines(HelpPage.Of(parseResult.CommandResult.Command)));
        return ExitCode.Good;
    }
}
