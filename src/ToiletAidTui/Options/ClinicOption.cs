using System.CommandLine;
using ToiletAid.App.Clinics;
using ToiletAid.Core.Knowledge;
using ToiletAidTui.Host;
using ToiletAidTui.Settings;

namespace ToiletAidTui.Options;

/// <summary>The option that takes what the clinic learnt from its own trials. It is never used unless somebody chose it, here or in the settings.</summary>
internal static class ClinicOption
{
    private const string Name = "--clinic";

    internal static Option<string?> Define() => new(Name)
    {
        HelpName = "FILE",
        Description = "The clinic's own values, as toiletaid outcomes saves them, or none. The setting clinic if left out.",
    };

    /// <summary>The file that was typed, or null; for any command, whether it takes the option or not.</summary>
    internal static string? Of(ParseResult parsed) =>
        parsed.CommandResult.Command.Options.OfType<Option<string?>>().FirstOrDefault(o => o.Name == Name) is { } option ? parsed.GetValue(option) : null;

    /// <summary>Knowledge with the clinic's own values over it; null after their faults were told.</summary>
    internal static KnowledgeBase? Over(KnowledgeBase knowledge, Terminal terminal)
    {
        string? file = terminal.Clinic;
        if (file is null)
        {
            if (SettingsReader.Usual(terminal.Variable).Read(new Dictionary<string, string>(), out string? fault) is not { } settings)
            {
                terminal.Error.WriteLine(fault);
                return null;
            }

            file = settings[SettingList.Clinic];
        }

        if (file == SettingList.NoClinic)
        {
            return knowledge with { Clinic = null };
        }

        var read = ClinicFile.Read(file, knowledge);
        if (read.TryGet(out var clinic))
        {
            return knowledge with { Clinic = clinic };
        }

        terminal.Complain(file, read.Issues);
        return null;
    }
}
