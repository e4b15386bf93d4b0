namespace ToiletAidTui.Keys;

/// <summary>What is said of keys, for every page that tells them: the topic on accessibility and the manual.</summary>
internal static class KeyTopics
{
    internal static (string Heading, string[] Sentences)[] All()
    {
        var keys = KeyMap.Make(new Dictionary<string, string>(), out _);
        return
        [
            ("Keys of the full screen",
            [
                .. keys.Bindings.Select(b => $"{b.Label}: {keys.Ways(b)}."),
                "The menu holds every action, each with a letter, for keys that a terminal or a reader keeps for itself.",
                "The command toiletaid settings shows the names under which keys can be changed.",
            ]),
            ("Words and keys of linear mode",
            [
                .. keys.Bindings.Where(b => KeyWords.Typed(b.Action) is not null).Select(b => $"{b.Label}: type {KeyWords.Typed(b.Action)}{InLine(keys, b)}."),
                "A word is typed at a question, with Enter. Nobody else takes a word.",
            ]),
            ("Keys that others keep for themselves",
            [
                .. TakenKeys.Sentences(),
                "Each action has a key that none of them takes, and the menu with a letter as a second way.",
            ]),
        ];
    }

    private static string InLine(KeyMap keys, KeyBinding binding) =>
        string.Concat(binding.Keys.Where(k => KeyWords.Of(keys, k) is not null).Select(k => $", or {KeyMap.Words(k)}"));
}
