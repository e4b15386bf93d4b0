using System.Collections.Immutable;
using System.Globalization;

namespace ToiletAidTui.Keys;

/// <summary>Which key does what. The first key of an action is the one that is named on the screen.</summary>
internal sealed class KeyMap
{
    /// <summary>
    /// Keys as built in. Plain letters are left to typing, Insert and Alt to every reader. Each action has a key that nobody in
    /// <see cref="TakenKeys"/> takes, and no key closes a page or a program anywhere. The second way is the menu, then a letter.
    /// </summary>
    internal static readonly ImmutableArray<KeyBinding> BuiltIn =
    [
        new(KeyAction.Help, "help", "Help", "H", ["F1", "Ctrl+G"]),
        new(KeyAction.Linear, "linear", "Go on in linear mode", "L", ["F2", "Ctrl+P"]),
        new(KeyAction.Menu, "menu", "Menu of every action", string.Empty, ["F9", "F10"]),
        new(KeyAction.Back, "back", "Go back", "B", ["Esc", "Ctrl+F"]),
        new(KeyAction.Repeat, "repeat", "Say the screen again", "Y", ["Ctrl+Y"]),
        new(KeyAction.Answers, "answers", "Answers so far", "A", ["Ctrl+E"]),
        new(KeyAction.Unknown, "unknown", "Not known", "U", ["Ctrl+U"]),
        new(KeyAction.How, "how", "How it was obtained", "O", ["Ctrl+O"]),
        new(KeyAction.Type, "type", "Type the answer", "T", ["F4"]),
        new(KeyAction.Finish, "finish", "Safety only, then result", "R", ["Ctrl+R"]),
        new(KeyAction.Note, "note", "Write a note", "N", ["Ctrl+K"]),
        new(KeyAction.Trial, "trial", "Record a trial", "D", ["Ctrl+D"]),
        new(KeyAction.Save, "save", "Save", "S", ["Ctrl+S"]),
        new(KeyAction.Hide, "hide", "Hide the screen", "I", ["F12"]),
        new(KeyAction.Leave, "leave", "Leave", "X", ["Ctrl+C", "Ctrl+X"]),
    ];

    private static readonly Dictionary<string, KeyAction> Fixed = new(StringComparer.OrdinalIgnoreCase)
    {
        ["CursorUp"] = KeyAction.Up,
        ["Shift+Tab"] = KeyAction.Up,
        ["CursorDown"] = KeyAction.Down,
        ["Tab"] = KeyAction.Down,
        ["CursorLeft"] = KeyAction.Left,
        ["CursorRight"] = KeyAction.Right,
        ["Home"] = KeyAction.First,
        ["End"] = KeyAction.Last,
        ["PageUp"] = KeyAction.PageUp,
        ["PageDown"] = KeyAction.PageDown,
        ["Enter"] = KeyAction.Enter,
        ["Backspace"] = KeyAction.Erase,
        ["Delete"] = KeyAction.Delete,
    };

    private readonly Dictionary<string, KeyAction> _acts = new(Fixed, StringComparer.OrdinalIgnoreCase);

    private KeyMap(ImmutableArray<KeyBinding> bindings)
    {
        Bindings = bindings;
        foreach (var binding in bindings)
        {
            foreach (string key in binding.Keys)
            {
                _acts[key] = binding.Action;
            }
        }
    }

    /// <summary>Every binding, in the order of the menu.</summary>
    internal ImmutableArray<KeyBinding> Bindings { get; }

    /// <summary>The keys as built in, with the given ones in their place.</summary>
    /// <param name="changed">Keys by name of action, such as F5 for help; several with spaces between them.</param>
    /// <param name="fault">What is wrong, as one sentence; null when nothing is.</param>
    internal static KeyMap Make(IReadOnlyDictionary<string, string> changed, out string? fault)
    {
        fault = changed.Keys.FirstOrDefault(k => !BuiltIn.Any(b => b.Name == k)) is { } unknown ? $"There is no action called {unknown}." : null;
        var bindings = BuiltIn.Select(b => changed.TryGetValue(b.Name, out string? keys) ? b with { Keys = [.. keys.Split(' ', StringSplitOptions.RemoveEmptyEntries)] } : b).ToImmutableArray();
        if (bindings.FirstOrDefault(b => b.Keys.IsEmpty || b.Keys.Any(k => !IsKey(k))) is { } bad)
        {
            fault ??= $"The key for {bad.Name} cannot be used. Use F1 to F12, Esc, or Ctrl+ and a letter.";
        }

        var twice = bindings.SelectMany(b => b.Keys).GroupBy(k => k, StringComparer.OrdinalIgnoreCase).FirstOrDefault(g => g.Count() > 1);
        fault ??= twice is null ? null : $"The key {twice.Key} is given to two actions.";
        return new(fault is null ? bindings : BuiltIn);
    }

    /// <summary>What a key does; null when nothing.</summary>
    internal KeyAction? Find(string key) => _acts.TryGetValue(key, out var act) ? act : null;

    /// <summary>The key of an action, in words.</summary>
    internal string Words(KeyAction act) => Words(Bindings.First(b => b.Action == act).Keys[0]);

    /// <summary>All keys of an action, in words.</summary>
    internal string AllWords(KeyAction act) => string.Join(" or ", Bindings.First(b => b.Action == act).Keys.Select(Words));

    /// <summary>Every way to an action, in words: its keys, then the menu and its letter.</summary>
    internal string Ways(KeyBinding binding) =>
        string.Join(" or ", binding.Keys.Select(Words)) + (binding.Letter.Length > 0 ? $", or {Words(KeyAction.Menu)} then {binding.Letter}" : string.Empty);

    /// <summary>A key in words that can be read aloud.</summary>
    internal static string Words(string key) => key.Replace("Ctrl+", "Control ", StringComparison.OrdinalIgnoreCase).Replace("Esc", "Escape", StringComparison.Ordinal);

    /// <summary>True for one or several keys that can be used, with spaces between them.</summary>
    internal static bool AreKeys(string keys) => keys.Split(' ', StringSplitOptions.RemoveEmptyEntries) is { Length: > 0 } all && all.All(IsKey);

    /// <summary>Function keys, Escape, and Control with a letter that is not Enter, Tab or Backspace in a terminal.</summary>
    private static bool IsKey(string key) =>
        key.Equals("Esc", StringComparison.OrdinalIgnoreCase)
        || (key.Length is 2 or 3 && key[0] is 'F' or 'f' && int.TryParse(key.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out int n) && n is >= 1 and <= 12)
        || (key.Length == 6 && key.StartsWith("Ctrl+", StringComparison.OrdinalIgnoreCase) && char.IsAsciiLetter(key[5]) && !"HIJM".Contains(char.ToUpperInvariant(key[5]), StringComparison.Ordinal));
}
