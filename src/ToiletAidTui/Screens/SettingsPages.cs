using ToiletAidTui.Settings;

namespace ToiletAidTui.Screens;

/// <summary>The settings, to read and to change.</summary>
internal static class SettingsPages
{
    /// <summary>Every setting.</summary>
    internal static Page Make(Shell shell)
    {
        if (shell.Services.Settings(out string? fault) is not { } settings)
        {
            return new TextPage("settings", ["Settings.", fault ?? string.Empty]);
        }

        return new ListPage("settings", "Settings. A change holds from the next start.", [],
        [
            .. settings.Values.Select(v => new Entry(v.Entry, s => s.Push(Change(v)))),
            new("Go back", s => s.Pop()),
        ]);
    }

    private static EditPage Change(SettingValue value) => new(
        "setting",
        [value.Sentence, $"It takes {value.Definition.Wanted}."],
        "New value, Enter keeps it",
        "Not taken. Value",
        (shell, typed) =>
        {
            if (typed.Length == 0)
            {
                shell.Pop();
                return null;
            }

            if (shell.Services.Keep(value.Definition.Name, typed) is { } fault)
            {
                return fault;
            }

            shell.Pop();
            shell.Replace(Make(shell), $"{value.Definition.Label}: {typed} from the next start.");
            return null;
        });
}
