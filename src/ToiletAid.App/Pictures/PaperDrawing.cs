using ToiletAid.Core.Paper;

namespace ToiletAid.App.Pictures;

/// <summary>How a strip of sheets is folded, stage under stage.</summary>
internal static class PaperDrawing
{
    private const double MostWide = 27;

    /// <summary>Bunching a strip into a pad, for a hand that does not fold.</summary>
    /// <param name="strip">The strip.</param>
    internal static Drawing Bunch(FoldedStrip strip)
    {
        var ink = new Ink(10, new(25, 42));
        ink.Open($"data-picture=\"bunch\" data-sheets=\"{strip.Sheets}\"");
        double sheet = Math.Min(MostWide / strip.Sheets, 5), wide = strip.Sheets * sheet, middle = wide / 2;
        ink.Shape([new(0, 0), new(wide, 0), new(wide, -4), new(0, -4)], Ink.White, 2.2);
        for (double x = sheet; x < wide - 0.01; x += sheet)
        {
            ink.Line([new(x, 0), new(x, -4)], 1.5, more: " stroke-dasharray=\"2 5\"");
        }

        ink.Arrow([new(middle, -5), new(middle, -8.6)], 5);
        Spot S(double x, double y) => new(middle + x, y - 13);
        ink.Shape([S(-4.4, 1.6), S(-2.8, 3.4), S(-0.6, 2.6), S(1.4, 3.6), S(4, 2.2), S(4.6, -0.8), S(3.4, -3), S(0.8, -2.6), S(-1.6, -3.6), S(-4, -2.2)], Ink.White, 3);
        ink.Line([S(-3, 1.2), S(-0.8, 0.2), S(0.6, 1.8)], 2);
        ink.Line([S(-2, -1.8), S(0.4, -0.8), S(3, 0.4)], 2);
        ink.Close();
        return new("Bunching the paper", $"{(strip.Sheets == 1 ? "One sheet of paper is" : $"A strip of {strip.Sheets} sheets of paper is")} bunched into a pad.", ink.ToString(), ink.View);
    }

    /// <summary>Folding a strip.</summary>
    /// <param name="strip">The strip.</param>
    /// <param name="isKept">True when it is folded ahead and kept with a band.</param>
    internal static Drawing Fold(FoldedStrip strip, bool isKept)
    {
        var ink = new Ink(10, new(25, 42));
        ink.Open($"data-picture=\"fold\" data-sheets=\"{strip.Sheets}\" data-folds=\"{strip.Folds}\"");
        double row = strip.Folds switch { < 3 => 4, 3 => 2.7, _ => 1.8 }, gap = strip.Folds == 0 ? 0 : Math.Min((18.4 - row) / strip.Folds, 7.2), sheet = Math.Min(MostWide / strip.Sheets, 5);
        for (int stage = 0; stage <= strip.Folds; stage++)
        {
            double wide = strip.Sheets * sheet / (1 << stage), y = -(stage * gap);
            int edges = Math.Min(1 << stage, 4);
            for (int e = edges - 1; e >= 0; e--)
            {
                double off = e * 0.35;
                ink.Shape([new(off, y - off), new(wide + off, y - off), new(wide + off, y - row - off), new(off, y - row - off)], Ink.White, 2.2);
            }

            double perSheet = sheet;
            for (double x = perSheet; stage == 0 && x < wide - 0.01; x += perSheet)
            {
                ink.Line([new(x, y), new(x, y - row)], 1.5, more: " stroke-dasharray=\"2 5\"");
            }

            if (stage < strip.Folds)
            {
                ink.Line([new(wide / 2, y + 0.5), new(wide / 2, y - row - 0.4)], 3, more: " stroke-dasharray=\"9 5\"");
                double lift = Math.Min(2.2, gap - row - 0.4);
                ink.Arrow(Ink.Curve(new(wide - 0.4, y - 0.8), new(wide / 2, y + lift + 1.2), new(Math.Max(wide * 0.1, 0.6), y - 1)), 4);
            }
            else if (isKept)
            {
                ink.Line([new(wide / 2, y + 0.3), new(wide / 2, y - row - 0.9)], 6);
            }
        }

        ink.Close();
        string times = strip.Folds switch { 0 => "is not folded", 1 => "is folded in half once", 2 => "is folded in half twice", _ => $"is folded in half {strip.Folds} times" };
        string sheets = strip.Sheets == 1 ? "One sheet of paper" : $"A strip of {strip.Sheets} sheets of paper";
        return new("Folding the paper", $"{sheets} {times}.{(isKept ? " A small band goes round the folded piece." : string.Empty)}", ink.ToString(), ink.View);
    }
}
