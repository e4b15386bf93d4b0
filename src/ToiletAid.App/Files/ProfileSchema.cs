using System.Globalization;
using System.Text.Json;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Files;

/// <summary>The profile file as a JSON Schema (draft 2020-12), made from the questions so that it cannot fall behind them.</summary>
public static class ProfileSchema
{
    /// <summary>The schema as text.</summary>
    public static string Of(QuestionSet questions)
    {
        return JsonText.Of(JsonText.Indented, json =>
        {
            json.WriteStartObject();
            json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            json.WriteString("title", "Profile of one person for toiletaid");
            Closed(json, ["format", "person", "sessions"]);
            json.WriteStartObject("properties");
            json.WriteStartObject("format");
            json.WriteNumber("const", ProfileReader.Format);
            json.WriteEndObject();
            json.WriteStartObject("revision");
            json.WriteString("type", "integer");
            json.WriteNumber("minimum", 1);
            json.WriteEndObject();
            Text(json, "hash", "^sha256:[0-9a-f]{64}$");
            Text(json, "person", "^(?!-)(?![0-9-]+([DEde][0-9-]+)?$)(?!.*[A-Za-z]{3})(?=.*[0-9])[A-Za-z0-9-]{1,16}$");
            json.WriteStartObject("sessions");
            json.WriteString("type", "array");
            json.WriteNumber("minItems", 1);
            json.WriteStartObject("items");
            Session(json, questions);
            json.WriteEndObject();
            json.WriteEndObject();
            json.WriteEndObject();
            json.WriteEndObject();
        }) + "\n";
    }

    private static void Session(Utf8JsonWriter json, QuestionSet questions)
    {
        Closed(json, ["date", "depth", "answers"]);
        json.WriteStartObject("properties");
        Text(json, "date", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$");
        json.WriteStartObject("depth");
        json.WriteStrings("enum", Words.All<Depth>());
        json.WriteEndObject();
        json.WriteStartObject("late");
        json.WriteString("type", "boolean");
        json.WriteString("description", "True for a visit that was written down after one of a later day.");
        json.WriteEndObject();
        json.WriteStartObject("answers");
        Closed(json, []);
        json.WriteStartObject("properties");
        foreach (var question in questions.All)
        {
            Answer(json, question);
        }

        json.WriteEndObject();
        json.WriteEndObject();
        TrialSchema.Write(json, BuiltIn.Trials());
        Note(json);
        json.WriteEndObject();
    }

    /// <summary>The pattern holds the characters that the reader refuses, as far as they have one code unit.</summary>
    private static void Note(Utf8JsonWriter json)
    {
        json.WriteStartObject("note");
        json.WriteString("type", "array");
        json.WriteNumber("maxItems", NoteLine.Most);
        json.WriteStartObject("items");
        json.WriteString("type", "string");
        json.WriteNumber("maxLength", NoteLine.Longest);
        json.WriteString("pattern", @"^(?=.*\S)(?![\s\S]*[\u0000-\u001f\u007f-\u009f\u00ad\u061c\u200b-\u200f\u2028-\u202e\u2060-\u206f\ue000-\uf8ff\ufeff\ufff9-\uffff])");
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Answer(Utf8JsonWriter json, Question question)
    {
        json.WriteStartObject(question.Id);
        json.WriteString("title", question.Prompt);
        Closed(json, ["value"]);
        json.WriteStartObject("properties");
        json.WriteStartObject("value");
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        json.WriteString("const", AnswerReader.NotKnown);
        json.WriteEndObject();
        Value(json, question);
        json.WriteEndArray();
        json.WriteEndObject();
        if ((question.Number ?? question.Parts.FirstOrDefault()?.Number) is { } number)
        {
            json.WriteStartObject("unit");
            json.WriteStrings("enum", number.Units);
            json.WriteEndObject();
        }

        json.WriteStartObject("how");
        json.WriteStrings("enum", Words.All<HowObtained>());
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Value(Utf8JsonWriter json, Question question)
    {
        if (!question.Options.IsEmpty && question.Kind == QuestionKind.Choice)
        {
            json.WriteStartObject();
            Options(json, question);
            json.WriteEndObject();
        }

        if (question.Kind is QuestionKind.Many or QuestionKind.Order)
        {
            json.WriteStartObject();
            json.WriteString("type", "array");
            json.WriteStartObject("items");
            if (question.Kind == QuestionKind.Order)
            {
                json.WriteStartArray("anyOf");
                json.WriteStartObject();
                Options(json, question);
                json.WriteEndObject();
                json.WriteStartObject();
                json.WriteString("type", "array");
                json.WriteStartObject("items");
                Options(json, question);
                json.WriteEndObject();
                json.WriteEndObject();
                json.WriteEndArray();
            }
            else
            {
                Options(json, question);
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }

        if (question.Number is not null)
        {
            json.WriteStartObject();
            json.WriteString("type", question.Number.Whole ? "integer" : "number");
            json.WriteEndObject();
        }

        if (question.Kind == QuestionKind.Parts)
        {
            json.WriteStartObject();
            Closed(json, []);
            json.WriteStartObject("properties");
            foreach (var part in question.Parts)
            {
                json.WriteStartObject(part.Id);
                json.WriteString("type", "number");
                json.WriteEndObject();
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }
    }

    private static void Options(Utf8JsonWriter json, Question question)
    {
        json.WriteStartArray("enum");
        foreach (string id in question.Options.Select(o => o.Id).Concat(question.Kind == QuestionKind.Many ? [AnswerReader.None] : []))
        {
            json.WriteStringValue(id);
            if (int.TryParse(id, NumberStyles.None, CultureInfo.InvariantCulture, out int number))
            {
                json.WriteNumberValue(number);
            }
        }

        json.WriteEndArray();
    }

    private static void Closed(Utf8JsonWriter json, string[] required)
    {
        json.WriteString("type", "object");
        json.WriteBoolean("additionalProperties", false);
        if (required.Length > 0)
        {
            json.WriteStrings("required", required);
        }
    }

    private static void Text(Utf8JsonWriter json, string name, string pattern)
    {
        json.WriteStartObject(name);
        json.WriteString("type", "string");
        json.WriteString("pattern", pattern);
        json.WriteEndObject();
    }
}
