namespace ToiletAidTui.Keys;

/// <summary>A key that was pressed.</summary>
/// <param name="Action">What it does.</param>
/// <param name="Text">The character, where it is one.</param>
internal readonly record struct KeyPress(KeyAction Action, string Text = "");
