using System.Runtime.InteropServices;

namespace ToiletAidTui.Host;

/// <summary>Sets a terminal, and back as it was whatever happens; also anew when the program slept meanwhile.</summary>
internal sealed class HeldModes : IDisposable
{
    /// <summary>Sooner than anybody types after coming back.</summary>
    private static readonly TimeSpan Often = TimeSpan.FromMilliseconds(20);

    private readonly Lock _lock = new();
    private readonly TerminalModes _before;
    private readonly TerminalReturn _return;
    private readonly PosixSignalRegistration[] _signals;
    private readonly Timer _watch;
    private readonly bool _drops;
    private bool _over;
    private bool _sleeps;

    /// <summary>Sets it.</summary>
    /// <param name="descriptor">Of a terminal.</param>
    /// <param name="wanted">How it is to be set, made of how it is.</param>
    /// <param name="ask">Asks again, when the program was asleep.</param>
    /// <param name="drops">True to drop what was typed before.</param>
    /// <exception cref="IOException">It is no terminal, or it does not take that.</exception>
    internal HeldModes(int descriptor, Func<TerminalModes, TerminalModes> wanted, Action ask, bool drops)
    {
        _drops = drops;
        _before = TerminalModes.Of(descriptor) ?? throw new IOException("this is no terminal");
        var held = wanted(_before);

        // Before the echo goes off, so that no signal falls between.
        AppDomain.CurrentDomain.ProcessExit += Ended;
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
                if (!_over && held.Set(_drops))
                {
                    ask();
                }
            }
        });

        // The runtime sets the terminal too when the program is woken, before or after this.
        _watch = new(_ => Watch(held), null, Often, Often);
        if (!held.Set(_drops))
        {
            Dispose();
            throw new IOException("the terminal does not take these settings");
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

        AppDomain.CurrentDomain.ProcessExit -= Ended;
        _watch.Dispose();
        _return.Dispose();
        Array.ForEach(_signals, s => s.Dispose());
    }

    private void Watch(TerminalModes held)
    {
        lock (_lock)
        {
            if (!_over && !_sleeps && !held.IsSet())
            {
                _ = held.Set(_drops);
            }
        }
    }

    /// <summary>The program is told to end: the watch must not set it again behind it.</summary>
    private void End()
    {
        lock (_lock)
        {
            _over = true;
            Restore();
        }
    }

    private void Ended(object? sender, EventArgs e) => End();

    private void Restore() => _ = _before.Set(_drops);
}
