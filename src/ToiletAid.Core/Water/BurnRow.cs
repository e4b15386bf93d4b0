using System.Runtime.InteropServices;

namespace ToiletAid.Core.Water;

/// <summary>One row of a burn table.</summary>
/// <param name="Celsius">Temperature, °C.</param>
/// <param name="Seconds">Time to a partial-thickness burn, s; above 0.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct BurnRow(double Celsius, double Seconds);
