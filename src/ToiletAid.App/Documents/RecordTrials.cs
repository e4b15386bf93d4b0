using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Documents;

/// <summary>What was tried, as observations: the level of help before and with the plan, and each try with what it found.</summary>
/// <param name="json">Where it is written.</param>
/// <param name="about">The visit.</param>
internal sealed class RecordTrials(Utf8JsonWriter json, Case about)
{
    private const string Language = "en-GB";

    private readonly RecordIds _ids = new(about.Person, about.Session.Date);
    private readonly TrialText _text = new(about.Knowledge);

    private IEnumerable<(string Part, PastTrial Past)> Trials => about.Session.Answers.Trials.Select((t, i) => ($"trial/{i + 1}", t));

    /// <summary>Every trial.</summary>
    /// <param name="id">Gives the id of a part that is written.</param>
    internal void Write(Func<string, string> id)
    {
        foreach (var (part, past) in Trials)
        {
            if (past.Trial.Before is { } before)
            {
                Level(id(part + "/before"), "Toileting hygiene without the plan", past, before);
            }

            if (past.Trial.After is { } after)
            {
                Level(id(part + "/after"), "Toileting hygiene with the plan that was tried", past, after);
            }

            foreach (var run in past.Trial.Runs)
            {
                Run(id(Part(part, run)), past, run);
            }
        }
    }

    /// <summary>The level that is wanted, as the detail of a goal's target; nothing where none was noted.</summary>
    internal void GoalLevel()
    {
        if (about.Session.Answers.Trials.LastOrDefault(t => t.Trial.Goal is not null)?.Trial.Goal is { } goal)
        {
            json.WriteStartObject("detailCodeableConcept");
            Concept(goal);
            json.WriteEndObject();
        }
    }

    /// <summary>The tries, as outcomes of an activity; nothing where there was none.</summary>
    internal void Outcomes()
    {
        string[] ids = [.. Trials.SelectMany(t => t.Past.Trial.Runs.Select(r => _ids.Of(Part(t.Part, r))))];
        if (ids.Length > 0)
        {
            json.References("outcomeReference", ids);
        }
    }

    private static string Part(string part, TrialRun run) => $"{part}/{ToiletAid.Core.Person.Words.Of(run.Kind)}";

    private void Level(string id, string text, PastTrial past, string code)
    {
        Start(id);
        json.WriteStartObject("code");
        // One try says nothing of three days, which is what the published codes of this item mean.
        json.Concept(text, (FhirJson.Icf, "d530", "Toileting"));
        json.WriteEndObject();
        Subject(past);
        json.WriteStartObject("valueCodeableConcept");
        Concept(code);
        json.WriteEndObject();
        json.EndResource();
    }

    private void Run(string id, PastTrial past, TrialRun run)
    {
        Start(id);
        json.WriteStartObject("code");
        json.Concept($"Trial {(run.Kind == RunKind.Dry ? "dry and clothed" : "for real")}: {PlanText.Lower(_text.Plan(past.Trial.Plan))}", (FhirJson.Icf, "d530", "Toileting"));
        json.WriteEndObject();
        Subject(past);
        json.WriteString("valueString", string.Join(' ', _text.Findings(run)));
        if (run.Minutes is not null || run.Effort is not null || run.Cleanliness is not null || !run.Problems.IsEmpty)
        {
            json.WriteStartArray("component");
            Components(run);
            json.WriteEndArray();
        }

        json.EndResource();
    }

    private void Components(TrialRun run)
    {
        if (run.Minutes is { } minutes)
        {
            Component("Time", () => json.Quantity("valueQuantity", minutes, "min", "minutes"));
        }

        if (run.Effort is { } effort)
        {
            Component("Effort, 0 none to 10 the most", () => json.WriteNumber("valueInteger", effort));
        }

        foreach (var (name, finding) in about.Knowledge.Trials.Cleanliness.Where(c => c.Id == run.Cleanliness).Select(c => ("Cleanliness", c))
            .Concat(about.Knowledge.Trials.Problems.Where(p => run.Problems.Contains(p.Id)).Select(p => ("Problem", p))))
        {
            Component(name, () =>
            {
                json.WriteStartObject("valueCodeableConcept");
                json.Concept(finding.Label, (FhirJson.Ours, "trial." + finding.Id, finding.Label));
                json.WriteEndObject();
            });
        }
    }

    private void Component(string text, Action value)
    {
        json.WriteStartObject();
        json.WriteStartObject("code");
        json.Concept(text);
        json.WriteEndObject();
        value();
        json.WriteEndObject();
    }

    private void Start(string id)
    {
        json.StartResource("Observation", id, Language);
        json.WriteString("status", "final");
    }

    private void Subject(PastTrial past)
    {
        json.Subject(about.Person);
        json.WriteString("effectiveDateTime", IsoDay.Of(past.Date));
    }

    private void Concept(string code)
    {
        var level = about.Knowledge.Trials.Levels.First(l => l.Id == code);
        json.Concept(_text.Level(code), (FhirJson.Loinc, level.Loinc!, level.LoincDisplay!));
    }
}
