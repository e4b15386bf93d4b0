namespace ToiletAid.Core.Evidence;

/// <summary>A number with its plausible range and its origin.</summary>
/// <param name="Value">Most plausible value, in the SI unit of its dimension (m, kg, N, s, m³, K above 0 °C), or a share 0 to 1.</param>
/// <param name="Low">Lower end of the plausible range, same unit; at most <paramref name="Value"/>.</param>
/// <param name="High">Upper end of the plausible range, same unit; at least <paramref name="Value"/>.</param>
/// <param name="Basis">What kind of knowledge it is.</param>
/// <param name="Source">Citation, or why it was chosen.</param>
public sealed record Sourced(double Value, double Low, double High, Basis Basis, string Source);
