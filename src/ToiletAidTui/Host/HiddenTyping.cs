using System.Runtime.InteropServices;

namespace ToiletAidTui.Host;

/// <summary>Turns the echo of the controlling terminal off, and back on whatever happens; also off again when the program slept meanwhile.</summary>
internal sealed class HiddenTyping : IDisposable
{
    /// <summary>Sooner than anybody types after coming back.</summary>
    private static readonly TimeSpan Often = TimeSpan.FromMilliseconds(20);

    private readonly Lock _lock = new();
    private readonly TerminalModes _before;
    private readonly TerminalReturn _return;
    private readonly PosixSignalRegistration[] _signals;
    private readonly Timer _watch;
    private bool _over;
    private bool _sleeps;

    /// <summary>Turns the echo off.</summary>
    /// <param name="descriptor">Of a terminal.</param>
    /// <param name="ask">Asks again, when the program was asleep.</param>
    /// <exception cref="IOException">It is no terminal.</exception>
    internal HiddenTyping(int descriptor, Action ask)
    {
        _before = TerminalModes.Of(descriptor) ?? throw new IOException("this is no terminal");
        var hidden = _before.Hidden();

        // Before the echo goes off, so that no signal falls between.
        _signals = [.. ((PosixSignal[])[PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP, PosixSignal.SIGQUIT]).Select(s => PosixSignalRegistration.Create(s, _ => End()))];
        _return = new(
            () =>
            {
                lock (_lock)
                {
                    _sleeps = true;
                    Restore();
                }
            },
            () =>
        {
            lock (_lock)
            {
                _sleeps = false;
                if (!_over && hidden.Set())
                {
                    ask();
                }
            }
        });

        // The runtime sets the terminal too when the program is woken, before or after this.
        _watch = new(_ => Watch(hidden), null, Often, Often);
        if (!hidden.Set())
        {
            Dispose();
            throw new IOException("the terminal does not hide typing");
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_lock)
        {
            _over = true;
            Restore();
        }

        _watch.Dispose();
        _return.Dispose();
        Array.ForEach(_signals, s => s.Dispose());
    }

    private void Watch(TerminalModes hidden)
    {
        lock (_lock)
        {
            if (!_over && !_sleeps && !hidden.IsSet())
            {
                _ = hidden.Set();
            }
        }
    }

    /// <summary>The program is told to end: the watch must not turn the echo off again behind it.</summary>
    private void End()
    {
        lock (_lock)
        {
            _over = true;
            Restore();
        }
    }

    private void Restore() => _ = _before.Set();
}
