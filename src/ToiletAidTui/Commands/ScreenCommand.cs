using ToiletAid.App.Files;
using ToiletAid.Core;
using ToiletAidTui.FullScreen;
using ToiletAidTui.Host;
using ToiletAidTui.Screens;

namespace ToiletAidTui.Commands;

/// <summary>The program as screens: what is run when a person sits at the terminal.</summary>
internal sealed class ScreenCommand(Terminal terminal, Knowledge knowledge, int top)
{
    /// <summary>Runs from the first screen, or from a visit that is already set up.</summary>
    internal int Run(Mode mode, Visit? visit)
    {
        var desk = new Desk
        {
            Questions = knowledge.Questions,
            Files = new ProfileFile(knowledge.Questions),
            Keys = KeyMap.Make(new Dictionary<string, string>(), out _),
            Today = () => DateOnly.FromDateTime(terminal.Clock.GetLocalNow().DateTime),
            Result = new AdviceParts(knowledge, top).Of,
            Settings = () => [],
        };
        var shell = new Shell(desk);
        if (visit is null)
        {
            shell.Push(StartPages.Start());
        }
        else
        {
            StartPages.Begin(shell, visit);
        }

        var end = new TwoModes(terminal, shell, new FullScreenOptions { Clock = terminal.Clock }).Run(mode);
        return end == Ending.Left ? ExitCode.Good : ExitCode.InputRefused;
    }
}
