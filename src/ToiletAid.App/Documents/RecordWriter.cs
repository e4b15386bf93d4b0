using System.Globalization;
using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Documents;

/// <summary>One visit as a FHIR R4 bundle for the record system. What it proposes is marked as a draft and a proposal; nothing is ordered.</summary>
/// <param name="json">Where it is written.</param>
/// <param name="about">The visit.</param>
/// <param name="made">When the record is made.</param>
public sealed class RecordWriter(Utf8JsonWriter json, Case about, DateTimeOffset made)
{
    private const string Language = "en-GB";

    /// <summary>Nobody has looked at it yet.</summary>
    private const string Computed = "preliminary";

    /// <summary>What a record system knows as a vital sign, by question: LOINC codes of the FHIR R4 vital signs profiles for body height and weight.</summary>
    private static readonly Dictionary<string, (string Code, string Display)> VitalSigns = new(StringComparer.Ordinal)
    {
        ["stature"] = ("8302-2", "Body height"),
        ["mass"] = ("29463-7", "Body weight"),
    };

    private readonly List<string> _written = [];
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
        Person();
        _questions.Questionnaire();
        _questions.Response(_ids.Of("answers"));
        _written.Add("answers");
        Measured();
        foreach (var stop in about.Advice.Stops)
        {
            Flag("stop/" + stop.Rule.Id, "Red flag", stop);
        }

        Notes();
        _trials.Write(Id);
        if (about.Advice.Stops.IsEmpty && about.Chosen is { } chosen)
        {
            foreach (var caution in chosen.Cautions)
            {
                Flag("caution/" + caution.Rule.Id, "Caution", caution);
            }

            Demands(chosen);
            Proposal(chosen);
            Goal();
            CarePlan();
        }

        Provenance();
        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>The clinic's code and nothing else.</summary>
    private void Person()
    {
        json.StartResource("Patient", FhirJson.PersonId(about.Person), Language);
        json.WriteStartArray("identifier");
        json.WriteStartObject();
        json.Identifier(about.Person);
        json.WriteEndObject();
        json.WriteEndArray();
        json.EndResource();
    }

    private void Flag(string part, string kind, Finding finding)
    {
        json.StartResource("Flag", Id(part), Language);
        json.WriteString("status", "active");
        json.Category("category", "Safety", (FhirJson.FlagCategories, "safety", "Safety"));
        json.WriteStartObject("code");
        json.Concept($"{kind}, {_words.Text("note.severity." + ToiletAid.Core.Person.Words.Of(finding.Rule.Severity)).ToLowerInvariant()}. {AdviceText.Sentence(finding)}");
        json.WriteEndObject();
        json.Subject(about.Person);
        json.WriteStartObject("period");
        json.WriteString("start", IsoDay.Of(about.Session.Date));
        json.WriteEndObject();
        json.EndResource();
    }

