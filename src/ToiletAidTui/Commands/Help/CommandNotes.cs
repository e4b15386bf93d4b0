using ToiletAidTui.Host;

namespace ToiletAidTui.Commands.Help;

/// <summary>What help says of a command beyond its definition.</summary>
/// <param name="Examples">The most usual first.</param>
internal sealed record CommandNotes(params Example[] Examples)
{
    /// <summary>Exit codes that it can give, besides that of a fault of ours.</summary>
    internal int[] ExitCodes { get; init; } = [ExitCode.Good, ExitCode.WrongUsage, ExitCode.InputRefused];

    /// <summary>Names of the variables of the environment that it looks at.</summary>
    internal string[] Variables { get; init; } = [];

    /// <summary>True when it may meet a protected profile.</summary>
    internal bool TakesPassphrase { get; init; }
}
