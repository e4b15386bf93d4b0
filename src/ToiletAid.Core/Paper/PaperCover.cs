using System.Runtime.InteropServices;
using ToiletAid.Core.Catalogue;

namespace ToiletAid.Core.Paper;

/// <summary>How a folded strip sits on a head, or lies in hand or jaws.</summary>
/// <param name="Wraps">Times that it goes round the head; null for a pad.</param>
/// <param name="Coverage">Share of the head, or of the pad that is needed, that is covered; 0 to 1.</param>
/// <param name="FaceLayers">Sheets between stool and head everywhere on the wiping face.</param>
/// <param name="Holds">True when it should hold by itself; to be tested with a firm pull before use all the same.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct PaperCover(double? Wraps, double Coverage, int FaceLayers, bool Holds)
{
    // A strip that is exactly long enough counts as long enough, whatever the last bit says.
    private const double Rounding = 1e-9;

    /// <summary>Puts a strip on.</summary>
    /// <param name="strip">The strip.</param>
    /// <param name="use">How the aid takes its paper.</param>
    /// <param name="coefficients">Coefficients.</param>
    public static PaperCover Of(FoldedStrip strip, PaperUse use, PaperCoefficients coefficients)
    {
        if (use.Hold == PaperHold.Pad || use.HeadGirth is not { Value: > 0 } girth)
        {
            double pad = Share(strip.LengthMetres / coefficients.PadMetres);
            return new(null, pad, pad < 1 ? 0 : strip.Layers, pad >= 1);
        }

        double wraps = strip.LengthMetres / girth.Value;
        double coverage = Share(wraps);
        if (use.Hold == PaperHold.Tuck)
        {
            bool tucked = strip.LengthMetres + Rounding >= girth.Value + (2 * coefficients.TuckMetres);
            return new(wraps, coverage, coverage < 1 ? 0 : strip.Layers, tucked);
        }

        int whole = (int)Math.Floor(wraps + Rounding);
        return new(wraps, coverage, whole * strip.Layers, wraps + Rounding >= coefficients.WrapsToHold);
    }

    private static double Share(double ratio) => ratio + Rounding >= 1 ? 1 : ratio;
}
