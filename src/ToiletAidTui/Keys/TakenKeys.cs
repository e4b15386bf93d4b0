using System.Collections.Immutable;

namespace ToiletAidTui.Keys;

/// <summary>Keys that others keep for themselves, so that a program in front of them never sees them. Combinations with Insert, Caps Lock, Alt, Shift or
/// Command are left out: the program uses none.</summary>
internal static class TakenKeys
{
    private const string Memory = "From memory, not checked.";

    /// <summary>One row for each program. Rows with a file were read from it and are checked against it; the others say where they come from.</summary>
    internal static readonly ImmutableArray<TakenRow> All =
    [
        new("The reader yasr", ["Ctrl+A", "Ctrl+L", "Ctrl+N", "Ctrl+X"], "Read from yasr.conf of version 0.6.9."),
        new("The reader Fenrir inside a terminal", ["Esc", "F1", "F2", "F3", "F5", "F6", "F7", "F8"], "Read from keyboard/pty.conf of version 1.9.5."),
        new("The readers NVDA, JAWS, Narrator, Orca and VoiceOver, and Fenrir on a console", [], $"They take Insert, Caps Lock, and Control with Option. {Memory}"),
        new("The braille program BRLTTY", [], $"It takes keys of the display only. {Memory}"),
        new("GNU screen", ["Ctrl+A"], Memory),
        new("tmux", ["Ctrl+B"], Memory),
        new("GNOME Terminal and Xfce Terminal", ["F1", "F10", "F11"], Memory),
        new("Windows Terminal", ["Ctrl+V", "F11"], $"It takes Control C only while text is marked. {Memory}"),
        new("Terminal of macOS", ["F11"], Memory),
        new("A terminal in Chrome or Edge", ["Ctrl+N", "Ctrl+T", "Ctrl+W", "F11"], $"They open or close a page. {Memory}"),
        new("A terminal in Firefox", ["Ctrl+N", "Ctrl+Q", "Ctrl+T", "Ctrl+W", "F11"], $"They open or close a page or the browser. {Memory}"),
        new("Linux console, xterm and PuTTY", [], Memory),
    ];

    /// <summary>True where somebody takes the key.</summary>
    internal static bool Takes(string key) => All.Any(r => r.Keys.Contains(key, StringComparer.OrdinalIgnoreCase));

    /// <summary>The table as sentences.</summary>
    internal static IEnumerable<string> Sentences() => All.Select(r => r.Keys.IsEmpty
        ? $"{r.Who}: none of the keys used here. {r.Source}"
        : $"{r.Who}: {string.Join(", ", r.Keys.Select(KeyMap.Words))}. {r.Source}");
}
