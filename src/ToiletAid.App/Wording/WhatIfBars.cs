using System.Globalization;

namespace ToiletAid.App.Wording;

/// <summary>First places before and after as a bar chart in plain text. The number stands before the bar, so that nothing is only to be seen.</summary>
public static class WhatIfBars
{
    private const int Longest = 60;

    /// <summary>Draws the counts.</summary>
    /// <param name="title">What was changed, one sentence without a full stop.</param>
    /// <param name="tally">The counts.</param>
    /// <returns>Lines with a line end each.</returns>
    public static string Text(string title, WhatIfTally tally)
    {
        ArgumentNullException.ThrowIfNull(tally);
        var rows = tally.Kinds.ToList();
        long most = rows.Select(r => Math.Max(r.Before, r.After)).DefaultIfEmpty(0).Max();
        long each = Math.Max(1, (most + Longest - 1) / Longest);
        int digits = most.ToString("N0", CultureInfo.InvariantCulture).Length;
        using var text = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        text.WriteLine($"{title}.");
        text.WriteLine(string.Create(CultureInfo.InvariantCulture, $"A mark stands for {(each == 1 ? "1 person" : $"up to {each:N0} people")}."));
        foreach (var (id, before, after) in rows)
        {
            text.WriteLine();
            text.WriteLine(tally.Name(id));
            text.WriteLine($"before {Bar(before)}");
            text.WriteLine($"after  {Bar(after)}");
        }

        return text.ToString();

        string Bar(long count) =>
            $"{count.ToString("N0", CultureInfo.InvariantCulture).PadLeft(digits)} {new string('#', (int)((count + each - 1) / each))}".TrimEnd();
    }
}
