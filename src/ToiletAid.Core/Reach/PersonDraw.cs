using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>One plausible person: a body, joint ranges, and how far the balance lets it lean; rad.</summary>
[StructLayout(LayoutKind.Auto)]
internal struct PersonDraw
{
    public Body Body;
    public JointRanges Ranges;
    public double LeanForward;
    public double LeanSideways;

    /// <summary>Share of full freedom in front: how much of the lean and of the parting of the thighs a hand between them gets, 0 to 1.</summary>
    public double FrontFreedom;

    /// <summary>The same person with more of every joint and of balance; an elbow at most straightens.</summary>
    /// <param name="more">How much more, rad.</param>
    public readonly PersonDraw Abler(double more)
    {
        PersonDraw abler = this;
        for (int i = 0; i < JointRanges.Count; i++)
        {
            abler.Ranges[i] += more;
        }

        abler.Ranges[JointMotion.ElbowExtensionLag] = Math.Max(Ranges[JointMotion.ElbowExtensionLag] - more, 0);
        abler.LeanForward += more;
        abler.LeanSideways += more;
        return abler;
    }
}
