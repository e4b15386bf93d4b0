using System.Runtime.InteropServices;
using ToiletAid.Core.Catalogue;

namespace ToiletAid.Core.Hand;

/// <summary>How one hand copes with a whole aid, in short.</summary>
/// <param name="Possible">True when every operation is.</param>
/// <param name="Value">Value of the hardest operation: 1 no effort, 0 not possible.</param>
/// <param name="FailureChance">Chance that at least one operation fails in one clean.</param>
/// <param name="Limiting">The hardest operation; null when there is none.</param>
/// <param name="Obstacle">What stands in its way, if anything.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct HandlingScore(
    bool Possible, double Value, double FailureChance, OperationKind? Limiting, HandlingObstacle Obstacle);
