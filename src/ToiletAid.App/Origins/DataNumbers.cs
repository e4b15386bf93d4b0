using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Origins;

/// <summary>Every number of the built-in data with its basis: its own, else that of the nearest object around it that has one.</summary>
public static class DataNumbers
{
    private const string Ending = ".json";

    /// <summary>Names of the built-in files.</summary>
    public static ImmutableArray<string> Files { get; } =
        [.. typeof(DataNumbers).Assembly.GetManifestResourceNames().Where(n => n.EndsWith(Ending, StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    /// <summary>All of them, in the order of the files.</summary>
    public static IEnumerable<DataNumber> All() => Files.SelectMany(In);

    /// <summary>Those of one built-in file.</summary>
    public static IEnumerable<DataNumber> In(string file)
    {
        using var stream = typeof(DataNumbers).Assembly.GetManifestResourceStream(file)!;
        using var document = JsonDocument.Parse(stream);
        return [.. Of(file, document.RootElement)];
    }

    /// <summary>Those of a document.</summary>
    /// <param name="file">How it is called.</param>
    /// <param name="root">Its root.</param>
    public static IEnumerable<DataNumber> Of(string file, JsonElement root)
    {
        var whole = Origin(root);
        return root.EnumerateObject()
            .Where(m => m.Name != "format") // says how the file is to be read
            .SelectMany(m => Walk(file, m.Name, m.Value, m.Name, whole, isOwn: false));
    }

    private static IEnumerable<DataNumber> Walk(string file, string place, JsonElement at, string name, (Basis? Basis, string? Source) origin, bool isOwn)
    {
        switch (at.ValueKind)
        {
            case JsonValueKind.Number:
            case JsonValueKind.String when IsAssumedNumber(name, at):
                return [new(file, place, origin.Basis, origin.Source, isOwn)];
            case JsonValueKind.Array:
                return at.EnumerateArray().SelectMany((item, i) => Walk(file, $"{place}.{Name(item) ?? i.ToString(CultureInfo.InvariantCulture)}", item, name, origin, isOwn));
            case JsonValueKind.Object:
                bool has = at.TryGetProperty("basis", out _);
                var here = has ? Origin(at) : origin;
                bool isSourced = has && at.TryGetProperty("value", out _);
                return at.EnumerateObject()
                    .Where(m => !(isSourced && m.Name is "low" or "high"))
                    .SelectMany(m => Walk(file, isSourced && m.Name == "value" ? place : $"{place}.{m.Name}", m.Value, m.Name, here, isOwn || has));
            default:
                return [];
        }
    }

    private static (Basis? Basis, string? Source) Origin(JsonElement at) => (Words.Find<Basis>(Text(at, "basis")), Text(at, "source"));

    private static string? Name(JsonElement item) => Text(item, "id") ?? Text(item, "question") ?? Text(item, "measure") ?? Text(item, "kind");

    private static string? Text(JsonElement at, string member) =>
        at.ValueKind == JsonValueKind.Object && at.TryGetProperty(member, out var text) && text.ValueKind == JsonValueKind.String ? text.GetString() : null;

    /// <summary>What is assumed while an answer is not known is an id or a number, and so it is a text in the file.</summary>
    private static bool IsAssumedNumber(string name, JsonElement at) =>
        name == "assume" && double.TryParse(at.GetString(), NumberStyles.Float, CultureInfo.InvariantCulture, out _);
}
