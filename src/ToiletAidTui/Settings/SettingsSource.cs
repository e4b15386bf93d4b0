namespace ToiletAidTui.Settings;

/// <summary>Reads the settings; null with what is wrong, one sentence.</summary>
internal delegate SettingsSet? SettingsSource(out string? fault);
