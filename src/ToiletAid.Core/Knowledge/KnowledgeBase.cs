using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Cost;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Hand;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Paper;
using ToiletAid.Core.Reach;
using ToiletAid.Core.Water;

namespace ToiletAid.Core.Knowledge;

/// <summary>Everything that is known beforehand, as one value: loaded once and passed in, so that another catalogue or another limit is another value.</summary>
public sealed record KnowledgeBase
{
    /// <summary>The questions.</summary>
    public required QuestionSet Questions { get; init; }

    /// <summary>Kinds of aid and add-ons.</summary>
    public required AidCatalogue Catalogue { get; init; }

    /// <summary>Limits and coefficients of rules and criteria.</summary>
    public required EvidenceTable Evidence { get; init; }

    /// <summary>Words of the rules.</summary>
    public required RuleBook Rules { get; init; }

    /// <summary>Body and joints.</summary>
    public required BodyTables Body { get; init; }

    /// <summary>Norms and coefficients of the hand.</summary>
    public required HandModel Hand { get; init; }

    /// <summary>Sheets, rolls and stool.</summary>
    public required PaperCoefficients Paper { get; init; }

    /// <summary>Temperatures and burns.</summary>
    public required WaterCoefficients Water { get; init; }

    /// <summary>How far two measurements must lie apart before the difference is more than measuring error.</summary>
    public required ImmutableArray<DetectableChange> Changes { get; init; }

    /// <summary>What trials of a plan can find, and what it counts for.</summary>
    public required TrialKnowledge Trials { get; init; }

    /// <summary>What people who are assessed are like.</summary>
    public required PeopleModel People { get; init; }

    /// <summary>Prices of what is used up.</summary>
    public required Prices Prices { get; init; }

    /// <summary>What a clinic learnt from its own trials; null for the built-in values alone.</summary>
    public ClinicCoefficients? Clinic { get; init; }
}
