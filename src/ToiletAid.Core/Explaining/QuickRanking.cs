using ToiletAid.Core.Advising;
using ToiletAid.Core.Person;
using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Explaining;

/// <summary>The value of the best plan of each method in the middle case: a fast stand-in for the whole ranking, for searching many what-ifs.</summary>
internal sealed class QuickRanking(Advisor advisor)
{
    /// <summary>Best value by id of the method; methods that are ruled out are missing. Empty when a red flag stops everything.</summary>
    internal Dictionary<string, double> Values(Answers known)
    {
        var values = new Dictionary<string, double>(StringComparer.Ordinal);
        if (!advisor.Stops(known).IsEmpty)
        {
            return values;
        }

        var (appraiser, weights) = advisor.Appraise(known, Advisor.WhatIfDraws);
        var hands = advisor.Hands(appraiser);
        foreach (var offer in advisor.Choose(hands, weights.Set).Offered)
        {
            values[offer.Plan.Aid.KindId] = ExpectedValues.WeightedSum(hands.Values(offer.Plan, appraiser.Middle), weights.Set.Centroid);
        }

        return values;
    }

    /// <summary>The method with the highest value, or null.</summary>
    internal static string? First(Dictionary<string, double> values) => values.Count == 0 ? null
        : values.OrderByDescending(p => p.Value).ThenBy(p => p.Key, StringComparer.Ordinal).First().Key;
}
