using ToiletAid.Core.Hand;

namespace ToiletAid.Core.Plans;

/// <summary>A hand and what was worked out for it; many drawn persons share one.</summary>
/// <param name="Facts">The hand.</param>
/// <param name="Capacity">How strong it may be.</param>
internal sealed record KnownHand(HandFacts Facts, HandCapacity Capacity)
{
    private readonly Dictionary<(string Aid, string AddOns), HandlingDemands> _demands = [];

    /// <summary>What an aid asks of the hand with these add-ons, worked out once.</summary>
    /// <param name="aid">The aid.</param>
    /// <param name="addOns">Add-ons that fit it.</param>
    /// <param name="coefficients">Coefficients.</param>
    internal HandlingDemands Demands(Catalogue.Aid aid, ReadOnlySpan<Catalogue.AddOn> addOns, HandCoefficients coefficients)
    {
        var key = (aid.Id, Ids(addOns));
        if (!_demands.TryGetValue(key, out var demands))
        {
            _demands[key] = demands = HandlingDemands.Of(aid, addOns, Facts, Capacity.Slowness, coefficients);
        }

        return demands;
    }

    private static string Ids(ReadOnlySpan<Catalogue.AddOn> addOns)
    {
        string ids = addOns.IsEmpty ? string.Empty : addOns[0].Id;
        for (int i = 1; i < addOns.Length; i++)
        {
            ids += "+" + addOns[i].Id;
        }

        return ids;
    }
}
