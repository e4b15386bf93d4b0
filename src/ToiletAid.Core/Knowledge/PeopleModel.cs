using System.Collections.Immutable;
using ToiletAid.Core.Evidence;

namespace ToiletAid.Core.Knowledge;

/// <summary>What simulated people are like, beyond the expected shares of answers and the tables of body and hand.</summary>
public sealed record PeopleModel
{
    /// <summary>What kind of knowledge it is.</summary>
    public required Basis Basis { get; init; }

    /// <summary>Where it comes from.</summary>
    public required string Source { get; init; }

    /// <summary>Shares of people who are younger than each of the ages, rising.</summary>
    public required ImmutableArray<double> AgeShares { get; init; }

    /// <summary>Ages, years, rising.</summary>
    public required ImmutableArray<double> AgeYears { get; init; }

    /// <summary>Share of answers that nobody knows; questions of safety are always answered.</summary>
    public required double UnknownShare { get; init; }

    /// <summary>Age from which nobody has monthly bleeding, years.</summary>
    public required double MonthlyBleedingEnds { get; init; }

    /// <summary>Median of cleans a day.</summary>
    public required double CleansMedian { get; init; }

    /// <summary>Standard deviation of its logarithm.</summary>
    public required double CleansLogSpread { get; init; }

    /// <summary>Share of people who name a budget.</summary>
    public required double BudgetKnownShare { get; init; }

    /// <summary>Median budget, in the clinic's currency.</summary>
    public required double BudgetMedian { get; init; }

    /// <summary>Standard deviation of its logarithm.</summary>
    public required double BudgetLogSpread { get; init; }

    /// <summary>Shares of people who name no priority, one, two and so on; they add up to 1.</summary>
    public required ImmutableArray<double> OrderLengths { get; init; }

    /// <summary>Deviations of stiffness at which half of a joint's range is lost.</summary>
    public required double JointLossMiddle { get; init; }

    /// <summary>Age from which joints are those of older people, years.</summary>
    public required double JointsOlderFrom { get; init; }

    /// <summary>Steps in which numbers are told apart while questions are chosen, in the first unit, by question.</summary>
    public required ImmutableSortedDictionary<string, double> AskingSteps { get; init; }

    /// <summary>How far the age of people who are taken to be as old as somebody may lie from theirs, as a standard deviation, years.</summary>
    public required double AgeKernel { get; init; }

    /// <summary>How often what is said to come first did come first once everything was asked.</summary>
    public required CertaintyModel Certainty { get; init; }

    /// <summary>Answers that go with something else.</summary>
    public required ImmutableArray<AnswerModel> Answers { get; init; }
}