    /// <summary>Which program with which data wrote what, and when.</summary>
    private void Provenance()
    {
        json.StartResource("Provenance", _ids.Of("provenance"), Language);
        json.References("target", _written.Select(_ids.Of));
        json.WriteString("occurredDateTime", IsoDay.Of(about.Session.Date));
        json.WriteString("recorded", made.ToUniversalTime().ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture));
        json.WriteStartArray("agent");
        json.WriteStartObject();
        json.WriteStartObject("type");
        json.Concept("Program", (FhirJson.Participants, "assembler", "Assembler"));
        json.WriteEndObject();
        json.WriteStartObject("who");
        json.WriteString("display", $"toiletaid {KnowledgeVersion.Program}, knowledge {KnowledgeVersion.Knowledge}");
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndArray();
        json.EndResource();
    }

    /// <summary>Id of a resource that the record tells the origin of.</summary>
    private string Id(string part)
    {
        _written.Add(part);
        return _ids.Of(part);
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
            json.StartResource("Observation", Id($"note/{i + 1}"), Language);
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
            StartObservation("needed-length", "Length that an aid needs, computed", status: Computed);
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
            StartObservation("force", $"Force of the hardest step for the hand, computed: {SlotText.Operation(ToiletAid.Core.Person.Words.Of(hardest.Kind)).ToLowerInvariant()}", status: Computed);
            json.Quantity("valueQuantity", hardest.DemandNewtons, "N", "newtons");
            json.WriteStartArray("component");
            Component("Share of what the hand can comfortably give", hardest.ShareOfAcceptable, "share");
            json.WriteEndArray();
            EndObservation();
        }
    }

    /// <summary>A device is asked for where the plan has one; a technique or another person's help is a service.</summary>
    private void Proposal(RankedPlan chosen)
    {
        bool device = chosen.Plan.Methods.Any(m => m.Method != MethodKind.Helper && m.Reach != ReachKind.BareHand) || !chosen.Plan.AddOns.IsEmpty;
        json.StartResource(device ? "DeviceRequest" : "ServiceRequest", Id("proposal"), Language);
        json.WriteString("status", "draft");
        json.WriteString("intent", "proposal");
        json.WriteStartObject(device ? "codeCodeableConcept" : "code");
        json.Concept(PlanText.Name(chosen.Plan), (FhirJson.Ours, "aid." + chosen.Plan.Aid.Id, chosen.Plan.Aid.Name));
        json.WriteEndObject();
        json.Subject(about.Person);
        json.WriteString("authoredOn", IsoDay.Of(about.Session.Date));
        json.WriteStartArray("reasonCode");
        json.WriteStartObject();
        json.Concept("Toileting", (FhirJson.Icf, "d530", "Toileting"));
        json.WriteEndObject();
        json.WriteEndArray();
        if (device && !chosen.Plan.AddOns.IsEmpty)
        {
            AddOns(chosen.Plan);
        }

        json.References("supportingInfo", _ids.Of("answers"));
        json.Notes([AdviceText.HowSure(chosen, about.Advice), .. AdviceText.Reasons(chosen), _words.Text("note.estimates"), about.Made, AdviceText.Limits]);
        json.EndResource();
    }

    /// <summary>What goes with the device. No published code of an add-on was read, so they have our own.</summary>
    private void AddOns(Plan plan)
    {
        json.WriteStartArray("parameter");
        foreach (var part in plan.AddOns)
        {
            json.WriteStartObject();
            json.WriteStartObject("code");
            json.Concept("Add-on");
            json.WriteEndObject();
            json.WriteStartObject("valueCodeableConcept");
            json.Concept(part.Name, (FhirJson.Ours, "add-on." + part.Id, part.Name));
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private void Goal()
    {
        json.StartResource("Goal", Id("goal"), Language);
        json.WriteString("lifecycleStatus", "proposed");
        json.WriteStartObject("description");
        json.Concept(_words.Text("record.goal"));
        json.WriteEndObject();
        json.Subject(about.Person);
        json.WriteStartArray("target");
        json.WriteStartObject();
        json.WriteStartObject("measure");
        json.Concept(_words.Text("record.level"), (FhirJson.Icf, "d530", "Toileting"));
        json.WriteEndObject();
        _trials.GoalLevel();
        json.WriteString("dueDate", IsoDay.Of(about.Session.Date.AddDays(NoteDocument.ReviewDays)));
        json.WriteEndObject();
        json.WriteEndArray();
        json.EndResource();
    }

    private void CarePlan()
    {
        json.StartResource("CarePlan", Id("plan"), Language);
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

    private void StartObservation(string part, string text, QuestionId? question = null, string status = "final")
    {
        json.StartResource("Observation", Id(part), Language);
        json.WriteString("status", status);
        var vital = question is { } of && VitalSigns.TryGetValue(of, out var sign) ? sign : ((string Code, string Display)?)null;
        if (vital is not null)
        {
            json.Category("category", "Vital signs", (FhirJson.Categories, "vital-signs", "Vital Signs"));
        }

        json.WriteStartObject("code");
        var icf = _words.Icf.FirstOrDefault(c => question is { } id && c.Questions.Contains(id.Text));
        (string, string, string)? coding = vital is { } v ? (FhirJson.Loinc, v.Code, v.Display) : icf is null ? null : (FhirJson.Icf, icf.Code, icf.Title);
        json.Concept(text, coding is { } c ? [c] : []);
        json.WriteEndObject();
        json.Subject(about.Person);
        json.WriteString("effectiveDateTime", IsoDay.Of(about.Session.Date));
        if (question is { } asked && about.Session.Answers[asked]?.How is { } how)
        {
            json.WriteStartObject("method");
            json.Concept(_words.Text("note.how." + ToiletAid.Core.Person.Words.Of(how)));
            json.WriteEndObject();
        }
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
