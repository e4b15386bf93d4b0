using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>How a tried pose changes with each joint.</summary>
[StructLayout(LayoutKind.Auto)]
internal struct ReachSlopes
{
    /// <summary>Slope of the value, m/rad.</summary>
    public JointVector Value;

    /// <summary>Slope of the grip centre as the pelvis sees it, m/rad.</summary>
    public Points Grip;

    /// <summary>Slopes of the two parts of the handle's bend.</summary>
    public JointVector Tilt;

    /// <inheritdoc cref="Tilt"/>
    public JointVector Turn;

    /// <summary>Slopes of the depths above 0, m/rad, and which they are.</summary>
    public Rows Depth;

    /// <inheritdoc cref="Depth"/>
    public Numbers Which;

    /// <summary>How many depths are above 0.</summary>
    public int Count;

    /// <summary>A point's or a direction's slope with each joint.</summary>
    [InlineArray(JointVector.Count)]
    internal struct Points
    {
        private Space _first;
    }

    /// <summary>Slopes of depths.</summary>
    [InlineArray(ReachTrial.Depths.Count)]
    internal struct Rows
    {
        private JointVector _first;
    }

    /// <summary>Numbers of depths.</summary>
    [InlineArray(ReachTrial.Depths.Count)]
    internal struct Numbers
    {
        private int _first;
    }
}
