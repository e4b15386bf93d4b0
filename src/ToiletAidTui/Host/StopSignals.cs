using System.Runtime.InteropServices;

namespace ToiletAidTui.Host;

/// <summary>Interrupt, termination and hang-up: nothing is torn down at once, so that answers and terminal can be seen to first.</summary>
internal sealed class StopSignals : IDisposable
{
    private const int Hangup = 1;
    private const int Interrupt = 2;
    private const int Quit = 3;
    private const int Terminate = 15;

    private readonly PosixSignalRegistration[] _registrations;
    private readonly Action<StopSignals> _stopped;
    private int _number;

    /// <summary>Listens.</summary>
    /// <param name="stopped">Called on another thread for the first signal.</param>
    internal StopSignals(Action<StopSignals> stopped)
    {
        _stopped = stopped;
        _registrations =
        [
            Register(PosixSignal.SIGHUP, Hangup),
            Register(PosixSignal.SIGINT, Interrupt),
            Register(PosixSignal.SIGQUIT, Quit),
            Register(PosixSignal.SIGTERM, Terminate),
        ];
    }

    /// <summary>True once a signal has come.</summary>
    internal bool HasCome => Volatile.Read(ref _number) != 0;

    /// <summary>The exit code that tells which signal it was.</summary>
    internal int ExitCode => Host.ExitCode.SignalBase + Volatile.Read(ref _number);

    /// <inheritdoc/>
    public void Dispose() => Array.ForEach(_registrations, r => r.Dispose());

    private PosixSignalRegistration Register(PosixSignal signal, int number) => PosixSignalRegistration.Create(signal, context =>
    {
        context.Cancel = true;
        if (Interlocked.CompareExchange(ref _number, number, 0) == 0)
        {
            _stopped(this);
        }
    });
}
