using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text.Json;
using ToiletAid.App.Wording;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.App.Teaching;

/// <summary>Tells whether the data with which people were counted have changed since. Of the files only that is looked at which can move a place: no
/// words and no sources, no warnings, and no numbers of what comes before or after the ranking. A change of code is not noticed.</summary>
public static class CountedData
{
    private static readonly ImmutableArray<string> Files = ["aids.json", "body.json", "evidence.json", "hand.json", "norms.json", "people.json", "questions.json", "rules.json", "supplies.json"];

    /// <summary>Members that only say something, or that only the asking uses.</summary>
    private static readonly FrozenSet<string> Left = FrozenSet.Create(
        StringComparer.Ordinal,
        "basis", "source", "summary", "name", "has", "hazard", "text", "brief", "person", "helper", "helped", "alone", "arrange", "purpose", "severity",
        "topic", "prompt", "observe", "why", "label", "meaning", "below", "setsUp", "safety", "usually", "certainty", "askingSteps");

    /// <summary>Beginnings of the names of numbers that the ranking of somebody who answered everything does not use.</summary>
    private static readonly ImmutableArray<string> Elsewhere = ["planner.", "trial.", "clinic.", "caseload.", "change.", "error.", "fitting.", EvidenceIds.GripWeakShare.Text, EvidenceIds.GripStrongShare.Text];

    /// <summary>A short fingerprint of the built-in data.</summary>
    public static string Hash() => Hash(name =>
    {
        using var text = new StringWriter { NewLine = "\n" };
        KnowledgeText.Copy(name, text);
        return text.ToString();
    });

    /// <summary>A short fingerprint of data.</summary>
    /// <param name="read">The text of a file by its name.</param>
    public static string Hash(Func<string, string> read)
    {
        ArgumentNullException.ThrowIfNull(read);
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartArray();
            foreach (string file in Files)
            {
                using var document = JsonDocument.Parse(read(file));
                Write(json, document.RootElement);
            }

            json.WriteEndArray();
        }

        return Convert.ToHexStringLower(SHA256.HashData(bytes.ToArray()))[..16];
    }

    private static void Write(Utf8JsonWriter json, JsonElement element)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                json.WriteStartObject();
                foreach (var member in element.EnumerateObject().Where(m => !Left.Contains(m.Name) && !Elsewhere.Any(e => m.Name.StartsWith(e, StringComparison.Ordinal))))
                {
                    json.WritePropertyName(member.Name);
                    Write(json, member.Value);
                }

                json.WriteEndObject();
                break;
            case JsonValueKind.Array:
                json.WriteStartArray();
                foreach (var item in element.EnumerateArray().Where(i => !IsWarning(i)))
                {
                    Write(json, item);
                }

                json.WriteEndArray();
                break;
            default:
                element.WriteTo(json);
                break;
        }
    }

    /// <summary>A warning moves no place.</summary>
    private static bool IsWarning(JsonElement item) =>
        item.ValueKind == JsonValueKind.Object && item.TryGetProperty("kind", out var kind) && kind.ValueKind == JsonValueKind.String && kind.ValueEquals("caution");
}
