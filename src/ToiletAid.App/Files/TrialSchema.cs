using System.Text.Json;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Files;

/// <summary>The part of the profile's schema that is about trials.</summary>
internal static class TrialSchema
{
    private const string Id = "^[a-z0-9-]{1,64}$";

    /// <summary>Writes the property trials.</summary>
    internal static void Write(Utf8JsonWriter json, TrialKnowledge trials)
    {
        Array(json, "trials", "Plans that were tried at this visit; a visit may hold only these.", 0, () =>
        {
            Object(json, ["plan", "runs"], () =>
            {
                json.WriteStartObject("plan");
                Object(json, ["aid", "posture"], () =>
                {
                    Text(json, "aid");
                    Array(json, "addOns", "Ids of add-ons.", 0, () => Pattern(json));
                    Text(json, "companion");
                    Enum(json, "approach", "Way to the skin; left out where none is needed.", Words.All<Approach>());
                    Enum(json, "posture", "Posture.", Words.All<Posture>());
                    Text(json, "variant");
                });
                json.WriteEndObject();
                json.WriteStartObject("predicted");
                json.WriteString("title", "What the built-in values predicted of the plan then, by criterion.");
                Object(json, Words.All<Criterion>().Where(c => c != Words.Of(Criterion.Independence)), () =>
                {
                    foreach (string criterion in Words.All<Criterion>())
                    {
                        Number(json, criterion, "number", 1);
                    }
                });
                json.WriteEndObject();
                Enum(json, "before", "Help needed before, code of the scale of item GG0130C.", trials.Levels.Select(l => l.Id));
                Enum(json, "goal", "Goal, the most help that should be needed, code of the scale of item GG0130C.", trials.Levels.Where(l => !l.NotTried).Select(l => l.Id));
                Array(json, "runs", "Tries, the dry one first.", 1, () => Run(json, trials));
            });
        });
    }

    private static void Run(Utf8JsonWriter json, TrialKnowledge trials) => Object(json, ["kind"], () =>
    {
        Enum(json, "kind", "Dry and clothed, or for real.", Words.All<RunKind>());
        Enum(json, "level", "Help needed, code of the scale of item GG0130C.", trials.Levels.Select(l => l.Id));
        Enum(json, "cleanliness", "How clean it got; only for a real run.", trials.Cleanliness.Select(c => c.Id));
        Number(json, "minutes", "number", TrialReader.MostMinutes);
        Number(json, "effort", "integer", TrialReader.MostEffort);
        Array(json, "problems", "What went wrong.", 0, () => json.WriteStrings("enum", trials.Problems.Select(p => p.Id)));
    });

    private static void Array(Utf8JsonWriter json, string name, string title, int fewest, Action items)
    {
        json.WriteStartObject(name);
        json.WriteString("title", title);
        json.WriteString("type", "array");
        if (fewest > 0)
        {
            json.WriteNumber("minItems", fewest);
        }

        json.WriteStartObject("items");
        items();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Object(Utf8JsonWriter json, IEnumerable<string> required, Action properties)
    {
        json.WriteString("type", "object");
        json.WriteBoolean("additionalProperties", false);
        json.WriteStrings("required", required);
        json.WriteStartObject("properties");
        properties();
        json.WriteEndObject();
    }

    private static void Text(Utf8JsonWriter json, string name)
    {
        json.WriteStartObject(name);
        Pattern(json);
        json.WriteEndObject();
    }

    private static void Pattern(Utf8JsonWriter json)
    {
        json.WriteString("type", "string");
        json.WriteString("pattern", Id);
    }

    private static void Number(Utf8JsonWriter json, string name, string type, double most)
    {
        json.WriteStartObject(name);
        json.WriteString("type", type);
        json.WriteNumber("minimum", 0);
        json.WriteNumber("maximum", most);
        json.WriteEndObject();
    }

    private static void Enum(Utf8JsonWriter json, string name, string title, IEnumerable<string> words)
    {
        json.WriteStartObject(name);
        json.WriteString("title", title);
        json.WriteStrings("enum", words);
        json.WriteEndObject();
    }
}
