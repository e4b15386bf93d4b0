using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Trials;

/// <summary>The plan that was tried, by ids: it stays readable when the clinic's stock changes.</summary>
/// <param name="Aid">Id of the method.</param>
/// <param name="AddOns">Ids of the add-ons.</param>
/// <param name="Companion">Id of what followed it, or null.</param>
/// <param name="Approach">Way to the skin; null where none is needed.</param>
/// <param name="Posture">Posture.</param>
public sealed record TriedPlan(string Aid, ImmutableArray<string> AddOns, string? Companion, Approach? Approach, Posture Posture)
{
    /// <summary>A plan by its ids.</summary>
    public static TriedPlan Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(plan.Aid.Id, [.. plan.AddOns.Select(a => a.Id)], plan.Companion?.Id, plan.Approach, plan.Posture);
    }

    /// <summary>The plan made of a catalogue; null when it has not all that it takes.</summary>
    public Plan? In(AidCatalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        var aid = catalogue.Aids.FirstOrDefault(a => a.Id == Aid);
        var companion = catalogue.Aids.FirstOrDefault(a => a.Id == Companion);
        ImmutableArray<AddOn> addOns = [.. catalogue.AddOns.Where(a => AddOns.Contains(a.Id))];
        return aid is null || (Companion is not null && companion is null) || addOns.Length < AddOns.Length ? null
            : new() { Aid = aid, AddOns = addOns, Companion = companion, Approach = Approach, Posture = Posture };
    }
}
