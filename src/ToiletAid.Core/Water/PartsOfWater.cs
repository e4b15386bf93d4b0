using System.Runtime.InteropServices;

namespace ToiletAid.Core.Water;

/// <summary>Water in whole parts.</summary>
/// <param name="Hot">Parts of hot water.</param>
/// <param name="Cold">Parts of cold water.</param>
/// <param name="Celsius">Temperature of the mixture, °C.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct PartsOfWater(int Hot, int Cold, double Celsius);
