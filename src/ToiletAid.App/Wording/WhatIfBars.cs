using System.Globalization;
using System.Text;

namespace ToiletAid.App.Wording;

/// <summary>First places before and after as a bar chart in plain text. The number stands before the bar, so that nothing is only to be seen.</summary>
public static class WhatIfBars
{
    private const int Longest = 60;

    /// <summary>Writes the chart.</summary>
    public static void Write(Stream stream, string title, WhatIfTally tally)
    {
        var rows = tally.Kinds.ToList();
        long most = rows.Select(r => Math.Max(r.Before, r.After)).DefaultIfEmpty(0).Max();
        long each = Math.Max(1, (most + Longest - 1) / Longest);
        int digits = most.ToString("N0", CultureInfo.InvariantCulture).Length;
        using var text = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\n" };
        text.WriteLine($"{title}.");
        text.WriteLine(string.Create(CultureInfo.InvariantCulture, $"A mark stands for {(each == 1 ? "1 person" : $"up to {each:N0} people")}."));
        foreach (var (id, before, after) in rows)
        {
            text.WriteLine();
            text.WriteLine(tally.Name(id));
            text.WriteLine($"before {Bar(before)}");
            text.WriteLine($"after  {Bar(after)}");
        }

        string Bar(long count) =>
            $"{count.ToString("N0", CultureInfo.InvariantCulture).PadLeft(digits)} {new string('#', (int)((count + each - 1) / each))}".TrimEnd();
    }
}
