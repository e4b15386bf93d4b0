using ToiletAidTui.FullScreen;
using ToiletAidTui.Host;
using ToiletAidTui.Visits;

namespace ToiletAidTui.Modes;

/// <summary>Sees to it that a signal, a lost terminal or a fault of the program loses no answer.</summary>
internal sealed class ShutdownGuard : IDisposable
{
    /// <summary>How long the screen's loop may take to give the terminal back.</summary>
    private static readonly TimeSpan Grace = TimeSpan.FromSeconds(3);

    private readonly Terminal _terminal;
    private readonly DraftFile _drafts;
    private readonly Func<Visit?> _visit;
    private readonly Lock _lock = new();
    private readonly Lock _drawing = new();
    private readonly StopSignals? _signals;
    private string? _said;

    /// <summary>Starts to listen.</summary>
    /// <param name="terminal">What the program talks to.</param>
    /// <param name="drafts">Where answers are kept.</param>
    /// <param name="visit">The visit under way.</param>
    internal ShutdownGuard(Terminal terminal, DraftFile drafts, Func<Visit?> visit)
    {
        (_terminal, _drafts, _visit) = (terminal, drafts, visit);
        Turn.Begin();
        _signals = terminal.InputIsTerminal ? new(Stop) : null;
    }

    /// <summary>Whose turn it is; the program's from the start.</summary>
    internal Turn Turn { get; } = new();

    /// <summary>True while a screen is drawn: then its loop stops and gives the terminal back, and the signal only keeps the answers.</summary>
    internal bool IsDrawing
    {
        get
        {
            lock (_drawing)
            {
                return field;
            }
        }

        set
        {
            lock (_drawing)
            {
                field = value;
            }
        }
    }

    /// <summary>True once a signal has come.</summary>
    internal bool HasStopped => _signals is { HasCome: true };

    /// <summary>Exit code of the signal that came.</summary>
    internal int StopCode => _signals!.ExitCode;

    /// <inheritdoc/>
    public void Dispose()
    {
        _signals?.Dispose();
        Turn.End();
    }

    /// <summary>Keeps the answers as they are now; a later call writes later answers over them.</summary>
    internal void Keep()
    {
        lock (_lock)
        {
            _said = _visit() is { } visit ? _drafts.Keep(visit) : null;
        }
    }

    /// <summary>Says that the program stopped and where the answers are.</summary>
    internal void Say(string first)
    {
        Keep();
        try
        {
            _terminal.Output.Flush();
            _terminal.Error.WriteLine(_said is null ? first : $"{first} {_said}");
            _terminal.Error.Flush();
        }
        catch (Exception e) when (e is IOException or ObjectDisposedException)
        {
            // The terminal is gone; the answers are kept, and nobody is there to be told.
        }
    }

    private void Stop(StopSignals signals)
    {
        if (!IsDrawing)
        {
            // Never given back: the program ends here. In vain when it is stuck, and then what is there is kept all the same.
            _ = Turn.Seize(Grace);
        }

        Keep();
        lock (_drawing)
        {
            // Held until the end, so that nothing starts to draw on a terminal that is being left.
            if (!IsDrawing)
            {
                Say("\nStopped.");
                Environment.Exit(signals.ExitCode);
            }
        }

        LeaveAnyway(signals.ExitCode);
    }

    /// <summary>A loop that writes to a terminal that is gone may never come to its end, and would keep a shared PC busy for ever.</summary>
    private void LeaveAnyway(int code)
    {
        var leaving = new Thread(() =>
        {
            Thread.Sleep(Grace);
            var ending = new Thread(() => GiveBackAndExit(code)) { IsBackground = true };
            ending.Start();
            Thread.Sleep(Grace);
            using var self = System.Diagnostics.Process.GetCurrentProcess();
            self.Kill();
        })
        { IsBackground = true };
        leaving.Start();
    }

    /// <summary>The library gives the settings of the terminal back at any end of the program, but the screen only at the end of its loop.</summary>
    private void GiveBackAndExit(int code)
    {
        lock (_drawing)
        {
            if (IsDrawing)
            {
                try
                {
                    _terminal.Output.Write(FullScreenHost.GiveBack);
                    _terminal.Output.Flush();
                }
                catch (Exception e) when (e is IOException or ObjectDisposedException)
                {
                    // There is no terminal to give back.
                }
            }

            Environment.Exit(code);
        }
    }
}
