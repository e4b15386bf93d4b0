using ToiletAid.Core.Catalogue;

namespace ToiletAid.Core.Hand;

/// <summary>What an aid asks of a hand against what the hand can give.</summary>
/// <param name="Norms">Norms.</param>
/// <param name="Coefficients">Coefficients.</param>
public sealed record HandModel(HandNorms Norms, HandCoefficients Coefficients)
{
    /// <summary>How strong a hand may be.</summary>
    /// <param name="person">What is known of it.</param>
    /// <exception cref="ArgumentOutOfRangeException">Age, a force or a time is not a number in its range.</exception>
    public HandCapacity Capacity(HandFacts person) => CapacityEstimate.Of(person, Norms, Coefficients);

    /// <summary>Makes an aid ready to be scored for many strengths of one person.</summary>
    /// <param name="aid">The aid.</param>
    /// <param name="addOns">Add-ons used with it.</param>
    /// <param name="person">The person.</param>
    /// <param name="capacity">That person's capacity.</param>
    public HandlingDemands Demands(Aid aid, ReadOnlySpan<AddOn> addOns, HandFacts person, HandCapacity capacity) =>
        HandlingDemands.Of(aid, addOns, person, capacity.Slowness, Coefficients);

    /// <summary>Assesses an aid at one percentile of strength; for many percentiles use <see cref="Demands"/> once and score.</summary>
    /// <param name="aid">The aid.</param>
    /// <param name="addOns">Add-ons used with it.</param>
    /// <param name="person">The person.</param>
    /// <param name="capacity">That person's capacity.</param>
    /// <param name="u">Share of such people who are weaker, above 0 and below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="u"/> is not between 0 and 1.</exception>
    public HandlingAssessment Assess(Aid aid, ReadOnlySpan<AddOn> addOns, HandFacts person, HandCapacity capacity, double u) =>
        Demands(aid, addOns, person, capacity).Assess(capacity.At(u));
}
