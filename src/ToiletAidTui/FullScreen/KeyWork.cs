using ToiletAidTui.Host;

namespace ToiletAidTui.FullScreen;

/// <summary>
/// What a key led to, done beside the loop that draws: the loop can say that work goes on, hide the screen, and give the
/// terminal back on a signal. While it is under way nobody else may touch the screens.
/// </summary>
/// <param name="clock">The clock.</param>
internal sealed class KeyWork(TimeProvider clock)
{
    /// <summary>How long the loop stands still for a key before it goes round again; nobody notices it, and nearly every key is done by then.</summary>
    private static readonly TimeSpan Moment = TimeSpan.FromMilliseconds(40);

    private Task? _task;
    private string _said = string.Empty;

    /// <summary>True from the key until <see cref="End"/>.</summary>
    internal bool IsUnderWay => _task is not null;

    /// <summary>True while it has lasted so long that it has to be told.</summary>
    internal bool IsLong => Volatile.Read(ref _said) == WorkNotice.GoesOn;

    /// <summary>Begins, and waits a moment; true when it is done already.</summary>
    internal bool Begin(Action work)
    {
        _said = string.Empty;
        _task = Task.Run(() =>
        {
            using var notice = new WorkNotice(text => Volatile.Write(ref _said, text), clock);
            work();
        });
        return IsDone(Moment);
    }

    /// <summary>True when it is done, or is so within a time.</summary>
    internal bool IsDone(TimeSpan within) => _task is null || Task.WaitAny([_task], within) == 0;

    /// <summary>Ends it once it is done. Its fault, if there was one, is the caller's from here.</summary>
    internal void End()
    {
        var task = _task!;
        _task = null;
        task.GetAwaiter().GetResult();
    }
}
