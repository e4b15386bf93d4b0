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
}
