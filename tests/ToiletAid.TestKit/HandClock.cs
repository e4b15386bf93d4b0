namespace ToiletAid.TestKit;

/// <summary>A clock whose time passes by hand, for one timer at a time.</summary>
internal sealed class HandClock : TimeProvider
{
    private Action? _ring;
    private TimeSpan _due;

    internal bool RingsAfterDisposal { get; init; }

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
    {
        (_ring, _due) = (() => callback(state), dueTime);
        return new HandTimer(this);
    }

    internal void Pass(TimeSpan time)
    {
        _due -= time;
        if (_due <= TimeSpan.Zero && _ring is { } ring)
        {
            _ring = null;
            ring();
        }
    }

    private sealed class HandTimer(HandClock clock) : ITimer
    {
        public bool Change(TimeSpan dueTime, TimeSpan period) => false;

        public void Dispose()
        {
            if (!clock.RingsAfterDisposal)
            {
                clock._ring = null;
            }
        }

        public ValueTask DisposeAsync()
        {
            Dispose();
            return ValueTask.CompletedTask;
        }
    }
}
