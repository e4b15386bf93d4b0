using System.CommandLine;
using ToiletAidTui.Host;
using ToiletAidTui.Settings;

namespace ToiletAidTui.Commands;

/// <summary>The options that choose the mode, and the choice.</summary>
internal sealed class ModeOptions
{
    private readonly Option<bool> _linear = new("--linear") { Description = "Line by line, for screen readers and braille." };
    private readonly Option<bool> _fullScreen = new("--full-screen") { Description = "Full screen, whatever the settings say." };
    private readonly Option<bool> _clear = new("--clear") { Description = "Clear the screen and its scrollback on leaving." };
    private readonly Option<bool> _noColour = new("--no-color") { Description = "No colours, whatever the settings say." };

    /// <summary>Adds the options to a command.</summary>
    internal void AddTo(Command command)
    {
        command.Options.Add(_linear);
        command.Options.Add(_fullScreen);
        command.Options.Add(_clear);
        command.Options.Add(_noColour);
    }

    /// <summary>The mode and the settings; null after a sentence on what is wrong.</summary>
    internal InterfaceMode? Choose(ParseResult parsed, Terminal terminal)
    {
        bool isTerminal = terminal.InputIsTerminal && terminal.OutputIsTerminal;
        var choice = ModeChoice.Of(new()
        {
            LinearOption = parsed.GetValue(_linear),
            FullScreenOption = parsed.GetValue(_fullScreen),
            Variable = terminal.Variable,
            IsTerminal = isTerminal,
            ReaderRuns = WindowsReader.Runs,
        });
        if (choice.Fault is { } wrong)
        {
            terminal.Error.WriteLine(wrong);
            return null;
        }

        var options = new Dictionary<string, string>();
        if (parsed.GetValue(_clear))
        {
            options[SettingList.ClearOnLeaving] = SettingList.Yes;
        }

        if (parsed.GetValue(_noColour))
        {
            options[SettingList.Contrast] = SettingList.TerminalsOwn;
        }

        var reader = SettingsReader.Usual(terminal.Variable);
        if (reader.Read(options, out string? fault) is not { } settings)
        {
            terminal.Error.WriteLine(fault);
            return null;
        }

        bool isDumb = ModeChoice.IsDumb(terminal.Variable);
        var mode = choice.Mode ?? (settings[SettingList.Mode] == ModeChoice.LinearWord ? Mode.Linear : Mode.FullScreen);
        if (mode == Mode.FullScreen && (!isTerminal || isDumb || terminal.HasNoSize))
        {
            terminal.Error.WriteLine($"The full screen needs a terminal that {(isTerminal && !isDumb ? "tells its size, and this one says 0" : "can show it")}. Going on line by line.");
            mode = Mode.Linear;
        }

        return new(mode, isTerminal && !isDumb && !terminal.HasNoSize, settings, reader);
    }
}
