using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Advising;

/// <summary>A plan of the shortlist.</summary>
public sealed record RankedPlan
{
    /// <summary>Place, from 1.</summary>
    public required int Rank { get; init; }

    /// <summary>The plan.</summary>
    public required Plan Plan { get; init; }

    /// <summary>What rules the kind out as it usually is, the plainest first, where it is possible in this variant only; empty otherwise.</summary>
    public required ImmutableArray<Finding> Otherwise { get; init; }

    /// <summary>Other articles of the kind in the clinic's stock with which a plan is allowed, the best first.</summary>
    public required ImmutableArray<Aid> AlsoFits { get; init; }

    /// <summary>Expected value, 0 to 1.</summary>
    public required double Value { get; init; }

    /// <summary>Expected values by criterion, in the order of the criteria.</summary>
    public required ImmutableArray<double> Criteria { get; init; }

    /// <summary>Share of the weightings that the priorities allow for which its expected value is the highest, 0 to 1.</summary>
    public required double FirstOfWeightings { get; init; }

    /// <summary>Share of weightings and persons for which it is first, 0 to 1: its first-rank acceptability.</summary>
    public required double FirstShare { get; init; }

    /// <summary>Share of weightings and persons for which it has each place; they add up to 1.</summary>
    public required ImmutableArray<double> RankShares { get; init; }

    /// <summary>Share of persons for which it is first when the weights are those that favour it; null when it is never first.</summary>
    public required double? Confidence { get; init; }

    /// <summary>Mean of the weights for which it is first; null when it is never first.</summary>
    public required ImmutableArray<double>? CentralWeights { get; init; }

    /// <summary>The best-placed plan that beats it whatever the weights; null when there is none, or when it is first for somebody. Such plans stand last.</summary>
    public required Plan? BeatenBy { get; init; }

    /// <summary>What it asks for in the middle case.</summary>
    public required PlanDemands Demands { get; init; }

    /// <summary>True where the own hand takes up paper and gets to the skin in this posture, so that it can pat what the plan leaves wet.</summary>
    public required bool HandPats { get; init; }

    /// <summary>True where no carer is ever there.</summary>
    public required bool IsAlone { get; init; }

    /// <summary>False where the hand cannot fold paper or the steps of folding are lost; true also where that is not known.</summary>
    public required bool FoldsPaper { get; init; }

    /// <summary>True where the grasp is enough to hold on to something fixed, or is not known.</summary>
    public required bool HandHolds { get; init; }

    /// <summary>Share of the persons who would give these answers that can use it at all, 0 to 1: the others lack the strength, or an answer
    /// that is not known yet would rule it out.</summary>
    public required double UsableShare { get; init; }

    /// <summary>The same for the plan it is compared with; 1 when it is alone.</summary>
    public required double OtherUsableShare { get; init; }

    /// <summary>What has to be got ready.</summary>
    public required PlanSetup Setup { get; init; }

    /// <summary>What carries its lead over the plan behind it, or its distance to the plan ahead; greatest contribution first.</summary>
    public required ImmutableArray<Reason> Reasons { get; init; }

    /// <summary>The plan it is compared with in <see cref="Reasons"/>; null when it is alone.</summary>
    public required Plan? ComparedWith { get; init; }

    /// <summary>True when the plan that it is compared with stands behind it.</summary>
    public required bool IsAhead { get; init; }

    /// <summary>Trials of its method, oldest first.</summary>
    public required ImmutableArray<PastTrial> Tried { get; init; }

    /// <summary>Warnings, most serious first.</summary>
    public required ImmutableArray<Finding> Cautions { get; init; }

    /// <summary>Questions without whose answers a rule about this plan cannot tell.</summary>
    public required ImmutableArray<QuestionId> Unsettled { get; init; }
}
