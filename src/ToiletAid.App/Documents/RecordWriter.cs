using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Person;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Documents;

/// <summary>One visit as a FHIR R4 bundle for the record system. What it proposes is marked as a draft and a proposal; nothing is ordered.</summary>
/// <param name="json">Where it is written.</param>
/// <param name="about">The visit.</param>
public sealed class RecordWriter(Utf8JsonWriter json, Case about)
{
    private const string Language = "en-GB";

    /// <summary>Toileting hygiene, performance and goal, item GG0130C: codes as in the MDS 3.0 questionnaire in HL7/fhir-pacio-pfe at 43c8d4a.</summary>
    internal const string PerformanceCode = "83228-7";
    internal const string PerformanceDisplay = "Toileting hygiene - functional ability during 3 day assessment period [CMS]";
    private const string GoalCode = "83227-9";

    private readonly RecordIds _ids = new(about.Person, about.Session.Date);
    private readonly RecordQuestions _questions = new(json, about);
    private readonly RecordTrials _trials = new(json, about);
    private readonly DocumentData _words = about.Words;

    /// <summary>Writes the bundle.</summary>
    public void Write()
    {
        json.WriteStartObject();
        json.WriteString("resourceType", "Bundle");
        json.WriteString("id", _ids.Of("bundle"));
        json.WriteString("language", Language);
        json.WriteString("type", "collection");
        json.WriteStartArray("entry");
        _questions.Questionnaire();
        _questions.Response(_ids.Of("answers"));
        Measured();
        foreach (var stop in about.Advice.Stops)
        {
            StartObservation("stop/" + stop.Rule.Id, "Red flag");
            json.WriteString("valueString", AdviceText.Sentence(stop));
            EndObservation();
        }

        Notes();
        Performance();
        _trials.Write();
        if (about.Advice.Stops.IsEmpty && about.Chosen is { } chosen)
        {
            Demands(chosen);
            Proposal(chosen);
            Goal();
            CarePlan();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private void Measured()
    {
        foreach (var question in about.Knowledge.Questions.All)
        {
            switch (about.Session.Answers[question.Id]?.Value)
            {
                case AnswerValue.Number number when UcumCodes.Of(number.Unit) is not null:
                    StartObservation("answer/" + question.Id, _words.Labels[question.Id], question.Id);
                    json.Quantity("valueQuantity", number.Amount, number.Unit, Units.Find(number.Unit)!.Name);
                    EndObservation();
                    break;
                case AnswerValue.Parts { Amounts.IsEmpty: false } parts:
                    StartObservation("answer/" + question.Id, _words.Labels[question.Id], question.Id);
                    json.WriteStartArray("component");
                    foreach (var part in question.Parts.Where(p => parts.Amounts.ContainsKey(p.Id)))
                    {
                        Component(part.Label, parts.Amounts[part.Id], parts.Unit);
                    }

                    json.WriteEndArray();
                    EndObservation();
                    break;
            }
        }
    }

    /// <summary>The words of the therapist stand as they were typed, each note with its day. They rest on no answer.</summary>
    private void Notes()
    {
        for (int i = 0; i < about.Notes.Length; i++)
        {
            json.StartResource("Observation", _ids.Of($"note/{i + 1}"), Language);
            json.WriteString("status", "final");
            json.WriteStartObject("code");
            json.Concept("Note of the therapist", (FhirJson.Icf, "d530", "Toileting"));
            json.WriteEndObject();
            json.Subject(about.Person);
            json.WriteString("effectiveDateTime", IsoDay.Of(about.Notes[i].Date));
            json.WriteString("valueString", string.Join('\n', about.Notes[i].Lines));
            json.EndResource();
        }
    }

    private void Demands(RankedPlan chosen)
    {
        if (chosen.Demands.Need is { } need && double.IsFinite(need.MedianLength) && !chosen.Demands.ByBareHand)
        {
            StartObservation("needed-length", "Length that an aid needs, computed");
            json.Quantity("valueQuantity", need.MedianLength * 100, "cm", "centimetres");
            json.WriteStartArray("component");
            Component("10 of 100 people like this need no more", need.LowLength * 100, "cm");
            if (double.IsFinite(need.HighLength))
            {
                Component("90 of 100 people like this need no more", need.HighLength * 100, "cm");
            }

            json.WriteEndArray();
            EndObservation();
        }

        if (chosen.Demands.Hardest is { DemandNewtons: > 0 } hardest && double.IsFinite(hardest.ShareOfAcceptable))
        {
            StartObservation("force", $"Force of the hardest step for the hand, computed: {SlotText.Operation(ToiletAid.Core.Person.Words.Of(hardest.Kind)).ToLowerInvariant()}");
            json.Quantity("valueQuantity", hardest.DemandNewtons, "N", "newtons");
            json.WriteStartArray("component");
            Component("Share of what the hand can comfortably give", hardest.ShareOfAcceptable, "share");
            json.WriteEndArray();
            EndObservation();
        }
    }

    /// <summary>The level is for the therapist to score; where no trial noted it, it stands as not asked.</summary>
    private void Performance()
    {
        if (_trials.HasLevel)
        {
            return;
        }

        StartObservation("performance", "Toileting hygiene", coding: (FhirJson.Loinc, PerformanceCode, PerformanceDisplay));
        json.WriteStartObject("dataAbsentReason");
        json.Concept("Not asked", (FhirJson.Absent, "not-asked", "Not Asked"));
        json.WriteEndObject();
        EndObservation();
    }

    private void Proposal(RankedPlan chosen)
    {
        json.StartResource("DeviceRequest", _ids.Of("proposal"), Language);
        json.WriteString("status", "draft");
        json.WriteString("intent", "proposal");
        json.WriteStartObject("codeCodeableConcept");
        json.Concept(PlanText.Name(chosen.Plan), (FhirJson.Ours, "aid." + chosen.Plan.Aid.Id, chosen.Plan.Aid.Name));
        json.WriteEndObject();
        json.Subject(about.Person);
        json.WriteString("authoredOn", IsoDay.Of(about.Session.Date));
        json.WriteStartArray("reasonCode");
        json.WriteStartObject();
        json.Concept("Toileting", (FhirJson.Icf, "d530", "Toileting"));
        json.WriteEndObject();
        json.WriteEndArray();
        json.References("supportingInfo", _ids.Of("answers"));
        json.Notes(
        [
            AdviceText.HowSure(chosen),
            .. AdviceText.Reasons(chosen),
            .. chosen.Cautions.Select(c => $"{_words.Text("note.severity." + ToiletAid.Core.Person.Words.Of(c.Rule.Severity))} caution. {AdviceText.Sentence(c)}"),
            _words.Text("note.placeholders"),
            about.Made,
            AdviceText.Limits,
        ]);
        json.EndResource();
    }

    private void Goal()
    {
        json.StartResource("Goal", _ids.Of("goal"), Language);
        json.WriteString("lifecycleStatus", "proposed");
        json.WriteStartObject("description");
        json.Concept(_words.Text("note.goal.text"));
        json.WriteEndObject();
        json.Subject(about.Person);
        json.WriteStartArray("target");
        json.WriteStartObject();
        json.WriteStartObject("measure");
        json.Concept("Toileting hygiene", (FhirJson.Loinc, GoalCode, "Toileting hygiene - functional goal recorded during 3 day assessment period"));
        json.WriteEndObject();
        _trials.GoalLevel();
        json.WriteString("dueDate", IsoDay.Of(about.Session.Date.AddDays(NoteDocument.ReviewDays)));
        json.WriteEndObject();
        json.WriteEndArray();
        json.EndResource();
    }

    private void CarePlan()
    {
        json.StartResource("CarePlan", _ids.Of("plan"), Language);
        json.WriteString("status", "draft");
        json.WriteString("intent", "proposal");
        json.WriteString("title", "Toilet hygiene");
        json.Subject(about.Person);
        json.WriteString("created", IsoDay.Of(about.Session.Date));
        json.References("goal", _ids.Of("goal"));
        json.WriteStartArray("activity");
        json.WriteStartObject();
        _trials.Outcomes();
        json.WritePropertyName("reference");
        json.Reference(_ids.Of("proposal"));
        json.WriteEndObject();
        json.WriteEndArray();
        json.EndResource();
    }

    private void StartObservation(string part, string text, string? question = null, (string System, string Code, string Display)? coding = null)
    {
        json.StartResource("Observation", _ids.Of(part), Language);
        json.WriteString("status", "final");
        json.WriteStartObject("code");
        var icf = _words.Icf.FirstOrDefault(c => question is not null && c.Questions.Contains(question));
        coding ??= icf is null ? null : (FhirJson.Icf, icf.Code, icf.Title);
        json.Concept(text, coding is { } c ? [c] : []);
        json.WriteEndObject();
        json.Subject(about.Person);
        json.WriteString("effectiveDateTime", IsoDay.Of(about.Session.Date));
    }

    private void EndObservation()
    {
        json.References("derivedFrom", _ids.Of("answers"));
        json.EndResource();
    }

    private void Component(string text, double value, string symbol)
    {
        json.WriteStartObject();
        json.WriteStartObject("code");
        json.Concept(text);
        json.WriteEndObject();
        json.Quantity("valueQuantity", value, symbol, Units.Find(symbol)!.Name);
        json.WriteEndObject();
    }
}
