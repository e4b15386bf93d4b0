using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Quantities;

namespace ToiletAid.Core.Paper;

/// <summary>The paper that one person needs with one aid.</summary>
public sealed record PaperNeed
{
    /// <summary>Sheets in one load and how they are folded.</summary>
    public required FoldedStrip Strip { get; init; }

    /// <summary>How that sits.</summary>
    public required PaperCover Cover { get; init; }

    /// <summary>True when it holds and protects enough for this stool; false when no strip that can be folded by hand does.</summary>
    public required bool IsEnough { get; init; }

    /// <summary>Loads for one clean.</summary>
    public required int LoadsPerClean { get; init; }

    /// <summary>Cleans a day.</summary>
    public required double CleansPerDay { get; init; }

    /// <summary>Sheets on a roll.</summary>
    public required double SheetsOnRoll { get; init; }

    /// <summary>Sheets for one clean.</summary>
    public int SheetsPerClean => Strip.Sheets * LoadsPerClean;

    /// <summary>Sheets in a month of 30.4 days.</summary>
    public double SheetsPerMonth => SheetsPerClean * CleansPerDay * Calendar.DaysInMonth;

    /// <summary>Rolls in a month.</summary>
    public double RollsPerMonth => SheetsPerMonth / SheetsOnRoll;

    /// <summary>Loads to fold ahead for a number of days, rounded up.</summary>
    /// <param name="days">Days; 0 or more.</param>
    public int ToPrepare(double days) => (int)Math.Ceiling((LoadsPerClean * CleansPerDay * days) - 1e-9);

    /// <summary>Works out the paper.</summary>
    /// <param name="use">How the aid takes its paper; its own sheets and folds are the least, as for a formed stool.</param>
    /// <param name="stoolType">Usual Bristol stool type, 1 to 7.</param>
    /// <param name="cleansPerDay">Cleans a day; 0 or more.</param>
    /// <param name="coefficients">Coefficients.</param>
    /// <exception cref="ArgumentOutOfRangeException">Stool type or cleans are out of range.</exception>
    /// <remarks>A wrapped strip is made longer until enough layers lie on top of each other; a pad or a tucked strip is folded once more with twice the
    /// sheets, so that it stays as long (common practice).</remarks>
    public static PaperNeed Of(PaperUse use, int stoolType, double cleansPerDay, PaperCoefficients coefficients)
    {
        if (!(cleansPerDay >= 0 && double.IsFinite(cleansPerDay)))
        {
            throw new ArgumentOutOfRangeException(nameof(cleansPerDay), cleansPerDay, "not 0 or more");
        }

        var stool = coefficients.For(stoolType);
        int folds = use.Folds, sheets = use.Sheets;
        while (use.Hold != PaperHold.Wrap && 1 << folds < stool.Layers && folds < coefficients.MostFolds)
        {
            folds++;
            sheets *= 2;
        }

        var strip = FoldedStrip.Of(sheets, folds, coefficients.Sheet);
        var cover = PaperCover.Of(strip, use, coefficients);
        while (!IsEnoughFor(cover, stool) && strip.Sheets < coefficients.MostSheets)
        {
            strip = FoldedStrip.Of(strip.Sheets + 1, folds, coefficients.Sheet);
            cover = PaperCover.Of(strip, use, coefficients);
        }

        return new()
        {
            Strip = strip,
            Cover = cover,
            IsEnough = IsEnoughFor(cover, stool),
            LoadsPerClean = stool.Loads,
            CleansPerDay = cleansPerDay,
            SheetsOnRoll = coefficients.SheetsOnRoll,
        };
    }

    private static bool IsEnoughFor(PaperCover cover, StoolPaper stool) => cover.Holds && cover.FaceLayers >= stool.Layers;
}
