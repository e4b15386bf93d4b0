namespace ToiletAidTui.Screens;

/// <summary>What a command said, for a page.</summary>
/// <param name="Code">Its exit code.</param>
/// <param name="Output">What it said.</param>
/// <param name="Error">What it complained of.</param>
internal readonly record struct Caught(int Code, string Output, string Error)
{
    /// <summary>Lines that it said.</summary>
    internal string[] Said => Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Lines in which it complained.</summary>
    internal string[] Complaints => Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Why it failed, in one line; null when it did not.</summary>
    internal string? Fault => Code == 0 ? null : string.Join(' ', Complaints);
}
