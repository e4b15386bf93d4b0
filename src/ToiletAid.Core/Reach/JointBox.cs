using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>Lower and upper limit of each joint variable, rad.</summary>
[StructLayout(LayoutKind.Auto)]
internal struct JointBox
{
    public JointVector Low;
    public JointVector High;

    /// <summary>The nearest point inside.</summary>
    public readonly JointVector Clamp(in JointVector q)
    {
        JointVector result = default;
        result.All = Clamp(q.All);

        return result;
    }

    /// <summary>The point inside that a pose of floats stands for: at a limit where it is at the float next to that.</summary>
    public readonly JointVector FromFloats(in JointVector q)
    {
        JointVector result = default;
        for (int i = 0; i < JointVector.Count; i++)
        {
            float angle = (float)q[i];
            result[i] = angle <= (float)Low[i] ? Low[i] : (angle >= (float)High[i] ? High[i] : angle);
        }

        return result;
    }

    /// <inheritdoc cref="Clamp(in JointVector)"/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Eight Clamp(Eight q) => Eight.Clamp(q, Low.All, High.All);

    /// <summary>The point at shares 0 to 1 of each range.</summary>
    public readonly JointVector At(in JointVector share)
    {
        JointVector result = default;
        for (int i = 0; i < JointVector.Count; i++)
        {
            result[i] = Low[i] + (share[i] * (High[i] - Low[i]));
        }

        return result;
    }
}
