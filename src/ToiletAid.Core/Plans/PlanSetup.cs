using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Cost;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Paper;
using ToiletAid.Core.Water;

namespace ToiletAid.Core.Plans;

/// <summary>What has to be got ready for a plan, in numbers.</summary>
/// <param name="Paper">Paper of the first method; null when it takes none.</param>
/// <param name="CompanionPaper">Paper of the companion; null when there is none.</param>
/// <param name="Spray">Water of the method that washes; null when none does.</param>
/// <param name="Mix">How to mix warm water; null when the user does not choose how warm it is.</param>
/// <param name="MonthlyCost">Cost a month of everything.</param>
public sealed record PlanSetup(PaperNeed? Paper, PaperNeed? CompanionPaper, SprayTime? Spray, WaterMix? Mix, MonthlyCost MonthlyCost)
{
    /// <summary>The set-up of a plan.</summary>
    /// <param name="knowledge">Coefficients and prices.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="stoolType">Usual Bristol stool type, 1 to 7.</param>
    /// <param name="cleansPerDay">Cleans a day; 0 or more.</param>
    /// <param name="burnsSooner">True when the skin that is washed is old, or it is felt poorly or not known to be felt.</param>
    /// <exception cref="ArgumentOutOfRangeException">Stool type or cleans are out of range.</exception>
    public static PlanSetup Of(KnowledgeBase knowledge, Plan plan, int stoolType, double cleansPerDay, bool burnsSooner)
    {
        var cost = Cost(knowledge, plan.Aid, plan.AddOns, stoolType, cleansPerDay);
        if (plan.Companion is { } companion)
        {
            cost += Cost(knowledge, companion, [], stoolType, cleansPerDay);
        }

        return new(
            Need(knowledge, plan.Aid, stoolType, cleansPerDay),
            plan.Companion is { } c ? Need(knowledge, c, stoolType, cleansPerDay) : null,
            plan.Washing is { } washing ? SprayTime.Of(washing) : null,
            Warm(knowledge, plan.Washing, burnsSooner),
            cost);
    }

    internal static MonthlyCost Cost(KnowledgeBase knowledge, Aid aid, ImmutableArray<AddOn> addOns, int stoolType, double cleansPerDay) =>
        Core.Cost.MonthlyCost.Of(aid, addOns.AsSpan(), MonthlyUse.Of(aid, Need(knowledge, aid, stoolType, cleansPerDay), cleansPerDay), knowledge.Prices);

    private static PaperNeed? Need(KnowledgeBase knowledge, Aid aid, int stoolType, double cleansPerDay) =>
        aid.Paper is { } use ? PaperNeed.Of(use, stoolType, cleansPerDay, knowledge.Paper) : null;

    private static WaterMix? Warm(KnowledgeBase knowledge, Aid? aid, bool burnsSooner)
    {
        if (aid?.Water is not { CanBeWarm: true, LimitsTemperature: false } water)
        {
            return null;
        }

        double limit = knowledge.Water.LimitCelsius(burnsSooner);
        return WaterMix.Of(
            Math.Min(knowledge.Water.UsualTargetCelsius, limit), limit, knowledge.Water.HotSupplyCelsius, knowledge.Water.ColdSupplyCelsius,
            water.Reservoir?.Value ?? water.PerClean.Value);
    }
}
