using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>A point of a sketch, m: x forward, y to the working hand, z up along the upright trunk, from the middle between the hips.</summary>
/// <param name="X">Forward.</param>
/// <param name="Y">To the working hand.</param>
/// <param name="Z">Up.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct SketchPoint(double X, double Y, double Z);
