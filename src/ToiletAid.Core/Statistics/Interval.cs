using System.Runtime.InteropServices;

namespace ToiletAid.Core.Statistics;

/// <summary>A range that holds what is estimated with a stated confidence or probability.</summary>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end; at least <paramref name="Low"/>.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Interval(double Low, double High)
{
    /// <summary>True when the value lies in it, its ends included.</summary>
    /// <param name="value">The value.</param>
    public bool Holds(double value) => value >= Low && value <= High;
}
