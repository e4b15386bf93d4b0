namespace ToiletAid.App.Store;

/// <summary>The user's own folders on this machine, so that another user of the PC has others.</summary>
/// <remarks>Not on Windows they lie where the XDG Base Directory Specification 0.8 puts them (from memory): a variable that holds no absolute path is
/// passed over, because its folder would lie in the current one, where anybody may look.</remarks>
public static class OwnFolder
{
    /// <summary>The variable that names where data lie.</summary>
    public const string DataVariable = "XDG_DATA_HOME";

    /// <summary>The variable that names where settings lie.</summary>
    public const string SettingsVariable = "XDG_CONFIG_HOME";

    /// <summary>The folder for profiles and drafts.</summary>
    /// <param name="environment">The environment.</param>
    /// <returns>An absolute path, whether the folder is there or not; empty when the system names none.</returns>
    public static string Data(Func<string, string?> environment) =>
        Of(environment, DataVariable, Path.Combine(".local", "share"), Environment.SpecialFolder.LocalApplicationData);

    /// <summary>The folder for settings.</summary>
    /// <param name="environment">The environment.</param>
    /// <returns>An absolute path, whether the folder is there or not; empty when the system names none.</returns>
    public static string Settings(Func<string, string?> environment) =>
        Of(environment, SettingsVariable, ".config", Environment.SpecialFolder.ApplicationData);

    private static string Of(Func<string, string?> environment, string variable, string inHome, Environment.SpecialFolder onWindows)
    {
        string folder = OperatingSystem.IsWindows() ? Known(onWindows)
            : environment(variable) is { } own && Path.IsPathFullyQualified(own) ? own
            : Path.Combine(Home(environment), inHome);
        return Path.IsPathFullyQualified(folder) ? Path.Combine(folder, "toiletaid") : string.Empty;
    }

    /// <summary>The home folder; where no variable names it, as for a program that the system starts, the account's.</summary>
    private static string Home(Func<string, string?> environment) =>
        environment("HOME") is { } home && Path.IsPathFullyQualified(home) ? home : Known(Environment.SpecialFolder.UserProfile);

    private static string Known(Environment.SpecialFolder folder) => Environment.GetFolderPath(folder, Environment.SpecialFolderOption.DoNotVerify);
}
