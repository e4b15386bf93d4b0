using System.Text.Json.Nodes;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Files;

/// <summary>The part of the profile's schema that is about trials.</summary>
internal static class TrialSchema
{
    /// <summary>The property trials.</summary>
    internal static JsonObject Of(TrialKnowledge trials) => Array("Plans that were tried at this visit; a visit may hold only these.", 0, Object(["plan", "runs"], new()
    {
        ["plan"] = Object(["aid", "posture"], new()
        {
            ["aid"] = Text(),
            ["addOns"] = Array("Ids of add-ons.", 0, Text()),
            ["companion"] = Text(),
            ["approach"] = Enum("Way to the skin; left out where none is needed.", Words.All<Approach>()),
            ["posture"] = Enum("Posture.", Words.All<Posture>()),
            ["variant"] = Text(),
        }),
        ["predicted"] = Titled("What the built-in values predicted of the plan then, by criterion.", Object(
            Words.All<Criterion>().Where(c => c != Words.Of(Criterion.Independence)),
            new(Words.All<Criterion>().Select(c => KeyValuePair.Create(c, (JsonNode?)Number("number", 1)))))),
        ["before"] = Enum("Help needed before, code of the scale of item GG0130C.", trials.Levels.Select(l => l.Id)),
        ["goal"] = Enum("Goal, the most help that should be needed, code of the scale of item GG0130C.", trials.Levels.Where(l => !l.NotTried).Select(l => l.Id)),
        ["runs"] = Array("Tries, the dry one first.", 1, Run(trials)),
    }));

    private static JsonObject Run(TrialKnowledge trials) => Object(["kind"], new()
    {
        ["kind"] = Enum("Dry and clothed, or for real.", Words.All<RunKind>()),
        ["level"] = Enum("Help needed, code of the scale of item GG0130C.", trials.Levels.Select(l => l.Id)),
        ["cleanliness"] = Enum("How clean it got; only for a real run.", trials.Cleanliness.Select(c => c.Id)),
        ["minutes"] = Number("number", TrialReader.MostMinutes),
        ["effort"] = Number("integer", TrialReader.MostEffort),
        ["problems"] = Array("What went wrong.", 0, new() { ["enum"] = JsonText.Texts(trials.Problems.Select(p => p.Id)) }),
    });

    private static JsonObject Titled(string title, JsonObject schema)
    {
        schema.Insert(0, "title", title);
        return schema;
    }

    private static JsonObject Array(string title, int fewest, JsonObject items)
    {
        JsonObject array = new() { ["title"] = title, ["type"] = "array" };
        if (fewest > 0)
        {
            array["minItems"] = fewest;
        }

        array["items"] = items;
        return array;
    }

    private static JsonObject Object(IEnumerable<string> required, JsonObject properties) =>
        new() { ["type"] = "object", ["additionalProperties"] = false, ["required"] = JsonText.Texts(required), ["properties"] = properties };

    private static JsonObject Text() => new() { ["type"] = "string", ["pattern"] = "^[a-z0-9-]{1,64}$" };

    private static JsonObject Number(string type, double most) => new() { ["type"] = type, ["minimum"] = 0, ["maximum"] = most };

    private static JsonObject Enum(string title, IEnumerable<string> words) => new() { ["title"] = title, ["enum"] = JsonText.Texts(words) };
}
