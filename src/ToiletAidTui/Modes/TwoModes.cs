using ToiletAidTui.FullScreen;
using ToiletAidTui.Host;
using ToiletAidTui.Linear;
using ToiletAidTui.Screens;

namespace ToiletAidTui.Modes;

/// <summary>Goes to and fro between the two modes over the same screens until the person leaves.</summary>
/// <param name="terminal">What it talks to.</param>
/// <param name="shell">The screens.</param>
/// <param name="options">How the full screen behaves.</param>
/// <param name="guard">Sees to signals.</param>
internal sealed class TwoModes(Terminal terminal, Shell shell, FullScreenOptions options, ShutdownGuard guard)
{
    /// <summary>The screen and what can be scrolled back to.</summary>
    private const string ClearAll = "\u001b[H\u001b[2J\u001b[3J";

    private readonly LineReader _input = terminal.Lines(guard.Turn);

    /// <summary>What follows the result in linear mode, once; false ends it there.</summary>
    internal Func<bool>? AfterResult { get; init; }

    /// <summary>True when the linear mode was told before.</summary>
    internal bool IsGreeted { get; init; }

    /// <summary>True when there is a full screen to go to.</summary>
    internal bool CanDraw { get; init; } = true;

    /// <summary>Runs.</summary>
    /// <param name="mode">The mode to begin with.</param>
    internal Ending Run(Mode mode)
    {
        bool greeted = IsGreeted;
        while (true)
        {
            shell.Ending = Ending.None;
            if (mode == Mode.Linear || !FullScreen())
            {
                terminal.Keyboard?.Wake();
                var lines = new SpeechLines(terminal.Output, terminal.Width).Paged(terminal.Height, _input);
                new LinearPages(shell, lines, _input) { AfterResult = AfterResult, IsGreeted = greeted, CanSwitch = CanDraw, Clear = Clear }.Run();
                terminal.Output.Flush();
                mode = Mode.Linear;
            }

            greeted = false;

            if (guard.HasStopped)
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

    /// <summary>Clears what a terminal shows and has shown.</summary>
    internal static void Clear(Terminal terminal)
    {
        terminal.Output.Write(ClearAll);
        terminal.Output.Flush();
    }

    private void Clear()
    {
        if (CanDraw)
        {
            Clear(terminal);
        }
    }

    /// <summary>Runs the full screen; false when the terminal cannot show it, and then the linear mode goes on.</summary>
    private bool FullScreen()
    {
        try
        {
            terminal.Keyboard?.Rest();
            guard.IsDrawing = true;
            new FullScreenHost(shell, options).Run();
            return true;
        }
        catch (Exception e) when (guard.HasStopped && e is IOException or InvalidOperationException or ObjectDisposedException)
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
            guard.IsDrawing = false;
        }
    }
}
