namespace ToiletAidTui.Screens;

/// <summary>A key that was pressed.</summary>
/// <param name="Act">What it does.</param>
/// <param name="Text">The character, where it is one.</param>
internal readonly record struct KeyPress(Act Act, string Text = "");
