namespace ToiletAid.App.Trials;

/// <summary>One answer that a step of a trial offers.</summary>
/// <param name="Typed">What would be typed for it.</param>
/// <param name="Label">How it is read.</param>
public sealed record TrialChoice(string Typed, string Label)
{
    /// <summary>Enough of it to tell it from the others, for a line that has no room for more.</summary>
    public string Brief { get; init; } = Label;
}
