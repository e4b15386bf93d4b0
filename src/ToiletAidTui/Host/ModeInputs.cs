namespace ToiletAidTui.Host;

/// <summary>What the choice of the mode rests on.</summary>
internal sealed record ModeInputs
{
    /// <summary>--linear was given.</summary>
    internal bool LinearOption { get; init; }

    /// <summary>--full-screen was given.</summary>
    internal bool FullScreenOption { get; init; }

    /// <summary>The environment.</summary>
    internal required Func<string, string?> Variable { get; init; }

    /// <summary>True when input and output are a terminal.</summary>
    internal bool IsTerminal { get; init; }

    /// <summary>True when the system says that a screen reader runs.</summary>
    internal required Func<bool> ReaderRuns { get; init; }
}
