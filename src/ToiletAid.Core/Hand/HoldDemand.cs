using System.Runtime.InteropServices;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Quantities;

namespace ToiletAid.Core.Hand;

/// <summary>What holding an aid up asks of the hand.</summary>
/// <param name="MassKilograms">Mass in the hand, with a full reservoir.</param>
/// <param name="MomentNewtonMetres">Static moment about the grip, with the aid level: the worst case.</param>
/// <param name="GripNewtons">Grip force that keeps it from sliding and from turning in the hand.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct HoldDemand(double MassKilograms, double MomentNewtonMetres, double GripNewtons)
{
    /// <summary>The demand of one aid.</summary>
    /// <param name="aid">The aid.</param>
    /// <param name="coefficients">Coefficients.</param>
    /// <remarks>Statics: the weight acts at a share of the length (half: an even rod). Fingers and palm are two faces, each holding by friction, so
    /// that the weight needs weight / (2 · friction); the moment needs a pair of forces a hand's breadth apart. Their sum, times a margin
    /// against slipping, is the grip (rule: decision).</remarks>
    public static HoldDemand Of(Aid aid, HandCoefficients coefficients)
    {
        double mass = aid.FullKilograms;
        double weight = mass * Units.StandardGravity;
        double moment = weight * coefficients.CentreOfMassShare * (aid.Length?.Value ?? 0);
        double againstSliding = weight / (2 * coefficients.HoldFriction);
        double againstTurning = moment / coefficients.HandBreadth;
        return new(mass, moment, coefficients.HoldSafety * (againstSliding + againstTurning));
    }
}
