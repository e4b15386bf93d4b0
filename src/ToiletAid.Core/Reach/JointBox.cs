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
        for (int i = 0; i < JointVector.Count; i++)
        {
            result[i] = Math.Min(Math.Max(q[i], Low[i]), High[i]);
        }

        return result;
    }

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
