using System.CommandLine;
using System.Text.Json.Nodes;
using ToiletAid.App.Files;
using ToiletAidTui.Host;
using ToiletAidTui.Options;
using ToiletAidTui.Settings;

namespace ToiletAidTui.Commands;

/// <summary>Shows the settings and sets one.</summary>
internal static class SettingsCommand
{
    internal static Command Define(Terminal terminal)
    {
        var format = Formats.Option(Formats.Text, Formats.Json);
        var set = new Option<string?>("--set") { HelpName = "NAME=VALUE", Description = "A setting to keep for yourself, such as mode=linear." };
        var command = new Command("settings", "Show each setting, its value and where the value came from.") { format, set };
        command.SetAction(parsed =>
        {
            var reader = SettingsReader.Usual(terminal.Variable);
            if (parsed.GetValue(set) is { } pair)
            {
                string[] parts = pair.Split('=', 2);
                if ((parts.Length < 2 ? "The value of --set is not a name and a value, such as mode=linear." : new UserSettings(reader.UserPath).Set(parts[0].Trim(), parts[1].Trim())) is { } wrong)
                {
                    terminal.Error.WriteLine(wrong);
                    return ExitCode.WrongUsage;
                }
            }

            if (reader.Read(new Dictionary<string, string>(), out string? fault) is not { } settings)
            {
                terminal.Error.WriteLine(fault);
                return ExitCode.WrongUsage;
            }

            if (parsed.GetValue(format) == Formats.Json)
            {
                Json(terminal.Output, settings);
                return ExitCode.Good;
            }

            terminal.Results.Lines(settings.Values.Select(v => v.Sentence));
            return ExitCode.Good;
        });
        return command;
    }

    private static void Json(TextWriter output, SettingsSet settings) => output.WriteLine(JsonText.Of(JsonText.Indented, JsonText.Nodes(settings.Values.Select(v => new JsonObject
    {
        ["name"] = v.Definition.Name,
        ["value"] = v.Value,
        ["source"] = v.Source,
        ["meaning"] = v.Definition.Meaning,
    }))));
}
