using ToiletAid.Core.Outcomes;
using ToiletAid.Core.Statistics;

namespace ToiletAid.App.Wording;

/// <summary>How often plans worked against how often they were said to, as SVG. Its description holds every number in words, so nothing is only to be seen.</summary>
public static class CalibrationPicture
{
    private const int Left = 90;
    private const int Top = 60;
    private const int Size = 480;
    private const int Width = 900;
    private const int Height = 620;

    /// <summary>Draws the bands of calibration.</summary>
    /// <param name="tally">What was counted.</param>
    /// <returns>An SVG document with title and description.</returns>
    public static string Svg(OutcomeTally tally)
    {
        ArgumentNullException.ThrowIfNull(tally);
        var all = tally.All;
        (double Low, double High)[] bands = [.. OutcomeText.Bands.Where(b => all.Between(b.Low, b.High).Count > 0)];
        string description = bands.Length == 0 ? "Nothing was tried." : string.Join(' ', bands.Select(b => OutcomeText.Band(all, b)));
        var svg = new SvgDrawing(Width, Height, "How often plans worked, against how often they were said to", description);
        svg.Add($"<text x=\"16\" y=\"24\">How often plans worked, against how often they were said to</text>");
        svg.Add($"<text x=\"16\" y=\"44\">On the line: as said. Below it: less often. Bars: exact 95 percent intervals.</text>");
        svg.Add($"<rect x=\"{Left}\" y=\"{Top}\" width=\"{Size}\" height=\"{Size}\" fill=\"none\" stroke=\"#000000\"/>");
        svg.Add($"<line x1=\"{X(0)}\" y1=\"{Y(0)}\" x2=\"{X(1)}\" y2=\"{Y(1)}\" stroke=\"#000000\" stroke-dasharray=\"6 4\"/>");
        for (int tick = 0; tick <= 100; tick += 20)
        {
            svg.Add($"<text x=\"{X(tick / 100.0)}\" y=\"{Top + Size + 20}\" text-anchor=\"middle\">{tick}</text>");
            svg.Add($"<text x=\"{Left - 10}\" y=\"{Y(tick / 100.0) + 5}\" text-anchor=\"end\">{tick}</text>");
        }

        svg.Add($"<text x=\"{X(0.5)}\" y=\"{Top + Size + 44}\" text-anchor=\"middle\">Said to work, of 100 people</text>");
        svg.Add($"<text x=\"24\" y=\"{Y(0.5)}\" text-anchor=\"middle\" transform=\"rotate(-90 24 {Y(0.5)})\">Worked, of 100 people</text>");
        foreach (var band in bands)
        {
            var (count, failed, works) = all.Between(band.Low, band.High);
            double said = works / count, seen = (double)(count - failed) / count;
            var interval = Shares.Exact(count - failed, count, OutcomeText.Confidence);
            svg.Add($"<line x1=\"{X(said)}\" y1=\"{Y(interval.Low)}\" x2=\"{X(said)}\" y2=\"{Y(interval.High)}\" stroke=\"#000000\" stroke-width=\"2\"/>");
            svg.Add($"<circle cx=\"{X(said)}\" cy=\"{Y(seen)}\" r=\"6\"/>");
            svg.Add($"<text x=\"{X(said) + 10}\" y=\"{Y(seen) + 5}\">{count - failed} of {count}</text>");
        }

        return svg.ToString();
    }

    private static double X(double share) => Left + (share * Size);

    private static double Y(double share) => Top + ((1 - share) * Size);
}
