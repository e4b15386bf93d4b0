namespace ToiletAidTui.Screens;

/// <summary>One entry of a list.</summary>
/// <param name="Label">How it is read.</param>
/// <param name="Choose">What choosing it does.</param>
internal sealed record Entry(string Label, Action<Shell> Choose);
