using System.Collections.Frozen;

namespace ToiletAidTui.Keys;

/// <summary>The keys of the full screen in the linear mode: each does what its word does when it is typed.</summary>
internal static class KeyWords
{
    private static readonly FrozenDictionary<KeyAction, string> Words = new Dictionary<KeyAction, string>
    {
        [KeyAction.Help] = "help",
        [KeyAction.Menu] = "help",
        [KeyAction.Linear] = "screen",
        [KeyAction.Back] = "back",
        [KeyAction.Repeat] = "repeat",
        [KeyAction.Answers] = "list",
        [KeyAction.Unknown] = "unknown",
        [KeyAction.Finish] = "finish",
        [KeyAction.Note] = "note",
        [KeyAction.Save] = "save",
        [KeyAction.Hide] = "hide",
        [KeyAction.Leave] = "quit",
    }.ToFrozenDictionary();

    /// <summary>The word that is typed for an action; null where linear mode has none.</summary>
    internal static string? Typed(KeyAction act) => act == KeyAction.Trial ? "trial" : Words.GetValueOrDefault(act);

    /// <summary>The word of a key; null for a key without one. Control D ends the input in a line, so that the key for a trial has none.</summary>
    internal static string? Of(KeyMap keys, string key) => keys.Find(key) is { } act ? Words.GetValueOrDefault(act) : null;
}
