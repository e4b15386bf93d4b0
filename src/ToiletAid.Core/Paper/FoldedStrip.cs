using System.Runtime.InteropServices;

namespace ToiletAid.Core.Paper;

/// <summary>A strip of sheets, folded in half lengthwise several times.</summary>
/// <param name="Sheets">Sheets in the strip.</param>
/// <param name="Folds">How often it is folded in half.</param>
/// <param name="LengthMetres">Length after folding, m.</param>
/// <param name="Layers">Sheets on top of each other.</param>
/// <param name="Plies">Plies on top of each other.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct FoldedStrip(int Sheets, int Folds, double LengthMetres, int Layers, int Plies)
{
    private const int MostSheets = 1000;
    private const int MostFolds = 10;

    /// <summary>Folds a strip: each fold halves its length and doubles its layers.</summary>
    /// <param name="sheets">Sheets, 1 to 1000.</param>
    /// <param name="folds">Folds, 0 to 10.</param>
    /// <param name="sheet">What the sheets are like.</param>
    /// <exception cref="ArgumentOutOfRangeException">Sheets or folds are out of range.</exception>
    public static FoldedStrip Of(int sheets, int folds, PaperSheet sheet)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(sheets, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(sheets, MostSheets);
        ArgumentOutOfRangeException.ThrowIfNegative(folds);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(folds, MostFolds);
        int layers = 1 << folds;
        return new(sheets, folds, sheets * sheet.LengthMetres / layers, layers, layers * sheet.Plies);
    }
}
