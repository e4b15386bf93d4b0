using System.CommandLine;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands;

/// <summary>How much of a result is told: the brief result where a person reads along, all of it where a file or a program does.</summary>
internal sealed class LevelOptions
{
    private readonly Option<bool> _brief = new("--brief") { Description = "Give the result in at most eight sentences, as is usual on a terminal." };
    private readonly Option<bool> _details = new("--details") { Description = "Give everything: shortlist, reasons, cautions, set-up and what is ruled out, as is usual in a file or pipe." };

    /// <summary>Adds both options.</summary>
    /// <param name="command">The command.</param>
    internal void AddTo(Command command)
    {
        command.Add(_brief);
        command.Add(_details);
        command.Validators.Add(result =>
        {
            if (result.GetValue(_brief) && result.GetValue(_details))
            {
                result.AddError("Give --brief or --details, not both.");
            }
        });
    }

    /// <summary>True when only the brief result is told.</summary>
    /// <param name="parsed">What was typed.</param>
    /// <param name="terminal">Where it goes.</param>
    internal bool IsBrief(ParseResult parsed, Terminal terminal) => parsed.GetValue(_brief) || (!parsed.GetValue(_details) && terminal.OutputIsTerminal);
}
