using System.Runtime.InteropServices;
using ToiletAid.Core.Catalogue;

namespace ToiletAid.Core.Hand;

/// <summary>What add-ons do for the hand.</summary>
/// <param name="Strap">True when holding asks for no grip.</param>
/// <param name="GripShare">Share of the grip force that a built-up handle leaves, 0 to 1.</param>
/// <param name="PreparedPaper">True when paper is folded ahead.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct HandHelp(bool Strap, double GripShare, bool PreparedPaper)
{
    /// <summary>All add-ons together; of several handles the better one counts.</summary>
    public static HandHelp Of(ReadOnlySpan<AddOn> addOns)
    {
        var help = new HandHelp(false, 1, false);
        foreach (var addOn in addOns)
        {
            help = new(
                help.Strap || addOn.HoldsTheHand,
                Math.Min(help.GripShare, addOn.GripShare?.Value ?? 1),
                help.PreparedPaper || addOn.PreparesPaper);
        }

        return help;
    }
}
