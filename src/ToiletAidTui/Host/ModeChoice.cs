namespace ToiletAidTui.Host;

/// <summary>Chooses the mode: the first that speaks wins, and a value that means nothing is said, not passed over.</summary>
/// <param name="Mode">The mode; null when the saved setting decides.</param>
/// <param name="Why">What decided, in words.</param>
/// <param name="Fault">What is wrong, one sentence; null when nothing is.</param>
internal sealed record ModeChoice(Mode? Mode, string Why, string? Fault)
{
    internal const string LinearWord = "linear";
    internal const string FullScreenWord = "full-screen";

    /// <summary>Chooses.</summary>
    internal static ModeChoice Of(ModeInputs inputs)
    {
        if (inputs.LinearOption && inputs.FullScreenOption)
        {
            return Wrong("Give --linear or --full-screen, not both.");
        }

        string mode = inputs.Variable(EnvironmentVariables.Mode) ?? string.Empty;
        if (mode is not ("" or LinearWord or FullScreenWord))
        {
            return Wrong($"{EnvironmentVariables.Mode} is {mode} and takes linear or full-screen.");
        }

        if (inputs.LinearOption || inputs.FullScreenOption)
        {
            return new(inputs.LinearOption ? Host.Mode.Linear : Host.Mode.FullScreen, "the option", null);
        }

        if (mode.Length > 0)
        {
            return new(mode == LinearWord ? Host.Mode.Linear : Host.Mode.FullScreen, EnvironmentVariables.Mode, null);
        }

        if (IsOn(inputs.Variable(EnvironmentVariables.Accessible)))
        {
            return new(Host.Mode.Linear, EnvironmentVariables.Accessible, null);
        }

        if (!inputs.IsTerminal)
        {
            return new(Host.Mode.Linear, "no terminal", null);
        }

        if (IsDumb(inputs.Variable))
        {
            return new(Host.Mode.Linear, EnvironmentVariables.Terminal, null);
        }

        return inputs.ReaderRuns() ? new(Host.Mode.Linear, "a screen reader runs", null) : new(null, "the setting", null);
    }

    /// <summary>True when the terminal says that it cannot place a cursor, or says nothing of itself. On Windows none says anything.</summary>
    internal static bool IsDumb(Func<string, string?> variable) => !OperatingSystem.IsWindows() && variable(EnvironmentVariables.Terminal) is null or "" or "dumb";

    private static bool IsOn(string? value) => value is { Length: > 0 } && value.ToLowerInvariant() is not ("0" or "false" or "no");

    private static ModeChoice Wrong(string fault) => new(null, string.Empty, fault);
}
