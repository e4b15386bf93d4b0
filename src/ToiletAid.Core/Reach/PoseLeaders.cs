using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>The best few of the poses offered, best first; two that are nearly the same count once.</summary>
[StructLayout(LayoutKind.Auto)]
internal struct PoseLeaders
{
    private const int Count = 12;

    /// <summary>Values that differ by less may belong to one pose, m.</summary>
    private const double SameValue = 2e-3;

    /// <summary>Poses of which no joint differs by as much are one, rad.</summary>
    private const double SamePose = 0.1;

    /// <summary>The poses.</summary>
    public Places<JointVector> Poses;
    private Places<double> _values;

    /// <summary>How many there are.</summary>
    public int Held { readonly get; private set; }

    /// <summary>Value of the best, m; infinite when there is none.</summary>
    public readonly double Least => Held == 0 ? double.PositiveInfinity : _values[0];

    /// <summary>The best few.</summary>
    [UnscopedRef]
    public ReadOnlySpan<JointVector> Best(int most) => ((ReadOnlySpan<JointVector>)Poses)[..Math.Min(Held, most)];

    /// <summary>Keeps the best few of its own and takes the best few of others in behind them, whatever their values.</summary>
    public void Join(in PoseLeaders others, int each)
    {
        Held = Math.Min(Held, each);
        foreach (ref readonly JointVector pose in others.Best(each))
        {
            (_values[Held], Poses[Held]) = (double.PositiveInfinity, pose);
            Held++;
        }
    }

    /// <summary>Takes a pose in if it is among the best.</summary>
    public void Offer(double value, in JointVector pose)
    {
        for (int i = 0; i < Held; i++)
        {
            if (Math.Abs(value - _values[i]) < SameValue && IsSame(in pose, in Poses[i]))
            {
                return;
            }
        }

        if (Held == Count && value >= _values[Count - 1])
        {
            return;
        }

        Held = Math.Min(Held + 1, Count);
        int place = Held - 1;
        for (; place > 0 && _values[place - 1] > value; place--)
        {
            _values[place] = _values[place - 1];
            Poses[place] = Poses[place - 1];
        }

        _values[place] = value;
        Poses[place] = pose;
    }

    /// <summary>True for two poses that no joint tells apart.</summary>
    internal static bool IsSame(in JointVector a, in JointVector b) => Distance(in a, in b) < SamePose;

    private static double Distance(in JointVector a, in JointVector b)
    {
        double largest = 0;
        for (int i = 0; i < JointVector.Count; i++)
        {
            largest = Math.Max(largest, Math.Abs(a[i] - b[i]));
        }

        return largest;
    }

    /// <summary>Places without a heap object.</summary>
    [InlineArray(Count)]
    internal struct Places<T>
    {
        private T _first;
    }
}
