namespace ToiletAid.Core.Quantities;

/// <summary>Months, where something is counted by the day and told by the month.</summary>
internal static class Calendar
{
    /// <summary>Months in a year.</summary>
    internal const double MonthsInYear = 12;

    /// <summary>Days in a mean month of the Julian year, 30.44.</summary>
    internal const double DaysInMonth = 365.25 / MonthsInYear;
}
