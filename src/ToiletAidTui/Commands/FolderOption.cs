using System.CommandLine;
using ToiletAid.App.Store;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands;

/// <summary>The option that names the folder of profiles, for commands that take a code in place of a path.</summary>
internal static class FolderOption
{
    internal static Option<string?> Define() => new("--folder") { HelpName = "FOLDER", Description = "Folder of profiles. One in your data folder if left out." };

    /// <summary>The file that is meant; null after it was told that a code stands for none.</summary>
    /// <param name="terminal">What it talks to.</param>
    /// <param name="pathOrCode">As typed.</param>
    /// <param name="folder">The option as typed, or null.</param>
    internal static string? Resolve(Terminal terminal, string pathOrCode, string? folder)
    {
        string? file = new ProfileFolder(terminal.Variable).Resolve(pathOrCode, folder);
        if (file is null)
        {
            terminal.Error.WriteLine($"{pathOrCode}: this account has no folder for data, so a code stands for no file, give a path or the option --folder.");
        }

        return file;
    }
}
