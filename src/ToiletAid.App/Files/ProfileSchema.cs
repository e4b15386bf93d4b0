using System.Globalization;
using System.Text.Json.Nodes;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Files;

/// <summary>The profile file as a JSON Schema (draft 2020-12), made from the questions so that it cannot fall behind them.</summary>
public static class ProfileSchema
{
    /// <summary>The schema as text.</summary>
    public static string Of(QuestionSet questions)
    {
        JsonObject schema = new() { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["title"] = "Profile of one person for toiletaid" };
        Close(schema, ["format", "person", "sessions"], new()
        {
            ["format"] = new JsonObject { ["const"] = ProfileReader.Format },
            ["revision"] = new JsonObject { ["type"] = "integer", ["minimum"] = 1 },
            ["hash"] = Text("^sha256:[0-9a-f]{64}$"),
            ["person"] = Text("^(?!-)(?![0-9-]+([DEde][0-9-]+)?$)(?!.*[A-Za-z]{3})(?=.*[0-9])[A-Za-z0-9-]{1,16}$"),
            ["sessions"] = new JsonObject { ["type"] = "array", ["minItems"] = 1, ["items"] = Session(questions) },
        });
        return JsonText.Of(JsonText.Indented, schema) + "\n";
    }

    private static JsonObject Session(QuestionSet questions) => Close(new(), ["date", "depth", "answers"], new()
    {
        ["date"] = Text("^[0-9]{4}-[0-9]{2}-[0-9]{2}$"),
        ["depth"] = Enum(Words.All<Depth>()),
        ["late"] = new JsonObject { ["type"] = "boolean", ["description"] = "True for a visit that was written down after one of a later day." },
        ["answers"] = Close(new(), [], new(questions.All.Select(q => KeyValuePair.Create(q.Id.Text, (JsonNode?)Answer(q))))),
        ["trials"] = TrialSchema.Of(BuiltIn.Trials()),
        ["note"] = Note(),
    });

    /// <summary>The pattern holds the characters that the reader refuses, as far as they have one code unit.</summary>
    private static JsonObject Note() => new()
    {
        ["type"] = "array",
        ["maxItems"] = NoteLine.Most,
        ["items"] = new JsonObject
        {
            ["type"] = "string",
            ["maxLength"] = NoteLine.Longest,
            ["pattern"] = @"^(?=.*\S)(?![\s\S]*[\u0000-\u001f\u007f-\u009f\u00ad\u061c\u200b-\u200f\u2028-\u202e\u2060-\u206f\ue000-\uf8ff\ufeff\ufff9-\uffff])",
        },
    };

    private static JsonObject Answer(Question question)
    {
        JsonObject members = new() { ["value"] = new JsonObject { ["anyOf"] = JsonText.Nodes(Values(question).Prepend(new JsonObject { ["const"] = AnswerReader.NotKnown })) } };
        if ((question.Number ?? question.Parts.FirstOrDefault()?.Number) is { } number)
        {
            members["unit"] = Enum(number.Units);
        }

        members["how"] = Enum(Words.All<HowObtained>());
        return Close(new() { ["title"] = question.Prompt }, ["value"], members);
    }

    private static IEnumerable<JsonObject> Values(Question question)
    {
        if (!question.Options.IsEmpty && question.Kind == QuestionKind.Choice)
        {
            yield return Options(question);
        }

        if (question.Kind is QuestionKind.Many or QuestionKind.Order)
        {
            yield return ListOf(question.Kind == QuestionKind.Many ? Options(question) : new() { ["anyOf"] = JsonText.Nodes([Options(question), ListOf(Options(question))]) });
        }

        if (question.Number is not null)
        {
            yield return new() { ["type"] = question.Number.Whole ? "integer" : "number" };
        }

        if (question.Kind == QuestionKind.Parts)
        {
            yield return Close(new(), [], new(question.Parts.Select(p => KeyValuePair.Create(p.Id, (JsonNode?)new JsonObject { ["type"] = "number" }))));
        }
    }

    private static JsonObject ListOf(JsonObject items) => new() { ["type"] = "array", ["items"] = items };

    /// <summary>An option that is a number may be written as one.</summary>
    private static JsonObject Options(Question question) => new()
    {
        ["enum"] = JsonText.Nodes(question.Options.Select(o => o.Id).Concat(question.Kind == QuestionKind.Many ? [AnswerReader.None] : [])
            .SelectMany(id => int.TryParse(id, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? (JsonNode?[])[id, number] : [id])),
    };

    private static JsonObject Enum(IEnumerable<string> words) => new() { ["enum"] = JsonText.Texts(words) };

    /// <summary>Makes of a schema that of an object with these members and no others.</summary>
    private static JsonObject Close(JsonObject schema, string[] required, JsonObject properties)
    {
        schema["type"] = "object";
        schema["additionalProperties"] = false;
        if (required.Length > 0)
        {
            schema["required"] = JsonText.Texts(required);
        }

        schema["properties"] = properties;
        return schema;
    }

    private static JsonObject Text(string pattern) => new() { ["type"] = "string", ["pattern"] = pattern };
}
