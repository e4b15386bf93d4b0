namespace ToiletAidTui.FullScreen;

/// <summary>How the full screen behaves.</summary>
internal sealed record FullScreenOptions
{
    /// <summary>White on black in place of the terminal's own colours.</summary>
    internal bool HighContrast { get; init; }

    /// <summary>How long nobody presses a key before the screen is hidden; zero for never.</summary>
    internal TimeSpan IdleUntilHidden { get; init; }

    /// <summary>True once a signal has come or the terminal is gone.</summary>
    internal Func<bool> IsStopped { get; init; } = () => false;

    /// <summary>The clock.</summary>
    internal TimeProvider Clock { get; init; } = TimeProvider.System;
}
