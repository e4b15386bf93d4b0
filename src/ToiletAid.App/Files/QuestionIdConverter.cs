using System.Text.Json;
using System.Text.Json.Serialization;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Files;

/// <summary>The id of a question is its text.</summary>
internal sealed class QuestionIdConverter : JsonConverter<QuestionId>
{
    public override QuestionId Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        new(reader.TokenType == JsonTokenType.String ? reader.GetString()! : throw new JsonException("an id is a text"));

    public override void Write(Utf8JsonWriter writer, QuestionId value, JsonSerializerOptions options) => writer.WriteStringValue(value.Text);
}
