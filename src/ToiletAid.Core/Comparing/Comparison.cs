using System.Collections.Immutable;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Comparing;

/// <summary>Two visits of one person side by side.</summary>
public sealed record Comparison
{
    /// <summary>The earlier visit.</summary>
    public required Visit From { get; init; }

    /// <summary>The later visit.</summary>
    public required Visit To { get; init; }

    /// <summary>What differs.</summary>
    public required ImmutableArray<AnswerDifference> Differences { get; init; }

    /// <summary>Ids of the questions that have the same answer at both visits.</summary>
    public required ImmutableArray<string> Same { get; init; }

    /// <summary>Advice at the earlier visit.</summary>
    public required Advice Before { get; init; }

    /// <summary>Advice at the later visit.</summary>
    public required Advice After { get; init; }

    /// <summary>Kinds of aid whose place is not the same; in the order of their place now.</summary>
    public required ImmutableArray<PlaceChange> Places { get; init; }

    /// <summary>How the lead changed; null when at one visit nothing is ranked, or there is no second kind to compare with.</summary>
    public LeadChange? Lead { get; init; }

    /// <summary>The plan that would be first if only the real changes were counted; null when nothing can be offered then.</summary>
    public Plan? FirstIfOnlyReal { get; init; }
}
