using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Hand;

/// <summary>The reference line for controls that everybody should be able to work.</summary>
/// <remarks>2010 ADA Standards 309.4 (read): operable with one hand, no tight grasping, pinching or twisting of the wrist, at most
/// 5 pounds (22.2 N). It informs; it rules nothing out.</remarks>
public static class AccessibilityLine
{
    /// <summary>True when an operation meets the line: one hand, no fine handling, a press that palm, fist, forearm or body can give, and little force.</summary>
    /// <param name="operation">The operation.</param>
    /// <param name="coefficients">Gives the greatest force, N.</param>
    public static bool Meets(Operation operation, HandCoefficients coefficients) =>
        operation.Hands == 1
        && operation.Fine == FineHandling.None
        && (operation.AgainstTheBody || operation.Grasps.Contains(Grasp.PressWithPalmOrFist) || operation.Grasps.Contains(Grasp.PressWithForearm))
        && operation.Force.Value <= coefficients.AccessibleForce;
}
