using System.Collections.Immutable;

namespace ToiletAid.Core.Person;

/// <summary>The plan that was tried, by ids: it stays readable when the clinic's stock changes.</summary>
/// <param name="Aid">Id of the method.</param>
/// <param name="AddOns">Ids of the add-ons.</param>
/// <param name="Companion">Id of what followed it, or null.</param>
/// <param name="Approach">Way to the skin; null where none is needed.</param>
/// <param name="Posture">Posture.</param>
/// <param name="Variant">Id of the variant of the method; null for the method as it usually is.</param>
public sealed record TriedPlan(string Aid, ImmutableArray<string> AddOns, string? Companion, Approach? Approach, Posture Posture, string? Variant = null);
