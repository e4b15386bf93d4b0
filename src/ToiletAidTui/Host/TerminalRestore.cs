namespace ToiletAidTui.Host;

/// <summary>Gives a terminal back as it was before a screen was drawn, after the library has done so and also where the program ends before it does.</summary>
internal sealed class TerminalRestore : IDisposable
{
    private readonly TerminalModes? _before;

    /// <summary>Remembers how it is.</summary>
    /// <param name="before">As it is now; null for what is no terminal.</param>
    internal TerminalRestore(TerminalModes? before)
    {
        _before = before;
        AppDomain.CurrentDomain.ProcessExit += Ended;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        AppDomain.CurrentDomain.ProcessExit -= Ended;
        Restore();
    }

    private void Ended(object? sender, EventArgs e) => Restore();

    private void Restore()
    {
        if (_before is { } before && !before.IsSet())
        {
            _ = before.Set(drops: false);
        }
    }
}
