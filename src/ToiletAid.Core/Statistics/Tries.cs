using System.Runtime.InteropServices;

namespace ToiletAid.Core.Statistics;

/// <summary>Tries with the same predicted log odds of failing.</summary>
/// <param name="LogOdds">Those log odds.</param>
/// <param name="Count">How many, 0 or more.</param>
/// <param name="Failed">How many of them failed.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Tries(double LogOdds, long Count, long Failed);
