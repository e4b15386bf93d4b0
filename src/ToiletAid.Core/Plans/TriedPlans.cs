using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Plans;

/// <summary>From a plan to the ids by which it is kept, and back.</summary>
public static class TriedPlans
{
    extension(TriedPlan)
    {
        /// <summary>A plan by its ids.</summary>
        public static TriedPlan Of(Plan plan)
        {
            ArgumentNullException.ThrowIfNull(plan);
            return new(plan.Aid.Id, [.. plan.AddOns.Select(a => a.Id)], plan.Companion?.Id, plan.Approach, plan.Posture, plan.Variant?.Id);
        }
    }

    /// <summary>The plan made of a catalogue; null when it has not all that it takes.</summary>
    public static Plan? In(this TriedPlan tried, AidCatalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(tried);
        ArgumentNullException.ThrowIfNull(catalogue);
        var kind = catalogue.Aids.FirstOrDefault(a => a.Id == tried.Aid);
        var variant = kind?.Variants.FirstOrDefault(v => v.Id == tried.Variant);
        var aid = tried.Variant is null ? kind : variant is null ? null : kind!.As(variant);
        var companion = catalogue.Aids.FirstOrDefault(a => a.Id == tried.Companion);
        ImmutableArray<AddOn> addOns = [.. catalogue.AddOns.Where(a => tried.AddOns.Contains(a.Id))];
        return aid is null || (tried.Companion is not null && companion is null) || addOns.Length < tried.AddOns.Length ? null
            : new() { Aid = aid, AddOns = addOns, Companion = companion, Approach = tried.Approach, Posture = tried.Posture };
    }
}
