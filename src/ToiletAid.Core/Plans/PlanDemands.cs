using ToiletAid.Core.Hand;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Plans;

/// <summary>What a plan asks of the person, in the middle case.</summary>
public sealed record PlanDemands
{
    /// <summary>How long the plan must be in its posture and approach; null where nothing must be reached.</summary>
    public ReachNeed? Need { get; init; }

    /// <summary>Length that the plan gives, m: that of the method least likely to be long enough, the cleaning method where both are as likely, with the jet where there is one, with the bare hand's own reach for the hand; +infinity where nothing must be reached.</summary>
    public double GivenLength { get; init; } = double.PositiveInfinity;

    /// <summary>True when it is the bare hand that must reach.</summary>
    public bool ByBareHand { get; init; }

    /// <summary>True when it is the bare hand that must reach, and it was seen to stop short of the skin.</summary>
    public bool SeenShort { get; init; }

    /// <summary>Probability that the plan is long enough, 0 to 1.</summary>
    public double ReachShare { get; init; } = 1;

    /// <summary>What the first method asks of the hand; null when another person does it.</summary>
    public HandlingAssessment? Handling { get; init; }

    /// <summary>What the companion asks of the hand; null where there is none.</summary>
    public HandlingAssessment? CompanionHandling { get; init; }

    /// <summary>True when the build lies outside the body survey.</summary>
    public bool OutsideSurvey { get; init; }

    /// <summary>The operation that goes worst, of both methods; null where the hand does nothing.</summary>
    public OperationHandling? Hardest =>
        CompanionHandling?.Limiting is { } c && (Handling?.Limiting is not { } h || c.Value < h.Value) ? c : Handling?.Limiting;
}
