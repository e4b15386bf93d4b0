using System.Collections.Immutable;

namespace ToiletAidTui.Keys;

/// <summary>The keys of one action.</summary>
/// <param name="Action">The action.</param>
/// <param name="Name">Its name in the settings.</param>
/// <param name="Label">How it is read.</param>
/// <param name="Letter">Its letter in the menu: a second way that no reader, terminal or browser takes; empty for the menu itself.</param>
/// <param name="Keys">Its keys; the first is the one that is told.</param>
internal sealed record KeyBinding(KeyAction Action, string Name, string Label, string Letter, ImmutableArray<string> Keys);
