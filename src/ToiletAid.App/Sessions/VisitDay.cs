using ToiletAid.App.Files;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Sessions;

/// <summary>Whether the day of a visit can be right. A wrong year must not hide what is found today, nor rule for ever.</summary>
public static class VisitDay
{
    /// <summary>What speaks against a day; null when nothing does.</summary>
    /// <param name="day">Day of the visit.</param>
    /// <param name="today">The day by the clock.</param>
    /// <param name="profile">What is saved about the person; null for nothing.</param>
    public static DayQuestion? Doubt(DateOnly day, DateOnly today, Profile? profile)
    {
        if (day > today)
        {
            return new(DayDoubt.AfterToday, $"{IsoDay.Of(day)} is after today, which is {IsoDay.Of(today)} by the clock.", "Give the right day with --date, or set the clock.");
        }

        var days = profile?.Sessions.Select(s => s.Date).ToList() ?? [];
        if (days.Where(d => d <= today).DefaultIfEmpty().Max() is var last && last > day)
        {
            return new(DayDoubt.Earlier, $"The last visit was on {IsoDay.Of(last)}, and {IsoDay.Of(day)} is before it.", "Give the right day with --date, or --late if this visit is being written up late.");
        }

        return days.Exists(d => d > today)
            ? new(DayDoubt.LaterVisit, $"A visit is dated {IsoDay.Of(days.Max())}, after today, which is {IsoDay.Of(today)} by the clock.", "Set the clock.")
            : null;
    }

    /// <summary>The last day of a visit that is not after today; null when there is none.</summary>
    /// <param name="profile">What is saved about the person.</param>
    /// <param name="today">The day by the clock.</param>
    public static DateOnly? Last(Profile profile, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(profile);
        return profile.Sessions.Where(s => s.Date <= today).Select(s => (DateOnly?)s.Date).Max();
    }
}
