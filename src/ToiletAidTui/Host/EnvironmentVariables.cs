using System.Collections.Immutable;
using ToiletAid.App.Store;

namespace ToiletAidTui.Host;

/// <summary>The variables of the environment that change what the program does.</summary>
internal static class EnvironmentVariables
{
    internal const string Mode = "TOILETAID_MODE";
    internal const string Accessible = "ACCESSIBLE";
    internal const string Terminal = "TERM";
    internal const string NoColour = "NO_COLOR";
    internal const string DataHome = OwnFolder.DataVariable;
    internal const string ConfigHome = OwnFolder.SettingsVariable;

    internal static readonly ImmutableArray<(string Name, string Meaning)> All =
    [
        (Mode, "linear or full-screen chooses the mode. Any other setting has a variable too: TOILETAID_, then its name in capitals with underscores."),
        (Accessible, "Any value other than empty, 0, false or no chooses linear mode."),
        (Terminal, "dumb or unset chooses linear mode."),
        (NoColour, "Any value other than empty turns colours off."),
        (DataHome, "Folder of your own data, with profiles and drafts in its folder toiletaid. If unset, .local/share in your home folder. Not on Windows."),
        (ConfigHome, "Folder of your own settings, in its file toiletaid/settings.json. If unset, .config in your home folder. Not on Windows."),
    ];
}
