using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>A descent to be made: who, from where, how far; and, when it is done, where it ended.</summary>
[StructLayout(LayoutKind.Auto)]
internal struct Descent
{
    /// <summary>Number of the person.</summary>
    public int Person;

    /// <summary>Start, and end when it is done.</summary>
    public JointVector Pose;

    /// <summary>Value at the end, m.</summary>
    public double Value;
}
