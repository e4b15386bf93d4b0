using System.Collections.Immutable;

namespace ToiletAid.Core.Hand;

/// <summary>How one hand copes with a whole aid, with every operation.</summary>
/// <param name="Operations">Each operation, in the order of use; empty when the hand has nothing to do.</param>
/// <param name="Score">The whole in short.</param>
/// <param name="Hold">What holding the aid up asks for.</param>
/// <param name="ReleaseIsAccessible">True when letting go meets the reference line for one-handed controls; null when there is no release.</param>
/// <param name="Seconds">How long the hand works in one clean, s.</param>
public sealed record HandlingAssessment(
    ImmutableArray<OperationHandling> Operations, HandlingScore Score, HoldDemand Hold, bool? ReleaseIsAccessible, double Seconds)
{
    /// <summary>True when every operation can be done.</summary>
    public bool Possible => Score.Possible;

    /// <summary>Value of the hardest operation, 0 to 1.</summary>
    public double Value => Score.Value;

    /// <summary>The hardest operation; null when there is none.</summary>
    public OperationHandling? Limiting => Operations.FirstOrDefault(o => o.Kind == Score.Limiting);
}
