using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Comparing;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Wording;

/// <summary>A comparison as JSON for scripts, in the shape that the README documents.</summary>
public static class CompareJson
{
    /// <summary>Writes the comparison as an object.</summary>
    public static void Write(Utf8JsonWriter json, string person, Comparison comparison, IReadOnlyCollection<Trend> trends, KnowledgeBase knowledge)
    {
        json.WriteStartObject();
        json.WriteString("person", person);
        ClinicText.Write(json, knowledge);
        Visit(json, "from", comparison.From, comparison.Before);
        Visit(json, "to", comparison.To, comparison.After);
        json.WriteStartArray("changes");
        foreach (var d in comparison.Differences)
        {
            Difference(json, d);
        }

        json.WriteEndArray();
        json.WriteStrings("same", comparison.Same);
        json.WriteStartArray("places");
        foreach (var p in comparison.Places)
        {
            json.WriteStartObject();
            json.WriteString("aid", p.Aid.Id);
            Place(json, "before", p.Before);
            Place(json, "now", p.After);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Lead(json, comparison.Lead);
        json.WriteString("firstIfOnlyReal", comparison.FirstIfOnlyReal?.Aid.Id);
        json.WriteStartArray("trends");
        foreach (var trend in trends)
        {
            Trend(json, trend);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Visit(Utf8JsonWriter json, string name, Visit visit, Advice advice)
    {
        json.WriteStartObject(name);
        json.WriteNumber("visit", visit.Number);
        json.WriteString("date", IsoDay.Of(visit.Date));
        json.WriteStrings("stop", advice.Stops.Select(s => s.Rule.Id));
        json.WriteString("first", advice.Ranked.FirstOrDefault()?.Plan.Aid.Id);
        json.WriteEndObject();
    }

    private static void Difference(Utf8JsonWriter json, AnswerDifference d)
    {
        json.WriteStartObject();
        json.WriteString("question", d.Question.Id);
        json.WriteString("part", d.Part?.Id);
        json.WriteString("from", DifferenceText.Said(d, d.From));
        json.WriteString("to", DifferenceText.Said(d, d.To));
        Number(json, "differenceSi", d.Change);
        Number(json, "limitSi", d.Limit);
        Number(json, "upperLimitSi", d.UpperLimit);
        json.WriteString("verdict", Words.Of(d.Verdict));
        json.WriteString("reason", Words.Of(d.Reason));
        json.WriteString("basis", d.Rule is { } rule ? Words.Of(rule.Least.Basis) : null);
        json.WriteString("source", d.Rule?.Least.Source);
        json.WriteEndObject();
    }

    private static void Lead(Utf8JsonWriter json, LeadChange? lead)
    {
        if (lead is null)
        {
            json.WriteNull("lead");
            return;
        }

        json.WriteStartObject("lead");
        json.WriteString("of", lead.One.Id);
        json.WriteString("over", lead.Other.Id);
        json.WriteNumber("before", lead.Before);
        json.WriteNumber("now", lead.After);
        json.WriteBoolean("sampled", lead.IsSampled);
        json.WriteStartArray("shares");
        foreach (var mover in lead.Movers)
        {
            json.WriteStartObject();
            json.WriteStrings("questions", mover.Questions);
            json.WriteString("topic", mover.Topic);
            json.WriteBoolean("trials", mover.IsTrials);
            json.WriteNumber("share", mover.Share);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Trend(Utf8JsonWriter json, Trend trend)
    {
        json.WriteStartObject();
        json.WriteString("question", trend.Question.Id);
        json.WriteString("part", trend.Part?.Id);
        json.WriteStartArray("points");
        foreach (var point in trend.Points)
        {
            json.WriteStartObject();
            json.WriteString("date", IsoDay.Of(point.Visit.Date));
            json.WriteNumber("value", point.Amount);
            json.WriteString("unit", point.Unit);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("verdict", trend.FirstToLast is { } d ? Words.Of(d.Verdict) : null);
        json.WriteEndObject();
    }

    private static void Place(Utf8JsonWriter json, string name, int? place)
    {
        if (place is { } number)
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number)
        {
            json.WriteNumber(name, Math.Round(number, 6));
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
