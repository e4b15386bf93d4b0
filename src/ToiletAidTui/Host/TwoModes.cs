using ToiletAidTui.FullScreen;
using ToiletAidTui.Linear;
using ToiletAidTui.Screens;

namespace ToiletAidTui.Host;

/// <summary>Goes to and fro between the two modes over the same screens until the person leaves.</summary>
/// <param name="terminal">What it talks to.</param>
/// <param name="shell">The screens.</param>
/// <param name="options">How the full screen behaves.</param>
/// <param name="keeper">Sees to signals.</param>
internal sealed class TwoModes(Terminal terminal, Shell shell, FullScreenOptions options, Keeper keeper)
{
    private readonly LineReader _input = new(terminal.Input, keeper.Turn);

    /// <summary>Runs.</summary>
    /// <param name="mode">The mode to begin with.</param>
    internal Ending Run(Mode mode)
    {
        while (true)
        {
            shell.Ending = Ending.None;
            if (mode == Mode.Linear || !FullScreen())
            {
                new LinearPages(shell, new(terminal.Output, terminal.Width), _input).Run();
                terminal.Output.Flush();
                mode = Mode.Linear;
            }

            if (keeper.HasStopped)
            {
                return Ending.Stopped;
            }

            if (shell.Ending != Ending.OtherMode)
            {
                return shell.Ending;
            }

            mode = mode == Mode.Linear ? Mode.FullScreen : Mode.Linear;
        }
    }

    /// <summary>Runs the full screen; false when the terminal cannot show it, and then the linear mode goes on.</summary>
    private bool FullScreen()
    {
        try
        {
            keeper.IsDrawing = true;
            new FullScreenHost(shell, options).Run();
            return true;
        }
        catch (Exception e) when (keeper.HasStopped && e is IOException or InvalidOperationException or ObjectDisposedException)
        {
            // The terminal went away while it was given back.
            shell.Ending = Ending.Stopped;
            return true;
        }
        catch (Exception e) when (shell.Ending == Ending.None && e is IOException or NotSupportedException or PlatformNotSupportedException)
        {
            terminal.Error.WriteLine("This terminal cannot show the full screen. Going on line by line.");
            return false;
        }
        finally
        {
            keeper.IsDrawing = false;
        }
    }
}
