using System.Collections.Immutable;
using System.Globalization;
using ToiletAid.App.Files;
using ToiletAid.App.Typed;
using ToiletAid.Core.Comparing;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Wording;

/// <summary>Measurements over the visits as a small SVG: one row for each, with a band in which a value does not differ for certain from the first.</summary>
/// <remarks>Nothing is told by colour alone: every point has its number, the band has a hatched edge, and the description says the same as the
/// picture.</remarks>
public static class TrendPicture
{
    private const int Width = 640;
    private const int RowHeight = 130;
    private const int Left = 40;
    private const int Right = 600;
    private const int Top = 46;
    private const int Bottom = 104;
    private const int Header = 36;

    /// <summary>Draws the trends.</summary>
    /// <param name="person">Code of the person.</param>
    /// <param name="trends">One or more.</param>
    /// <exception cref="ArgumentException">There is no trend.</exception>
    public static string Svg(string person, ImmutableArray<Trend> trends)
    {
        if (trends.IsDefaultOrEmpty)
        {
            throw new ArgumentException("without a trend there is nothing to draw", nameof(trends));
        }

        var days = trends.SelectMany(t => t.Points).Select(p => p.Visit.Date.DayNumber).ToList();
        int first = days.Min(), last = Math.Max(days.Max(), first + 1), height = Header + (RowHeight * trends.Length) + 24;
        var svg = new SvgDrawing(Width, height, $"Measurements of {person} over the visits", Description(trends));
        svg.Add($"<text x=\"{Left}\" y=\"24\" font-size=\"16\">{person}: grey is no certain difference from the first value</text>");
        for (int row = 0; row < trends.Length; row++)
        {
            Row(svg, trends[row], Header + (row * RowHeight), day => Left + ((Right - Left) * (double)(day - first) / (last - first)));
        }

        svg.Add($"<text x=\"{Left}\" y=\"{height - 8}\">{IsoDay.Of(DateOnly.FromDayNumber(first))}</text>");
        svg.Add($"<text x=\"{Right}\" y=\"{height - 8}\" text-anchor=\"end\">{IsoDay.Of(DateOnly.FromDayNumber(days.Max()))}</text>");
        return svg.ToString();
    }

    /// <summary>What the picture shows, for those who do not see it.</summary>
    public static string Description(ImmutableArray<Trend> trends) => string.Join(' ', trends.Select(TrendText.Line));

    private static void Row(SvgDrawing svg, Trend trend, int up, Func<int, double> across)
    {
        var unit = Units.Find(trend.Points[^1].Unit)!;
        double[] values = [.. trend.Points.Select(p => unit.FromSi(p.Si))];
        double? band = trend.Band is { } si ? unit.FromSi(si) - unit.FromSi(0) : null;
        double low = Math.Min(values.Min(), values[0] - (band ?? 0)), high = Math.Max(values.Max(), values[0] + (band ?? 0));
        double span = Math.Max(high - low, 1e-9);
        string Y(double value) => Number(up + Bottom - ((Bottom - Top) * (value - low) / span));
        svg.Add($"<text x=\"{Left}\" y=\"{up + 16}\">{TrendText.Name(trend)} {Spoken.Capital(unit.Name)}.</text>");
        if (band is { } b)
        {
            double height = (Bottom - Top) * 2 * b / span;
            svg.Add($"<rect x=\"{Left}\" y=\"{Y(values[0] + b)}\" width=\"{Right - Left}\" height=\"{height}\" fill=\"#e0e0e0\" stroke=\"#555555\" stroke-dasharray=\"2 4\"/>");
        }

        string way = string.Join(" L ", trend.Points.Select((p, i) => $"{Number(across(p.Visit.Date.DayNumber))} {Y(values[i])}"));
        svg.Add($"<path d=\"M {way}\" fill=\"none\" stroke=\"#000000\" stroke-width=\"2\"/>");
        for (int i = 0; i < values.Length; i++)
        {
            double x = across(trend.Points[i].Visit.Date.DayNumber);
            svg.Add($"<circle cx=\"{x}\" cy=\"{Y(values[i])}\" r=\"4\"/>");
            svg.Add($"<text x=\"{x}\" y=\"{Y(values[i])}\" dy=\"-8\" text-anchor=\"middle\">{Spoken.Number(Math.Round(values[i], 1))}</text>");
        }
    }

    private static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
