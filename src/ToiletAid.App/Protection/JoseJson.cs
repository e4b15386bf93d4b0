using System.Text;
using System.Text.Json;
using Jose;

namespace ToiletAid.App.Protection;

/// <summary>JSON for the JOSE library without reflection: the few kinds of value that its headers have.</summary>
internal sealed class JoseJson : IJsonMapper
{
    /// <summary>How a JWE and its headers are read; nothing in them is nested deeper.</summary>
    internal static readonly JsonDocumentOptions Strict = new() { MaxDepth = 8, AllowDuplicateProperties = false };

    /// <inheritdoc/>
    public string Serialize(object obj)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            Write(json, obj);
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    /// <inheritdoc/>
    public T Parse<T>(string json)
    {
        using var document = JsonDocument.Parse(json, Strict);
        return Value(document.RootElement) is T value ? value : throw new FormatException("a header is an object");
    }

    private static void Write(Utf8JsonWriter json, object? value)
    {
        switch (value)
        {
            case IDictionary<string, object> members:
                json.WriteStartObject();
                foreach (var (name, member) in members)
                {
                    json.WritePropertyName(name);
                    Write(json, member);
                }

                json.WriteEndObject();
                break;
            case string text:
                json.WriteStringValue(text);
                break;
            case int number:
                json.WriteNumberValue(number);
                break;
            default:
                throw new NotSupportedException($"a header of kind {value?.GetType().Name} is not written");
        }
    }

    private static object? Value(JsonElement e) => e.ValueKind switch
    {
        JsonValueKind.Object => e.EnumerateObject().ToDictionary(p => p.Name, p => Value(p.Value)!, StringComparer.Ordinal),
        JsonValueKind.Array => e.EnumerateArray().Select(Value).ToList(),
        JsonValueKind.String => e.GetString(),
        JsonValueKind.Number when e.TryGetInt32(out int i) => i,
        JsonValueKind.Number => e.GetDouble(),
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        _ => null,
    };
}
