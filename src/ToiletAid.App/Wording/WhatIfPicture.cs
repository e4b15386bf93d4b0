using System.Globalization;

namespace ToiletAid.App.Wording;

/// <summary>First places before and after as a bar chart in SVG. Its description holds every number in words, so nothing is only to be seen.</summary>
/// <remarks>Before and after differ by outline and fill, not by colour, so that a grey print tells them apart.</remarks>
public static class WhatIfPicture
{
    private const int Width = 900;
    private const int Bars = 480;
    private const int LabelWidth = 360;
    private const int LongestLabel = 46;
    private const int RowHeight = 48;
    private const int Head = 56;

    /// <summary>Draws the counts.</summary>
    /// <param name="title">What was changed, one sentence without a full stop.</param>
    /// <param name="tally">The counts.</param>
    /// <returns>An SVG document with title and description.</returns>
    public static string Svg(string title, WhatIfTally tally)
    {
        ArgumentNullException.ThrowIfNull(tally);
        var rows = tally.Kinds.ToList();
        double most = Math.Max(1, rows.Select(r => Math.Max(r.Before, r.After)).DefaultIfEmpty(1).Max());
        var svg = new SvgDrawing(Width, Head + (rows.Count * RowHeight) + 16, title, string.Join(' ', WhatIfText.Summary(tally)));
        svg.Add($"<text x=\"16\" y=\"24\">{title}</text>");
        svg.Add($"<text x=\"16\" y=\"44\">Outlined bar: before. Filled bar: after.</text>");
        for (int i = 0; i < rows.Count; i++)
        {
            int y = Head + (i * RowHeight);
            svg.Add($"<text x=\"16\" y=\"{y + 24}\">{Short(tally.Name(rows[i].Id))}</text>");
            Bar(svg, y + 4, rows[i].Before, Bars / most, "#ffffff");
            Bar(svg, y + 22, rows[i].After, Bars / most, "#000000");
        }

        return svg.ToString();
    }

    private static void Bar(SvgDrawing svg, int y, long count, double each, string fill)
    {
        double length = count * each;
        svg.Add($"<rect x=\"{LabelWidth}\" y=\"{y}\" width=\"{length}\" height=\"16\" fill=\"{fill}\" stroke=\"#000000\"/>");
        svg.Add($"<text x=\"{LabelWidth + length + 6}\" y=\"{y + 13}\">{count.ToString("N0", CultureInfo.InvariantCulture)}</text>");
    }

    /// <summary>A name that fits beside the bars, cut at a blank where it has one. The description has it whole.</summary>
    private static string Short(string name)
    {
        if (name.Length <= LongestLabel)
        {
            return name;
        }

        int blank = name.LastIndexOf(' ', LongestLabel - 1);
        return $"{name[..(blank > 0 ? blank : LongestLabel - 2)]} …";
    }
}
