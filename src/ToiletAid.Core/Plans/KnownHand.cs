using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Hand;

namespace ToiletAid.Core.Plans;

/// <summary>A hand and what was worked out for it; many drawn persons share one.</summary>
/// <param name="Facts">The hand.</param>
/// <param name="Capacity">How strong it may be.</param>
internal sealed record KnownHand(HandFacts Facts, HandCapacity Capacity)
{
    private readonly Dictionary<Tools, HandlingDemands> _demands = [];

    /// <summary>The same hand with another grip: what an aid asks of it depends on how slow it is, and not on how strong.</summary>
    /// <param name="facts">The hand.</param>
    /// <param name="capacity">How strong it may be.</param>
    /// <param name="butForGrip">The same hand with another grip; null where there is none.</param>
    internal KnownHand(HandFacts facts, HandCapacity capacity, KnownHand? butForGrip)
        : this(facts, capacity) => _demands = butForGrip is not null && butForGrip.Capacity.Slowness.Equals(capacity.Slowness) ? butForGrip._demands : _demands;

    /// <summary>What an aid asks of the hand with the add-ons of a plan, worked out once for each set of them: plans that differ only in
    /// posture, approach or companion share theirs.</summary>
    /// <param name="aid">The aid.</param>
    /// <param name="addOns">Add-ons of the plan; only those that fit this aid help with it: a cuff on the washer does nothing for the paper.</param>
    /// <param name="coefficients">Coefficients.</param>
    internal HandlingDemands Demands(Aid aid, ImmutableArray<AddOn> addOns, HandCoefficients coefficients)
    {
        var key = new Tools(aid, null, addOns);
        if (!_demands.TryGetValue(key, out var demands))
        {
            AddOn[] fitting = [.. addOns.Where(a => a.OnlyHelps && aid.AddOns.Contains(a.Id))];
            _demands[key] = demands = HandlingDemands.Of(aid, fitting, Facts, Capacity.Slowness, coefficients);
        }

        return demands;
    }
}
