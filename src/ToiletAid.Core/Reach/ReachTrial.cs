using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

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
        for (int i = 0; i < Depths.Places; i += Vector512<double>.Count)
        {
            bits |= (uint)Vector512.GreaterThan(Depth.From(i), default).ExtractMostSignificantBits() << i;
        }

        return bits;
    }

    /// <summary>Depths by pair of part and solid.</summary>
    [InlineArray(Places)]
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

        /// <summary>Places kept, the last one without a depth, so that eight at a time can be looked at.</summary>
        internal const int Places = 24;

        private double _first;

        /// <summary>Eight depths at once.</summary>
        public readonly Vector512<double> From(int first) =>
            Unsafe.As<double, Vector512<double>>(ref Unsafe.Add(ref Unsafe.AsRef(in _first), first));

        /// <summary>Sum of the squares, always in the same order.</summary>
        public readonly double Squares()
        {
            double a = 0, b = 0, c = 0, d = 0;
            for (int i = 0; i < Places; i += 4)
            {
                a += this[i] * this[i];
                b += this[i + 1] * this[i + 1];
                c += this[i + 2] * this[i + 2];
                d += this[i + 3] * this[i + 3];
            }

            return a + b + (c + d);
        }
    }
}
