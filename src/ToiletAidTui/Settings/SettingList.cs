using System.Collections.Immutable;
using System.Globalization;
using ToiletAidTui.Keys;

namespace ToiletAidTui.Settings;

/// <summary>Every setting that there is.</summary>
internal static class SettingList
{
    internal const string Mode = "mode";
    internal const string Contrast = "contrast";
    internal const string IdleMinutes = "idle-minutes";
    internal const string ClearOnLeaving = "clear-on-leaving";
    internal const string Clinic = "clinic";
    internal const string OneKey = "one-key";
    internal const string Keys = "keys:";
    internal const string High = "high";
    internal const string TerminalsOwn = "terminal";
    internal const string Yes = "yes";

    /// <summary>In place of a file of the clinic: the built-in values alone.</summary>
    internal const string NoClinic = "none";

    /// <summary>Longest time after which a screen can be hidden: a working day.</summary>
    private const int MostIdleMinutes = 480;

    /// <summary>The settings, in the order in which they are listed.</summary>
    internal static readonly ImmutableArray<SettingDefinition> All =
    [
        new(Mode, "full-screen", "How the program appears on a terminal.", "linear or full-screen", v => v is "linear" or "full-screen") { Label = "Mode at the start" },
        new(Contrast, TerminalsOwn, "Colours of the full screen: the terminal's own, or white on black.", "terminal or high", v => v is TerminalsOwn or High) { Label = "Contrast" },
        new(IdleMinutes, "10", "Minutes without a key after which the full screen is hidden. 0 means never.", "a whole number from 0 to 480", IsMinutes) { Label = "Minutes until the screen is hidden" },
        new(ClearOnLeaving, "no", "Clears the screen and its scrollback on leaving.", "yes or no", v => v is Yes or "no") { Label = "Clear the screen on leaving" },
        new(OneKey, "no", "A number answers a question at once, without Enter.", "yes or no", v => v is Yes or "no") { Label = "One key for an answer" },
        new(Clinic, NoClinic, "File of the clinic's own values that advice is based on, as toiletaid outcomes saves it.", "the path of a file, or none", v => v.Length > 0) { Label = "The clinic's own values" },
        .. KeyMap.BuiltIn.Select(b => new SettingDefinition(Keys + b.Name, string.Join(' ', b.Keys), $"Keys for: {b.Label}.", "F1 to F12, Esc, or Ctrl+ and a letter, several with spaces between them", v => KeyMap.AreKeys(v)) { Label = $"Keys, {char.ToLowerInvariant(b.Label[0])}{b.Label[1..]}" }),
    ];

    /// <summary>The setting called <paramref name="name"/>, or null.</summary>
    internal static SettingDefinition? Find(string name) => All.FirstOrDefault(d => d.Name.Equals(name, StringComparison.OrdinalIgnoreCase));

    private static bool IsMinutes(string value) =>
        int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out int minutes) && minutes <= MostIdleMinutes;
}
