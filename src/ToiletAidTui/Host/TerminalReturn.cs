using System.Runtime.InteropServices;

namespace ToiletAidTui.Host;

/// <summary>
/// Sees to the terminal when the program is put to sleep and woken, as by Control Z and fg: a shell sets the terminal as it likes it meanwhile, so what
/// was set has to be set again. Nothing is seen on it in between.
/// </summary>
internal sealed partial class TerminalReturn : IDisposable
{
    // SIGSTOP, which cannot be caught.
    private const int LinuxStop = 19;
    private const int MacStop = 17;

    private readonly PosixSignalRegistration[] _signals = [];

    /// <summary>Listens.</summary>
    /// <param name="away">Called before the program sleeps.</param>
    /// <param name="back">Called when it was woken.</param>
    internal TerminalReturn(Action away, Action back)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        _signals =
        [
            PosixSignalRegistration.Create(PosixSignal.SIGTSTP, context =>
            {
                context.Cancel = true;
                away();
                _ = Send(Environment.ProcessId, OperatingSystem.IsMacOS() ? MacStop : LinuxStop);
            }),
            PosixSignalRegistration.Create(PosixSignal.SIGCONT, _ => back()),
        ];
    }

    /// <inheritdoc/>
    public void Dispose() => Array.ForEach(_signals, s => s.Dispose());

    [LibraryImport("libc", EntryPoint = "kill")]
    private static partial int Send(int process, int signal);
}
