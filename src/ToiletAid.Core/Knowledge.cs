using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Hand;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Reach;
using ToiletAid.Core.Safety;

namespace ToiletAid.Core;

/// <summary>Everything that is known beforehand, as one value: loaded once and passed in, so that another catalogue or another limit is another value.</summary>
/// <param name="Questions">The questions.</param>
/// <param name="Catalogue">Kinds of aid and add-ons.</param>
/// <param name="Evidence">Limits and coefficients of rules and criteria.</param>
/// <param name="Rules">Words of the rules.</param>
/// <param name="Body">Body and joints.</param>
/// <param name="Hand">Norms and coefficients of the hand.</param>
public sealed record Knowledge(
    QuestionSet Questions, AidCatalogue Catalogue, EvidenceTable Evidence, RuleBook Rules, BodyTables Body, Handling Hand)
{
    /// <summary>Cost a month of a method at so many cleans a day, in the clinic's currency.</summary>
    public static double MonthlyCost(Aid aid, double cleansPerDay) =>
        (aid.Upkeep.Price.Value / (aid.Upkeep.LifeYears.Value * 12)) + aid.Upkeep.MonthlyConsumables.Value;
}
