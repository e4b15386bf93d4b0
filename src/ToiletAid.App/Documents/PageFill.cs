using System.Globalization;

namespace ToiletAid.App.Documents;

/// <summary>How large the drawings of a sheet may be on paper: as large as two pages of A4 or Letter hold, so that they are seen from the seat.</summary>
internal static class PageFill
{
    // Print of 18 points on Letter, the shorter paper: 33 lines of about 54 letters a page. Some room is lost where a page ends.
    private const double OnePage = 31.5;
    private const double TwoPages = 62;

    /// <summary>A row of large pictures that does not fit goes to the next page whole.</summary>
    private const double TwoPagesOfRows = 56;
    private const double Letters = 54;
    private const double LettersBesideDrawing = 36;
    private const double LettersUnderDrawing = 24;

    private static readonly double[] Heights = [8, 7, 6, 5.2, 4.6, 4.1];
    private static readonly double[] LargeHeights = [9, 8, 7, 6, 5.2, 4.5, 4];

    /// <summary>The rule for a sheet's drawings; empty for what has none.</summary>
    internal static string Style(Document document)
    {
        if (!document.LargePrint || !Drawn(document).Any())
        {
            return string.Empty;
        }

        var (isLarge, heights, two) = Sizes(document);
        double most = Of(document, heights[^1]) <= OnePage ? OnePage : two;
        double height = heights.FirstOrDefault(h => Of(document, h) <= most, heights[^1]);
        return $"{(isLarge ? "ol.seen" : "li.drawn")} svg{{height:{height.ToString("0.#", CultureInfo.InvariantCulture)}em}}\n";
    }

    /// <summary>Pages that a sheet takes with its drawings as small as they may be.</summary>
    /// <param name="document">The sheet.</param>
    /// <param name="spare">Lines that must stay free.</param>
    internal static int Pages(Document document, double spare)
    {
        var (_, heights, two) = Sizes(document);
        double lines = spare + Of(document, heights[^1]);
        return lines <= OnePage ? 1 : lines <= two ? 2 : 1 + (int)Math.Ceiling(lines / two);
    }

    private static IEnumerable<Block.Steps> Drawn(Document document) => document.Blocks.OfType<Block.Steps>().Where(s => s.Drawings.Any(d => d is not null));

    /// <summary>Whether the drawings are the large ones, the heights that they may have, and the lines of two pages.</summary>
    private static (bool IsLarge, double[] Heights, double TwoPages) Sizes(Document document) =>
        Drawn(document).Any(s => s.Large) ? (true, LargeHeights, TwoPagesOfRows) : (false, Heights, TwoPages);

    /// <summary>Lines that a sheet takes with drawings of a height.</summary>
    private static double Of(Document document, double height) => 2 + document.Blocks.Sum(b => b switch
    {
        Block.Heading => 1.7,
        Block.Paragraph p => (p.Urgent ? 1 : 0.3) + Rows(p.Text, Letters),
        Block.Points p => p.Items.Sum(i => 0.1 + Rows(i, Letters)),
        Block.Facts f => f.InRow ? 1.5 : f.Items.Length * 1.2,
        Block.Steps { Large: true } s => s.Items.Chunk(2).Sum(pair => 1 + (height / 1.18) + pair.Max(text => Rows(text, LettersUnderDrawing))),
        Block.Steps s => s.Items.Select((text, i) => s.Drawings.ElementAtOrDefault(i) is null
            ? 0.1 + Rows(text, Letters) : 0.3 + Math.Max(height / 1.18, Rows(text, LettersBesideDrawing))).Sum(),
        _ => 0,
    });

    private static double Rows(string text, double letters) => Math.Ceiling(text.Length / letters);
}
