extern alias TerminalGui;

using TerminalGui::Terminal.Gui.App;
using TerminalGui::Terminal.Gui.Drivers;
using TerminalGui::Terminal.Gui.Input;
using ToiletAidTui.Host;
using ToiletAidTui.Screens;

namespace ToiletAidTui.FullScreen;

/// <summary>Runs the screens on the whole terminal and gives it back as it was.</summary>
/// <param name="shell">The screens.</param>
/// <param name="options">How it behaves.</param>
internal sealed class FullScreenHost(Shell shell, FullScreenOptions options)
{
    /// <summary>Milliseconds after waking in which the runtime may still set the terminal.</summary>
    private const long AfterWaking = 1000;

    /// <summary>Pasting and mouse off, the cursor shown, and the screen as it was: for the end of a program whose loop can no longer do it.</summary>
    internal const string GiveBack = "\u001b[?2004l\u001b[?1006l\u001b[?1015l\u001b[?1003l\u001b[?25h\u001b[?1049l";

    /// <summary>What the library sends at its start, for a program that was asleep: keys of the cursor, the other screen, no pasting and no mouse.</summary>
    private const string TakeBack = "\u001b[?1h\u001b=\u001b[?1049h";

    private const string WhiteOnBlack = "\u001b[97;40m";

    /// <summary>How long a file that is being saved when a signal comes may take.</summary>
    private static readonly TimeSpan Grace = TimeSpan.FromSeconds(1);

    private readonly KeyWork _work = new(options.Clock);
    private DateTimeOffset _lastKey;
    private int _returns;

    /// <summary>Runs until the person leaves, goes on in linear mode, or a signal comes.</summary>
    internal void Run()
    {
        Prepare();
        Draw();
        _ = _work.IsDone(Grace);
    }

    private void Draw()
    {
        var before = TerminalModes.Of(0);
        using var restore = new TerminalRestore(before);
        using var app = Application.Create();
        app.AppModel = AppModel.FullScreen;
        Application.SetDefaultKeyBinding(Command.Quit, Bind.All(Key.F24));
        app.Init(OperatingSystem.IsWindows() ? DriverRegistry.Names.WINDOWS : DriverRegistry.Names.ANSI);
        app.Mouse.IsMouseDisabled = true;
        if (!OperatingSystem.IsWindows())
        {
            app.Driver!.WriteRaw(EscSeqUtils.CSI_DisableMouseEvents);
        }

        // Opened here, since from now on another screen of the console is shown.
        using var console = OperatingSystem.IsWindows() ? new ConsoleScreen(options.HighContrast) : null;
        using var screen = Build(app, console);
        var drawing = TerminalModes.Of(0);
        long wokenAt = 0;
        app.Iteration += (_, _) =>
        {
            // The runtime sets the terminal too when the program is woken. At any other time it is not ours to set: it may have been given back.
            if (Volatile.Read(ref wokenAt) is > 0 and var at && Environment.TickCount64 - at < AfterWaking && drawing is { } wanted && !wanted.IsSet())
            {
                wanted.Set();
            }
        };
        using var sleep = new TerminalReturn(
            () =>
            {
                Volatile.Write(ref wokenAt, 0);
                app.Driver!.WriteRaw(GiveBack);
                before?.Set();
            },
            () =>
            {
                // What was typed meanwhile was shown and is dropped; the loop draws all anew.
                drawing?.Set();
                Volatile.Write(ref wokenAt, Environment.TickCount64);
                Interlocked.Increment(ref _returns);
            });
        app.Run(screen);
    }

    /// <summary>Makes the view and the two measures that keep readers quiet; also for tests without a terminal.</summary>
    /// <param name="app">The library.</param>
    /// <param name="console">What is written to; null for a terminal, which takes escape sequences.</param>
    internal AnswerScreen Build(IApplication app, ConsoleScreen? console = null)
    {
        var screen = new AnswerScreen(shell, _work);
        var frames = new FrameWriter(options.HighContrast ? WhiteOnBlack : string.Empty);
        int returns = 0;
        screen.DrawComplete += (_, _) =>
        {
            // A terminal that says that it has no size shows nothing.
            if (screen.Rows is not { } rows)
            {
                return;
            }

            if (console is not null)
            {
                console.Show(FrameWriter.Texts(app.Driver!.GetOutputBuffer()), rows);
                return;
            }

            string frame = frames.Compose(app.Driver!.GetOutputBuffer(), rows, screen.IsEcho);
            if (frame.Length > 0)
            {
                app.Driver.WriteRaw(frame);
            }
        };
        _lastKey = options.Clock.GetUtcNow();
        screen.KeyPressed = () => _lastKey = options.Clock.GetUtcNow();
        app.Iteration += (_, _) =>
        {
            if (options.IsStopped())
            {
                shell.Ending = Ending.Stopped;
                app.RequestStop();
                return;
            }

            if (returns != Volatile.Read(ref _returns))
            {
                returns = Volatile.Read(ref _returns);
                app.Driver?.WriteRaw(TakeBack);
                frames.Forget();
                screen.SetNeedsDraw();
            }

            screen.GoOn();
            if (!screen.IsWorking && options.IdleUntilHidden > TimeSpan.Zero && !shell.IsHidden && options.Clock.GetUtcNow() - _lastKey >= options.IdleUntilHidden)
            {
                shell.Hide();
                screen.Follow();
            }

            // The library would park its own, hidden cursor 25 times a second.
            app.Driver?.SetCursorNeedsUpdate(false);
        };
        screen.Follow();
        return screen;
    }

    /// <summary>The library reads settings from the current folder and the environment and asks the terminal for its colours; none of it is wanted.</summary>
    private static void Prepare()
    {
        Environment.SetEnvironmentVariable("TUI_CONFIG", null);
        Environment.SetEnvironmentVariable(EnvironmentVariables.NoColour, "1");
        Driver.SizeDetection = SizeDetectionMode.Polling;

        // Without it the library writes escape sequences to a console that does not take them.
        Driver.Force16Colors = OperatingSystem.IsWindows();
    }
}
