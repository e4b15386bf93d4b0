using System.Runtime.CompilerServices;

namespace ToiletAid.Core.Reach;

/// <summary>A range in rad for each joint motion, without a heap object.</summary>
[InlineArray(Count)]
internal struct JointRanges
{
    public const int Count = (int)JointMotion.UlnarDeviation + 1;

    private double _first;

    public double this[JointMotion motion]
    {
        readonly get => this[(int)motion];
        set => this[(int)motion] = value;
    }
}
