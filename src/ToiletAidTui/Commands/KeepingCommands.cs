using System.CommandLine;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Store;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands;

/// <summary>Protects, opens and erases saved profiles.</summary>
internal static class KeepingCommands
{
    internal static Command Protect(Terminal terminal)
    {
        var (path, folder) = Where();
        var command = new Command("protect", "Protect a profile with a passphrase. Without it nobody can read the profile again, so keep it safe.") { path, folder };
        command.SetAction(parsed => Run(terminal, Named(terminal, parsed, path, folder), "Protected. Copies made earlier are not", (keeper, file) =>
            ProfileFile.IsProtected(file) ? Already(file)
            : keeper.Change(file, () => null, terminal.Passphrase.Choose)));
        return command;
    }

    internal static Command Unprotect(Terminal terminal)
    {
        var (path, folder) = Where();
        var command = new Command("unprotect", "Take the passphrase off a profile.") { path, folder };
        command.SetAction(parsed => Run(terminal, Named(terminal, parsed, path, folder), "The profile can now be read without a passphrase", (keeper, file) =>
            ProfileFile.IsProtected(file) ? keeper.Change(file, terminal.Passphrase.Get, () => null, open: true) : Refused("it is not protected, so nothing was changed")));
        return command;
    }

    internal static Command ChangePassphrase(Terminal terminal)
    {
        var (path, folder) = Where();
        var newFile = new Option<string?>("--new-passphrase-file") { HelpName = "FILE", Description = "File whose first line is the new passphrase." };
        var newDescriptor = new Option<int?>("--new-passphrase-fd") { Description = "Number of an open file whose first line is the new passphrase." };
        var command = new Command("change-passphrase", "Give a protected profile another passphrase.") { path, folder, newFile, newDescriptor };
        command.SetAction(parsed => Run(terminal, Named(terminal, parsed, path, folder), "The new passphrase is needed from now on", (keeper, file) =>
            ProfileFile.IsProtected(file)
                ? keeper.Change(file, terminal.Passphrase.Get, new PassphraseSource(terminal, parsed.GetValue(newFile), parsed.GetValue(newDescriptor)).Choose)
                : Refused("it is not protected, use protect to give it a passphrase")));
        return command;
    }

    internal static Command Erase(Terminal terminal)
    {
        var (path, folder) = Where();
        var yes = new Option<bool>("--yes") { Description = "Erase without asking." };
        var command = new Command("erase", "Erase a profile with its earlier version and drafts, and say what cannot be promised.") { path, folder, yes };
        command.SetAction(parsed =>
        {
            if (Named(terminal, parsed, path, folder) is not { } file)
            {
                return ExitCode.InputRefused;
            }

            if (!parsed.GetValue(yes) && !Confirmed(terminal, file))
            {
                terminal.Error.WriteLine("Nothing was erased.");
                return ExitCode.InputRefused;
            }

            return Guarded(terminal, file, () =>
            {
                var erased = ProfileKeeper.Erase(file);
                if (!erased.TryGet(out var gone))
                {
                    return Refuse(terminal, file, erased.Issues);
                }

                foreach (string name in gone.Files)
                {
                    terminal.Output.WriteLine($"Erased {name}.");
                }

                foreach (string name in gone.NotOverwritten)
                {
                    terminal.Output.WriteLine($"{name} has another name on this disk, as some backups make. What is under that name was left as it is.");
                }

                foreach (string name in gone.StillThere)
                {
                    terminal.Error.WriteLine($"{name} could not be overwritten and removed. It is no longer offered, but it is on the disk: repair the disk and erase again.");
                }

                foreach (string limit in ErasureLimits.Of(file))
                {
                    terminal.Output.WriteLine(limit);
                }

                return gone.StillThere.IsEmpty ? ExitCode.Good : ExitCode.InputRefused;
            });
        });
        return command;
    }

    private static bool Confirmed(Terminal terminal, string file)
    {
        if (!terminal.InputIsTerminal)
        {
            terminal.Error.WriteLine("Erasing cannot be undone. Give --yes to erase without being asked.");
            return false;
        }

        terminal.Dialogue.Line($"Erasing {file} cannot be undone.");
        return terminal.Dialogue.AskYes("Erase it?", terminal.Lines());
    }

    private static (Argument<string> Path, Option<string?> Folder) Where() => (
        ProfileArgument.One(),
        FolderOption.Define());

    private static string? Named(Terminal terminal, ParseResult parsed, Argument<string> path, Option<string?> folder) =>
        FolderOption.Resolve(terminal, parsed.GetValue(path)!, parsed.GetValue(folder));

    /// <summary>What a program that died while it protected the profile left in clear goes before it is said that it is protected.</summary>
    private static Checked<StoredProfile> Already(string file)
    {
        ProfileKeeper.EndProtecting(file);
        return Refused("it is protected already, use change-passphrase to give it another passphrase");
    }

    private static Checked<StoredProfile> Refused(string message) => Checked<StoredProfile>.Bad(new Issue("protection", string.Empty, message));

    private static int Run(Terminal terminal, string? file, string done, Func<ProfileKeeper, string, Checked<StoredProfile>> action) => file is null ? ExitCode.InputRefused : Guarded(terminal, file, () =>
    {
        // A wrong path is told before anybody is asked for a passphrase.
        var changed = File.Exists(file) ? action(new(BuiltIn.Questions()), file) : Refused("there is no such file, check the path");
        if (changed.Value is null)
        {
            return Refuse(terminal, file, changed.Issues);
        }

        terminal.Output.WriteLine($"{done}.");
        return ExitCode.Good;
    });

    private static int Guarded(Terminal terminal, string file, Func<int> action)
    {
        try
        {
            return action();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            terminal.Error.WriteLine($"{(file.Length == 0 ? "The file" : file)} could not be changed, {FileFault.Reason(e)}.");
            return ExitCode.InputRefused;
        }
    }

    private static int Refuse(Terminal terminal, string file, IEnumerable<Issue> issues)
    {
        terminal.Complain(file, issues);
        return ExitCode.InputRefused;
    }
}
