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

    /// <summary>Where trunk and arm are.</summary>
    public Arm Arm;

    /// <summary>Grip centre as the pelvis sees it.</summary>
    public Vector3D Grip;

    /// <summary>Where the way first touches the skin, as the pelvis sees it.</summary>
    public Vector3D Touch;

    /// <summary>How deep each part presses into each solid or lies outside the approach, m; 0 when free.</summary>
    public Depths Depth;

    /// <summary>How far the handle must bend, rad: tilted from the forearm, turned about it.</summary>
    public double Tilt;

    /// <inheritdoc cref="Tilt"/>
    public double Turn;

    /// <summary>Bit of the bending of the handle.</summary>
    public const uint Bends = 1u << Depths.Count;

    /// <summary>Bits of the depths above 0, and <see cref="Bends"/> where the handle must bend: only these have slopes.</summary>
    public readonly uint Pressing()
    {
        uint bits = Tilt > 0 || Turn > 0 ? Bends : 0;
        for (int i = 0; i < Depths.Places; i += Eight.Count)
        {
            bits |= Eight.Above(Depth.From(i), default) << i;
        }

        return bits;
    }

    /// <summary>Depths by pair of part and solid. Where a solid has three places, they are for hand, middle of the forearm and elbow.</summary>
    [InlineArray(Places)]
    internal struct Depths
    {
        /// <summary>A straight aid in the pelvis.</summary>
        public const int Straight = 0;
        public const int Pelvis = 1;
        public const int Trunk = 4;

        /// <summary>Thigh of the working side.</summary>
        public const int Thigh = 7;
        public const int OtherThigh = 10;
        public const int Seat = 13;

        /// <summary>Three points of an aid along the skin, in the seat.</summary>
        public const int PathOnSeat = 16;
        public const int Mattress = 19;

        /// <summary>The grip outside the sector of the approach.</summary>
        public const int Wedge = 22;

        /// <summary>The trunk past the envelope of lean, bend and twist, as far as that would carry the shoulder.</summary>
        public const int Envelope = 23;
        public const int Count = 24;

        /// <summary>Places kept, so that eight at a time can be looked at.</summary>
        internal const int Places = 24;

        private double _first;

        /// <summary>Eight depths at once.</summary>
        public readonly Eight From(int first) =>
            Unsafe.As<double, Eight>(ref Unsafe.Add(ref Unsafe.AsRef(in _first), first));

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
