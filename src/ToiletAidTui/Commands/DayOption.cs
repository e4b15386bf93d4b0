using System.CommandLine;
using ToiletAid.App.Files;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands;

/// <summary>The option --date of the commands that add a visit.</summary>
internal static class DayOption
{
    /// <summary>The option.</summary>
    /// <param name="what">What happens on the day, such as visit.</param>
    internal static Option<string?> Define(string what) => new("--date") { HelpName = "DATE", Description = $"Day of the {what}, such as 2026-03-09. Today if left out." };

    /// <summary>The day that is meant; null after it was told that the option is none.</summary>
    /// <param name="terminal">Where it is told, with the clock.</param>
    /// <param name="typed">The option as typed, or null.</param>
    internal static DateOnly? Of(Terminal terminal, string? typed)
    {
        var day = typed is null ? terminal.Today : IsoDay.Find(typed);
        if (day is null)
        {
            terminal.Error.WriteLine("The value of --date is not a date. Write year, month and day such as 2026-03-09.");
        }

        return day;
    }
}
