using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Hand;

namespace ToiletAid.Core.Plans;

/// <summary>A hand and what was worked out for it; many drawn persons share one.</summary>
/// <param name="Facts">The hand.</param>
/// <param name="Capacity">How strong it may be.</param>
internal sealed record KnownHand(HandFacts Facts, HandCapacity Capacity)
{
    private readonly Dictionary<(Aid Aid, ImmutableArray<AddOn> AddOns), HandlingDemands> _demands = new(new SameIds());

    /// <summary>What an aid asks of the hand with the add-ons of a plan, worked out once for each set of them: plans that differ only in
    /// posture, approach or companion share theirs.</summary>
    /// <param name="aid">The aid.</param>
    /// <param name="addOns">Add-ons of the plan; only those that fit this aid help with it: a cuff on the washer does nothing for the paper.</param>
    /// <param name="coefficients">Coefficients.</param>
    internal HandlingDemands Demands(Aid aid, ImmutableArray<AddOn> addOns, HandCoefficients coefficients)
    {
        var key = (aid, addOns);
        if (!_demands.TryGetValue(key, out var demands))
        {
            AddOn[] fitting = [.. addOns.Where(a => a.OnlyHelps && aid.AddOns.Contains(a.Id))];
            _demands[key] = demands = HandlingDemands.Of(aid, fitting, Facts, Capacity.Slowness, coefficients);
        }

        return demands;
    }

    private sealed class SameIds : IEqualityComparer<(Aid Aid, ImmutableArray<AddOn> AddOns)>
    {
        public bool Equals((Aid Aid, ImmutableArray<AddOn> AddOns) x, (Aid Aid, ImmutableArray<AddOn> AddOns) y)
        {
            bool same = x.Aid.Key == y.Aid.Key && x.AddOns.Length == y.AddOns.Length;
            for (int i = 0; same && i < x.AddOns.Length; i++)
            {
                same = x.AddOns[i].Id == y.AddOns[i].Id;
            }

            return same;
        }

        public int GetHashCode((Aid Aid, ImmutableArray<AddOn> AddOns) of)
        {
            // A few dozen sets of a few aids: how long their ids are and how they begin tells most of them apart, in a fraction of the time.
            int hash = Rough(of.Aid.Key);
            foreach (var addOn in of.AddOns)
            {
                hash = (hash * 31) + Rough(addOn.Id);
            }

            return hash;

            static int Rough(string id) => id.Length == 0 ? 0 : (id.Length << 16) + (id[0] << 8) + id[^1];
        }
    }
}
