using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace ToiletAid.App.Files;

/// <summary>JSON as the program writes it.</summary>
public static class JsonText
{
    /// <summary>On one line.</summary>
    /// <remarks>It is read by people and by JSON readers, never put into a web page, so letters stay letters.</remarks>
    public static readonly JsonWriterOptions OneLine = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>On lines, to be read by people too, with the same line ends on every system.</summary>
    public static readonly JsonWriterOptions Indented = OneLine with { Indented = true, NewLine = "\n" };

    /// <summary>What is written, as text without a line end behind it.</summary>
    /// <param name="options">How it is written.</param>
    /// <param name="write">Writes it.</param>
    public static string Of(JsonWriterOptions options, Action<Utf8JsonWriter> write)
    {
        ArgumentNullException.ThrowIfNull(write);
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, options))
        {
            write(json);
        }

        return Encoding.UTF8.GetString(buffer.GetBuffer(), 0, (int)buffer.Length);
    }

    /// <summary>What is wrong with text that is no JSON, with its place.</summary>
    /// <param name="e">What the base library found.</param>
    /// <param name="mend">What to do, the end of a sentence.</param>
    internal static Issue Broken(JsonException e, string mend) => new(
        "broken-json",
        string.Create(CultureInfo.InvariantCulture, $"line {(e.LineNumber ?? 0) + 1}, column {(e.BytePositionInLine ?? 0) + 1}"),
        e.Message.Contains("duplicate", StringComparison.OrdinalIgnoreCase) ? "a member appears twice, keep one of them" : $"this is not valid JSON, {mend}");

    /// <summary>UTF-8 text without the byte order mark with which some editors begin a file.</summary>
    internal static ReadOnlyMemory<byte> WithoutMark(ReadOnlyMemory<byte> utf8) => utf8.Span.StartsWith("\uFEFF"u8) ? utf8["\uFEFF"u8.Length..] : utf8;

    /// <summary>Writes an array of texts.</summary>
    /// <param name="json">Where it goes.</param>
    /// <param name="name">The member that holds it.</param>
    /// <param name="items">The texts, in order.</param>
    public static void WriteStrings(this Utf8JsonWriter json, string name, IEnumerable<string> items)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(items);
        json.WriteStartArray(name);
        foreach (string item in items)
        {
            json.WriteStringValue(item);
        }

        json.WriteEndArray();
    }

    /// <summary>A node as text without a line end behind it.</summary>
    public static string Of(JsonWriterOptions options, JsonNode node)
    {
        ArgumentNullException.ThrowIfNull(node);
        return Of(options, json => node.WriteTo(json));
    }

    /// <summary>Texts as an array.</summary>
    public static JsonArray Texts(IEnumerable<string> items) => Nodes(items.Select(i => (JsonNode?)i));

    /// <summary>Nodes as an array.</summary>
    public static JsonArray Nodes(IEnumerable<JsonNode?> items) => new([.. items]);

    /// <summary>A number with so many decimals, and null for what is no finite number.</summary>
    internal static JsonNode? Rounded(double? value, int decimals = 4) => value is { } v && double.IsFinite(v) ? Math.Round(v, decimals) : null;

    /// <summary>Writes a number with four decimals, and null for what is no finite number.</summary>
    internal static void WriteRounded(this Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } v && double.IsFinite(v))
        {
            json.WriteNumber(name, Math.Round(v, 4));
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
