using System.Text.Json.Nodes;
using ToiletAid.App.Files;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Comparing;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Wording;

/// <summary>A comparison as JSON for scripts, in the shape that the README documents.</summary>
public static class CompareJson
{
    /// <summary>The comparison as an object.</summary>
    public static JsonObject Of(string person, Comparison comparison, IReadOnlyCollection<Trend> trends, KnowledgeBase knowledge)
    {
        JsonObject json = new() { ["person"] = person };
        if (ClinicText.Json(knowledge) is { } clinic)
        {
            json["clinic"] = clinic;
        }

        json["from"] = Visit(comparison.From, comparison.Before);
        json["to"] = Visit(comparison.To, comparison.After);
        json["changes"] = JsonText.Nodes(comparison.Differences.Select(Difference));
        json["same"] = JsonText.Texts(comparison.Same);
        json["places"] = JsonText.Nodes(comparison.Places.Select(p => new JsonObject { ["aid"] = p.Aid.Id, ["before"] = p.Before, ["now"] = p.After }));
        json["lead"] = comparison.Lead is { } lead ? Lead(lead) : null;
        json["firstIfOnlyReal"] = comparison.FirstIfOnlyReal?.Aid.Id;
        json["trends"] = JsonText.Nodes(trends.Select(Trend));
        return json;
    }

    private static JsonObject Visit(Visit visit, Advice advice) => new()
    {
        ["visit"] = visit.Number,
        ["date"] = IsoDay.Of(visit.Date),
        ["stop"] = JsonText.Texts(advice.Stops.Select(s => s.Rule.Id)),
        ["first"] = advice.Ranked.FirstOrDefault()?.Plan.Aid.Id,
    };

    private static JsonObject Difference(AnswerDifference d) => new()
    {
        ["question"] = d.Question.Id.Text,
        ["part"] = d.Part?.Id,
        ["from"] = DifferenceText.Said(d, d.From),
        ["to"] = DifferenceText.Said(d, d.To),
        ["differenceSi"] = JsonText.Rounded(d.Change, 6),
        ["limitSi"] = JsonText.Rounded(d.Limit, 6),
        ["upperLimitSi"] = JsonText.Rounded(d.UpperLimit, 6),
        ["verdict"] = Words.Of(d.Verdict),
        ["reason"] = Words.Of(d.Reason),
        ["basis"] = d.Rule is { } rule ? Words.Of(rule.Least.Basis) : null,
        ["source"] = d.Rule?.Least.Source,
    };

    private static JsonObject Lead(LeadChange lead) => new()
    {
        ["of"] = lead.One.Id,
        ["over"] = lead.Other.Id,
        ["before"] = lead.Before,
        ["now"] = lead.After,
        ["sampled"] = lead.IsSampled,
        ["shares"] = JsonText.Nodes(lead.Movers.Select(m => new JsonObject
        {
            ["questions"] = JsonText.Texts(m.Questions.Select(q => q.Text)),
            ["topic"] = m.Topic,
            ["trials"] = m.IsTrials,
            ["share"] = m.Share,
        })),
    };

    private static JsonObject Trend(Trend trend) => new()
    {
        ["question"] = trend.Question.Id.Text,
        ["part"] = trend.Part?.Id,
        ["points"] = JsonText.Nodes(trend.Points.Select(p => new JsonObject { ["date"] = IsoDay.Of(p.Visit.Date), ["value"] = p.Amount, ["unit"] = p.Unit })),
        ["verdict"] = trend.FirstToLast is { } d ? Words.Of(d.Verdict) : null,
    };
}
