using System.Collections.Frozen;
using ToiletAidTui.Screens;

namespace ToiletAidTui.Linear;

/// <summary>The keys of the full screen in the linear mode: each does what its word does when it is typed.</summary>
internal static class KeyWords
{
    private static readonly FrozenDictionary<Act, string> Words = new Dictionary<Act, string>
    {
        [Act.Help] = "help",
        [Act.Menu] = "help",
        [Act.Linear] = "screen",
        [Act.Back] = "back",
        [Act.Repeat] = "repeat",
        [Act.Answers] = "list",
        [Act.Unknown] = "unknown",
        [Act.Finish] = "finish",
        [Act.Note] = "note",
        [Act.Save] = "save",
        [Act.Hide] = "hide",
        [Act.Leave] = "quit",
    }.ToFrozenDictionary();

    /// <summary>The word that is typed for an action; null where linear mode has none.</summary>
    internal static string? Typed(Act act) => act == Act.Trial ? "trial" : Words.GetValueOrDefault(act);

    /// <summary>The word of a key; null for a key without one. Control D ends the input in a line, so that the key for a trial has none.</summary>
    internal static string? Of(KeyMap keys, string key) => keys.Find(key) is { } act ? Words.GetValueOrDefault(act) : null;
}
