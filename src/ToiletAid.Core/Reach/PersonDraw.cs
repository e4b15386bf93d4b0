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

    /// <summary>Share of full range behind, 0 to 1; only to put similar persons side by side.</summary>
    public double BehindFreedom;
}
