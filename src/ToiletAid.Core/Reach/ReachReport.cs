using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>Reach of one person in all postures and approaches.</summary>
public sealed record ReachReport
{
    /// <summary>One for each posture and approach that was asked for.</summary>
    public required ImmutableArray<ReachNeed> Needs { get; init; }

    /// <summary>Answers that disagree beyond their errors.</summary>
    public required ImmutableArray<ReachContradiction> Contradictions { get; init; }

    /// <summary>How far the bare hand of the middle person reaches past its grip centre, m.</summary>
    public required double HandReach { get; init; }

    /// <summary>Lengths of the middle person.</summary>
    public required BodyLengths Body { get; init; }

    /// <summary>True when stature or mass lies outside the survey behind the estimates; the spread is then widened.</summary>
    public required bool OutsideSurvey { get; init; }

    /// <summary>Share of full shoulder range behind the body that the answers imply, 0 to 1: lower and upper end.</summary>
    public required (double Low, double High) CapabilityBehind { get; init; }

    /// <summary>Share of full arm range in front that the answers imply, 0 to 1: lower and upper end.</summary>
    public required (double Low, double High) CapabilityFront { get; init; }

    /// <summary>Seed of the draws.</summary>
    public required ulong Seed { get; init; }

    /// <summary>The need for one posture and approach.</summary>
    /// <exception cref="KeyNotFoundException">It was not asked for.</exception>
    public ReachNeed Need(Posture posture, Approach approach)
    {
        foreach (ReachNeed need in Needs)
        {
            if (need.Posture == posture && need.Approach == approach)
            {
                return need;
            }
        }

        throw new KeyNotFoundException($"no need was computed for {posture}, {approach}");
    }
}
