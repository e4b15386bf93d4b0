using ToiletAid.Core.Evidence;
using ToiletAid.Core.Hand;

namespace ToiletAid.Core.Plans;

/// <summary>The numbers that plans are valued by for a person: here the most plausible ones.</summary>
/// <param name="evidence">Evidence.</param>
/// <param name="hand">What hands can do.</param>
/// <param name="functions">Criteria that depend neither on reach nor on the hand, with the same evidence.</param>
internal class NumberSet(EvidenceTable evidence, HandModel hand, CriterionFunctions functions)
{
    /// <summary>Evidence.</summary>
    internal EvidenceTable Evidence { get; } = evidence;

    /// <summary>What hands can do.</summary>
    internal HandModel Hand { get; } = hand;

    /// <summary>Criteria that depend neither on reach nor on the hand.</summary>
    internal CriterionFunctions Functions { get; } = functions;

    /// <summary>A plan with the numbers of its aids and add-ons as they are here.</summary>
    /// <param name="plan">The plan.</param>
    internal virtual Plan Of(Plan plan) => plan;
}
