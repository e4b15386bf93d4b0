using System.Globalization;

namespace ToiletAid.App.Files;

/// <summary>Days as year, month and day of ISO 8601, such as 2026-03-09: the same in files, on command lines and when read aloud, whatever the PC's language.</summary>
public static class IsoDay
{
    private const string Form = "yyyy-MM-dd";

    /// <summary>The day as text.</summary>
    /// <param name="day">The day.</param>
    public static string Of(DateOnly day) => day.ToString(Form, CultureInfo.InvariantCulture);

    /// <summary>The day that is written; null for anything else, also for a day that there is not.</summary>
    /// <param name="text">As typed.</param>
    public static DateOnly? Find(string? text) => DateOnly.TryParseExact(text, Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;
}
