extern alias TerminalGui;

using TerminalGui::Terminal.Gui.App;
using TerminalGui::Terminal.Gui.Drivers;
using TerminalGui::Terminal.Gui.Input;
using TerminalGui::Terminal.Gui.Testing;
using TerminalGui::Terminal.Gui.Time;
using ToiletAidTui.FullScreen;
using ToiletAidTui.Screens;

namespace ToiletAid.Acceptance.Tests.FullScreen;

/// <summary>The full screen without a terminal.</summary>
internal sealed class Stage : IDisposable
{
    private readonly VirtualTimeProvider _time = new();
    private readonly IApplication _app;
    private readonly AnswerScreen _screen;
    private readonly SessionToken _session;

    internal Stage(Shell shell, int columns, int rows, FullScreenOptions? options = null)
    {
        Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
        _app = Application.Create(_time);
        _app.Init(DriverRegistry.Names.ANSI);
        _app.Driver!.SetScreenSize(columns, rows);
        _screen = new FullScreenHost(shell, options ?? new()).Build(_app);
        _session = _app.Begin(_screen)!;
        Draw();
    }

    /// <summary>The rows as drawn, without blanks at the end.</summary>
    internal string[] Rows => [.. _app.Driver!.ToString()!.ReplaceLineEndings("\n").Split('\n').Select(r => r.TrimEnd())];

    /// <summary>The rows as laid out, with the place of the cursor.</summary>
    internal ScreenRows Laid => _screen.Rows!;

    /// <summary>Presses a key and waits for what it leads to.</summary>
    internal void Press(Key key)
    {
        _app.InjectKey(key);
        Settle();
    }

    /// <summary>Lets the loop go round until no key is at work.</summary>
    internal void Settle()
    {
        while (_screen.IsWorking)
        {
            Thread.Sleep(1);
            _app.RaiseIteration();
        }

        Draw();
    }

    /// <summary>Presses a key and waits for nothing.</summary>
    internal void Touch(Key key)
    {
        _app.InjectKey(key);
        Draw();
    }

    /// <summary>Lets the loop go round once, as it does many times a second.</summary>
    internal void GoRound()
    {
        _app.RaiseIteration();
        Draw();
    }

    internal void Size(int columns, int rows)
    {
        _app.Driver!.SetScreenSize(columns, rows);
        Draw();
    }

    public void Dispose()
    {
        _app.End(_session);
        _screen.Dispose();
        _app.Dispose();
    }

    private void Draw()
    {
        _app.LayoutAndDraw();
        _time.Advance(AnswerScreen.ClearTime + TimeSpan.FromMilliseconds(1));
        _app.TimedEvents!.RunTimers();
        _app.LayoutAndDraw();
    }
}
