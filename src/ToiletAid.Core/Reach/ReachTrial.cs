using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>A pose tried by the solver: its value and the parts from which the shape of the value nearby is estimated.</summary>
[StructLayout(LayoutKind.Auto)]
internal struct ReachTrial
{
    /// <summary>What the solver makes small, m.</summary>
    public double Value;

    /// <summary>Length of the way alone, m.</summary>
    public double Length;

    /// <summary>Sum of the squares of all depths, m².</summary>
    public double Pressed;

    /// <summary>Grip centre as the pelvis sees it.</summary>
    public Space Grip;

    /// <summary>Where the way first touches the skin, as the pelvis sees it.</summary>
    public Space Touch;

    /// <summary>How deep each part presses into each solid or lies outside the approach, m; 0 when free.</summary>
    public Depths Depth;

    /// <summary>How far the handle must bend, rad: tilted from the forearm, turned about it.</summary>
    public double Tilt;

    /// <inheritdoc cref="Tilt"/>
    public double Turn;

    /// <summary>Bit of the bending of the handle.</summary>
    public const uint Bends = 1u << Depths.Count;

    /// <summary>Bits of every solid against the first part; shifted by one for each further part.</summary>
    public const uint AnyOfPart = (1u << Depths.Pelvis) | (1u << Depths.Trunk) | (1u << Depths.Thighs) | (1u << (Depths.Thighs + 3))
        | (1u << Depths.Seat) | (1u << Depths.Mattress);

    /// <summary>Bits of the depths above 0; a pose very near has no others.</summary>
    public readonly uint Pressing()
    {
        uint bits = Tilt > 0 || Turn > 0 ? Bends : 0;
        for (int d = 0; d < Depths.Count; d++)
        {
            bits |= Depth[d] > 0 ? 1u << d : 0;
        }

        return bits;
    }

    /// <summary>Depths by pair of part and solid.</summary>
    [InlineArray(Count)]
    internal struct Depths
    {
        public const int Straight = 0;
        public const int Pelvis = 1;
        public const int Trunk = 4;
        public const int Thighs = 7;
        public const int Seat = 13;
        public const int PathOnSeat = 16;
        public const int Mattress = 19;
        public const int Wedge = 22;
        public const int Count = 23;

        private double _first;
    }
}
