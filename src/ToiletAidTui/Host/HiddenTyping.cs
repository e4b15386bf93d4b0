using System.Runtime.InteropServices;

namespace ToiletAidTui.Host;

/// <summary>Turns the echo of the controlling terminal off, and back on whatever happens; also off again when the program slept meanwhile.</summary>
internal sealed class HiddenTyping : IDisposable
{
    private readonly Lock _lock = new();
    private readonly TerminalModes _before;
    private readonly TerminalReturn _return;
    private readonly PosixSignalRegistration[] _signals;
    private bool _over;

    /// <summary>Turns the echo off.</summary>
    /// <param name="descriptor">Of a terminal.</param>
    /// <param name="ask">Asks again, when the program was asleep.</param>
    /// <exception cref="IOException">It is no terminal.</exception>
    internal HiddenTyping(int descriptor, Action ask)
    {
        _before = TerminalModes.Of(descriptor) ?? throw new IOException("this is no terminal");
        var hidden = _before.Hidden();

        // Before the echo goes off, so that no signal falls between.
        _signals = [.. ((PosixSignal[])[PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP, PosixSignal.SIGQUIT]).Select(s => PosixSignalRegistration.Create(s, _ => Restore()))];
        _return = new(Restore, () =>
        {
            lock (_lock)
            {
                if (!_over && hidden.Set())
                {
                    ask();
                }
            }
        });
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

        _return.Dispose();
        Array.ForEach(_signals, s => s.Dispose());
    }

    private void Restore() => _ = _before.Set();
}
