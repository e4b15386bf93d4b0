using System.Collections.Immutable;
using ToiletAid.App.Sessions;

namespace ToiletAid.App.Trials;

/// <summary>One thing that is asked about a trial.</summary>
/// <param name="Id">Stable id; the option of the command has the same name.</param>
/// <param name="Asking">What is asked, as lines.</param>
/// <param name="Wanted">What may be typed, short.</param>
/// <param name="Help">How to find out, as lines.</param>
/// <param name="Take">Takes what was typed.</param>
/// <param name="MayBeUnknown">True when it can be left open.</param>
internal sealed record TrialStep(string Id, ImmutableArray<string> Asking, string Wanted, ImmutableArray<string> Help, Func<string, Reply> Take, bool MayBeUnknown = true)
{
    /// <summary>The answers that it offers, in the order in which they are asked; empty for a number.</summary>
    public ImmutableArray<TrialChoice> Choices { get; init; } = [];

    /// <summary>True when several can be given at once.</summary>
    public bool TakesMany { get; init; }
}
