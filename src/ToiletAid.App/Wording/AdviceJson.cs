using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Wording;

/// <summary>Advice as JSON for scripts, in the shape that the README documents.</summary>
public static class AdviceJson
{
    /// <summary>Writes one result as an object.</summary>
    /// <param name="json">Where it goes.</param>
    /// <param name="person">Code of the person.</param>
    /// <param name="session">The visit that the advice rests on.</param>
    /// <param name="advice">The advice.</param>
    /// <param name="top">How many plans to give.</param>
    /// <param name="knowledge">Questions and limits.</param>
    /// <param name="brief">The brief result; whoever writes many gives the same, which keeps what it has worked out.</param>
    public static void Write(Utf8JsonWriter json, string person, Session session, Advice advice, int top, KnowledgeBase knowledge, BriefText brief)
    {
        json.WriteStartObject();
        json.WriteString("person", person);
        json.WriteString("date", IsoDay.Of(session.Date));
        ClinicText.Write(json, knowledge);
        Stop(json, advice.Stops);
        Brief(json, brief.Of(advice, session.Answers));
        json.WriteRounded("firstPlaceHolds", advice.Ranked.IsEmpty ? null : advice.Held);
        json.WriteString("aidNeeded", advice.Stops.IsEmpty ? Words.Of(advice.Need) : null);
        json.WriteStrings("arrange", advice.ToArrange);
        json.WriteStrings("conflicts", AdviceText.Conflicts(advice, knowledge));

        json.WriteStartArray("shortlist");
        foreach (var plan in advice.Ranked.Where(p => p.BeatenBy is null).Take(top))
        {
            Plan(json, plan, advice.Grip, session.Answers, knowledge);
        }

        json.WriteEndArray();
        json.WriteStartArray("ruledOut");
        foreach (var aid in advice.RuledOut)
        {
            json.WriteStartObject();
            json.WriteString("aid", aid.Aid.Id);
            json.WriteString("id", aid.Reasons[0].Rule.Id);
            json.WriteString("reason", AdviceText.Sentence(aid.Reasons[0]));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>Writes the red flags as an array, so that a script finds them in every result that they stop.</summary>
    /// <param name="json">Where it goes.</param>
    /// <param name="stops">The red flags; none gives an empty array.</param>
    public static void Stop(Utf8JsonWriter json, IEnumerable<Finding> stops)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(stops);
        json.WriteStartArray("stop");
        foreach (var stop in stops)
        {
            json.WriteStartObject();
            json.WriteString("id", stop.Rule.Id);
            json.WriteString("text", AdviceText.Sentence(stop));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Brief(Utf8JsonWriter json, IEnumerable<BriefPart> parts)
    {
        json.WriteStartArray("brief");
        foreach (var part in parts)
        {
            json.WriteStartObject();
            json.WriteString("about", part.Name);
            json.WriteString("text", part.Sentence);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Plan(Utf8JsonWriter json, RankedPlan ranked, GripDependence? grip, Answers known, KnowledgeBase knowledge)
    {
        json.WriteStartObject();
        json.WriteNumber("rank", ranked.Rank);
        var plan = ranked.Plan;
        json.WriteStartObject("plan");
        json.WriteString("aid", plan.Aid.Id);
        json.WriteStrings("addOns", plan.AddOns.Select(i => i.Id));
        json.WriteString("companion", plan.Companion?.Id);
        json.WriteString("approach", plan.Approach is { } approach ? Words.Of(approach) : null);
        json.WriteString("posture", Words.Of(plan.Posture));
        if (plan.Variant is { } variant)
        {
            json.WriteString("variant", variant.Id);
        }

        json.WriteEndObject();
        if (!ranked.AlsoFits.IsEmpty)
        {
            json.WriteStrings("alsoFits", ranked.AlsoFits.Select(a => a.Id));
        }

        json.WriteNumber("value", Rounded(ranked.Value));
        json.WriteNumber("firstOfWeightings", Rounded(ranked.FirstOfWeightings));
        json.WriteNumber("firstShare", Rounded(ranked.FirstShare));
        json.WriteNumber("usableShare", Rounded(ranked.UsableShare));
        json.WriteStartObject("criteria");
        foreach (var criterion in Enum.GetValues<Criterion>())
        {
            json.WriteNumber(Words.Of(criterion), Rounded(ranked.Criteria[(int)criterion]));
        }

        json.WriteEndObject();
        json.WriteStrings("reasons", AdviceText.Reasons(ranked));
        json.WriteStartArray("cautions");
        foreach (var caution in ranked.Cautions)
        {
            json.WriteStartObject();
            json.WriteString("id", caution.Rule.Id);
            json.WriteString("severity", Words.Of(caution.Rule.Severity));
            json.WriteString("text", AdviceText.Sentence(caution));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        GripText.Write(json, "gripDependence", ranked.Rank == 1 ? grip : null, ranked);
        Setup(json, ranked, known, knowledge);
        json.WriteEndObject();
    }

    private static void Setup(Utf8JsonWriter json, RankedPlan ranked, Answers known, KnowledgeBase knowledge)
    {
        json.WriteStartObject("setup");
        if (ranked.Demands.Need is { } need && double.IsFinite(need.MedianLength))
        {
            json.WriteNumber("neededLengthMetres", Rounded(need.MedianLength));
            json.WriteNumber("givenLengthMetres", Rounded(ranked.Demands.GivenLength));
        }

        if (ranked.Setup.Paper is { } paper)
        {
            json.WriteNumber("sheets", paper.Strip.Sheets);
            json.WriteNumber("folds", paper.Strip.Folds);
            json.WriteNumber("layers", paper.Strip.Layers);
            json.WriteNumber("rollsPerMonth", Rounded(paper.RollsPerMonth));
        }

        if (ranked.Setup.Spray is { } spray)
        {
            json.WriteNumber("refillsPerClean", spray.RefillsPerClean);
            json.WriteNumber("secondsPerClean", Rounded(spray.GentleSecondsPerClean));
        }

        if (ranked.Setup.Mix is { } mix)
        {
            json.WriteNumber("waterCelsius", Rounded(mix.Celsius));
        }

        json.WriteNumber("monthlyCost", Rounded(ranked.Setup.MonthlyCost.Total));
        json.WriteBoolean("monthlyCostIsPlaceholder", ranked.Setup.MonthlyCost.HasPlaceholder);
        json.WriteStrings("steps", new SetupText(ranked, known, knowledge).Steps());
        json.WriteEndObject();
    }

    /// <summary>Four decimals: more would be noise of the draws.</summary>
    private static double Rounded(double value) => Math.Round(value, 4);
}
