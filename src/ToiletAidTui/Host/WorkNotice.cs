namespace ToiletAidTui.Host;

/// <summary>Says once that work goes on, when it takes longer than anybody would wait without a word, and once that it is done.</summary>
internal sealed class WorkNotice : IDisposable
{
    /// <summary>How long nothing is said.</summary>
    internal static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    /// <summary>What is said when it has lasted that long.</summary>
    internal const string GoesOn = "Working...";

    /// <summary>What is said at its end, if anything was said before.</summary>
    internal const string Ended = "Done.";

    private readonly Lock _lock = new();
    private readonly Action<string> _say;
    private readonly ITimer _timer;
    private bool _said;
    private bool _ended;

    /// <summary>Begins; the work ends when this is disposed of.</summary>
    /// <param name="say">Says a line, from another thread, while the work does not write.</param>
    /// <param name="clock">The clock.</param>
    internal WorkNotice(Action<string> say, TimeProvider clock)
    {
        _say = say;
        _timer = clock.CreateTimer(_ => Begin(), null, Patience, Timeout.InfiniteTimeSpan);
    }

    /// <summary>For a command whose result is written at its end; null where nobody listens meanwhile.</summary>
    internal static WorkNotice? Of(Terminal terminal) => terminal.ErrorIsTerminal ? new(terminal.Error.WriteLine, terminal.Clock) : null;

    /// <inheritdoc/>
    public void Dispose()
    {
        _timer.Dispose();
        lock (_lock)
        {
            if (_said && !_ended)
            {
                _say(Ended);
            }

            _ended = true;
        }
    }

    private void Begin()
    {
        lock (_lock)
        {
            if (!_ended)
            {
                _said = true;
                _say(GoesOn);
            }
        }
    }
}
