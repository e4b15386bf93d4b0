namespace ToiletAidTui.Host;

/// <summary>Whose turn it is: the program's while it takes an answer and says so, the person's while it waits for the next line.</summary>
/// <remarks>A signal keeps the answers only in the person's turn. Otherwise an answer could be said to be taken just after the answers were kept.</remarks>
public sealed class Turn
{
    private readonly object _held = new();

    /// <summary>Begins the program's turn on this thread.</summary>
    public void Begin() => Monitor.Enter(_held);

    /// <summary>Ends it on this thread; nothing happens when it was not this thread's.</summary>
    public void End()
    {
        if (Monitor.IsEntered(_held))
        {
            Monitor.Exit(_held);
        }
    }

    /// <summary>Waits for the person with the turn passed on, and takes it back.</summary>
    public T Wait<T>(Func<T> forPerson)
    {
        bool mine = Monitor.IsEntered(_held);
        End();
        try
        {
            return forPerson();
        }
        finally
        {
            if (mine)
            {
                Begin();
            }
        }
    }

    /// <summary>Takes the turn for good from another thread, so that nothing more is taken or said; false when it did not come in time.</summary>
    public bool Seize(TimeSpan within) => Monitor.TryEnter(_held, within);
}
