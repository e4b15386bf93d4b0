namespace ToiletAidTui.Host;

/// <summary>Exit codes, as documented in the README.</summary>
public static class ExitCode
{
    /// <summary>All well.</summary>
    public const int Good = 0;

    /// <summary>A fault of ours.</summary>
    public const int OurFault = 1;

    /// <summary>Wrong usage of the command line.</summary>
    public const int WrongUsage = 2;

    /// <summary>Some input was refused.</summary>
    public const int InputRefused = 3;

    /// <summary>What a signal adds to its number.</summary>
    public const int SignalBase = 128;
}
