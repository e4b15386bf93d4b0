using System.Globalization;
using ToiletAidTui.Keys;

namespace ToiletAidTui.Settings;

/// <summary>The settings as they stand.</summary>
internal sealed class SettingsSet
{
    /// <summary>Makes a set.</summary>
    /// <param name="values">Every setting.</param>
    internal SettingsSet(IReadOnlyList<SettingValue> values)
    {
        Values = values;
        var changed = values
            .Where(v => v.Definition.Name.StartsWith(SettingList.Keys, StringComparison.Ordinal) && v.Value != v.Definition.BuiltIn)
            .ToDictionary(v => v.Definition.Name[SettingList.Keys.Length..], v => v.Value, StringComparer.Ordinal);
        Keys = KeyMap.Make(changed, out string? fault);
        KeyFault = fault;
    }

    /// <summary>Every setting, in the order of the list.</summary>
    internal IReadOnlyList<SettingValue> Values { get; }

    /// <summary>Which key does what.</summary>
    internal KeyMap Keys { get; }

    /// <summary>What is wrong with the keys, one sentence; null when nothing is.</summary>
    internal string? KeyFault { get; }

    /// <summary>White on black.</summary>
    internal bool HighContrast => this[SettingList.Contrast] == SettingList.High;

    /// <summary>How long nobody presses a key before the screen is hidden; zero for never.</summary>
    internal TimeSpan IdleUntilHidden => TimeSpan.FromMinutes(int.Parse(this[SettingList.IdleMinutes], CultureInfo.InvariantCulture));

    /// <summary>True when screen and scrollback are cleared on leaving.</summary>
    internal bool ClearOnLeaving => this[SettingList.ClearOnLeaving] == SettingList.Yes;

    /// <summary>True when an answer out of several is taken by its digit alone.</summary>
    internal bool OneKey => this[SettingList.OneKey] == SettingList.Yes;

    /// <summary>The value of a setting.</summary>
    internal string this[string name] => Values.First(v => v.Definition.Name == name).Value;
}
