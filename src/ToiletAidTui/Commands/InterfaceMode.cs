using ToiletAidTui.Host;
using ToiletAidTui.Settings;

namespace ToiletAidTui.Commands;

/// <summary>How the program talks with the person this time.</summary>
/// <param name="Mode">The mode to begin with.</param>
/// <param name="CanDraw">True when there is a terminal that can show the full screen.</param>
/// <param name="Settings">The settings.</param>
/// <param name="Reader">Where the settings came from.</param>
internal sealed record InterfaceMode(Mode Mode, bool CanDraw, SettingsSet Settings, SettingsReader Reader);
