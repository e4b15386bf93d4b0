using System.Runtime.InteropServices;

namespace ToiletAid.Core.Cost;

/// <summary>One part of what a month costs, in the clinic's currency.</summary>
/// <param name="Kind">What it is spent on.</param>
/// <param name="Value">Most plausible amount.</param>
/// <param name="Low">Lower end of the plausible range.</param>
/// <param name="High">Upper end of the plausible range.</param>
/// <param name="IsPlaceholder">True while it rests on a price that the clinic has not set.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct CostPart(CostKind Kind, double Value, double Low, double High, bool IsPlaceholder);
