using System.Collections.Immutable;

namespace ToiletAidTui.Host;

/// <summary>Exit codes, as documented in the README.</summary>
/// <remarks>A red flag has none of its own: it is a result, said first and named in every form of data. A run over many profiles would else end as a fault
/// because of one person.</remarks>
public static class ExitCode
{
    /// <summary>All well.</summary>
    public const int Good = 0;

    /// <summary>A fault of ours.</summary>
    public const int OurFault = 1;

    /// <summary>Wrong usage of the command line.</summary>
    public const int WrongUsage = 2;

    /// <summary>Some input was refused, or something could not be read or written.</summary>
    public const int InputRefused = 3;

    /// <summary>What a signal adds to its number.</summary>
    public const int SignalBase = 128;

    /// <summary>Stopped by Ctrl+C.</summary>
    public const int Interrupted = SignalBase + 2;

    /// <summary>Stopped by a request to end.</summary>
    public const int Ended = SignalBase + 15;

    /// <summary>Stopped because the terminal was lost.</summary>
    public const int HungUp = SignalBase + 1;

    /// <summary>What each says, in short and in full.</summary>
    public static readonly ImmutableArray<(int Code, string Brief, string Meaning)> All =
    [
        (Good, "all well", "all well"),
        (OurFault, "program fault", "a fault of the program"),
        (WrongUsage, "wrong usage", "wrong usage"),
        (InputRefused, "input refused", "some input was refused, or something could not be written, as the message says"),
        (Interrupted, "stopped", "stopped by Ctrl+C"),
        (Ended, "stopped", "stopped by a request to end"),
        (HungUp, "stopped", "stopped because the terminal was lost"),
    ];
}
