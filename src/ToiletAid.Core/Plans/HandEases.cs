using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.Core.Plans;

/// <summary>Which add-ons ease a step.</summary>
internal static class HandEases
{
    internal static bool By(this HandEase ease, AddOn addOn) => ease switch
    {
        HandEase.HoldsTheHand => addOn.HoldsTheHand,
        HandEase.EasesGrip => addOn.GripShare is not null,
        _ => addOn.PreparesPaper,
    };
}
