namespace ToiletAidTui.Screens;

/// <summary>One entry of a list.</summary>
/// <param name="Label">How it is read.</param>
/// <param name="Choose">What choosing it does.</param>
internal sealed record Entry(string Label, Action<Shell> Choose)
{
    /// <summary>The letter that chooses it at once; empty where a letter only goes to the next entry that begins with it.</summary>
    internal string Letter { get; init; } = string.Empty;
}
