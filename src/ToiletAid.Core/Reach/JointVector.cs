using System.Runtime.CompilerServices;

namespace ToiletAid.Core.Reach;

/// <summary>Seven numbers, one for each joint variable, without a heap object: lean, bend, twist, shoulder flexion, abduction,
/// internal rotation, elbow flexion.</summary>
/// <remarks>An eighth place fills up to what the processor computes at once. It stays 0.</remarks>
[InlineArray(Places)]
internal struct JointVector
{
    public const int Count = 7;
    public const int Lean = 0;
    public const int Bend = 1;
    public const int Twist = 2;
    public const int Flexion = 3;
    public const int Abduction = 4;
    public const int Rotation = 5;
    public const int Elbow = 6;

    /// <summary>Places kept, the last one without a joint.</summary>
    internal const int Places = 8;

    private double _first;

    public JointVector(double lean, double bend, double twist, double flexion, double abduction, double rotation, double elbow)
    {
        this[Lean] = lean;
        this[Bend] = bend;
        this[Twist] = twist;
        this[Flexion] = flexion;
        this[Abduction] = abduction;
        this[Rotation] = rotation;
        this[Elbow] = elbow;
    }

    /// <summary>All places at once.</summary>
    public Eight All
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        readonly get => Unsafe.As<JointVector, Eight>(ref Unsafe.AsRef(in this));
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set => Unsafe.As<JointVector, Eight>(ref Unsafe.AsRef(in this)) = value;
    }

    /// <summary>Sum over the joints of the products, always in the same order.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Dot(in JointVector a, in JointVector b) => (a.All * b.All).Sum;

    public readonly ReachPose ToPose() => new(this[Lean], this[Bend], this[Twist], this[Flexion], this[Abduction], this[Rotation], this[Elbow]);
}
