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

    /// <summary>Slopes of the two parts of the handle's bend, without a unit.</summary>
    public JointVector Tilt;

    /// <inheritdoc cref="Tilt"/>
    public JointVector Turn;

    /// <summary>Slopes of the depths above 0, m/rad, and which they are; meaningless past <see cref="Count"/>.</summary>
    public Rows Depth;

    /// <inheritdoc cref="Depth"/>
    public Numbers Which;

    /// <summary>How many depths are above 0.</summary>
    public int Count;

    /// <summary>A point's or a direction's slope with each joint, coordinate by coordinate: its Jacobian, m/rad or 1/rad.</summary>
    [StructLayout(LayoutKind.Auto)]
    internal struct Points
    {
        public JointVector X;
        public JointVector Y;
        public JointVector Z;

        /// <summary>The slope with one joint.</summary>
        public Vector3D this[int joint]
        {
            [MethodImpl(MethodImplOptions.AggressiveInlining)]
            readonly get => new(X[joint], Y[joint], Z[joint]);
            [MethodImpl(MethodImplOptions.AggressiveInlining)]
            set => (X[joint], Y[joint], Z[joint]) = (value.X, value.Y, value.Z);
        }

        /// <summary>A slope with the point, carried over to the joints.</summary>
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public readonly Eight Along(Vector3D slope) => (slope.X * X.All) + (slope.Y * Y.All) + (slope.Z * Z.All);
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
