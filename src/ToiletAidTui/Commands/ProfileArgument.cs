using System.CommandLine;

namespace ToiletAidTui.Commands;

/// <summary>The argument of commands that read profiles: everywhere a code does as well as a path.</summary>
internal static class ProfileArgument
{
    private const string Profile = "Profile, by its file or by the code of the person";

    /// <summary>One profile.</summary>
    internal static Argument<string> One() => new("PATH") { Description = $"{Profile}." };

    /// <summary>One profile, or two of the same person.</summary>
    internal static Argument<string[]> OneOrTwo() => new("PATH") { Description = $"{Profile}, or two profiles of the same person, the earlier one first.", Arity = new(1, 2) };

    /// <summary>Any number of profiles, in any form.</summary>
    internal static Argument<string[]> Many() => new("PATH")
    {
        Description = $"{Profile}; a folder of profiles; a file ending in .ndjson with one profile per line; or - for the same on standard input.",
        Arity = ArgumentArity.OneOrMore,
    };
}
