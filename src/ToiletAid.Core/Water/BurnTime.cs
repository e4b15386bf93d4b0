using System.Runtime.InteropServices;

namespace ToiletAid.Core.Water;

/// <summary>How long water takes to burn adult skin that can be felt; frail or numb skin burns sooner.</summary>
/// <param name="Bound">How the time is meant.</param>
/// <param name="Seconds">Time, s.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct BurnTime(BurnBound Bound, double Seconds);
