using System.Globalization;
using System.Text.Json.Nodes;

namespace ToiletAid.Benchmarks.Estimates;

/// <summary>A number of the data with a range, which was not published.</summary>
/// <param name="File">File that it stands in.</param>
/// <param name="At">How many numbers of the file stand before it.</param>
/// <param name="Place">Members on the way to it, with dots between them.</param>
/// <param name="Value">As in the file, in its own unit.</param>
/// <param name="Low">Low end of its range.</param>
/// <param name="High">High end.</param>
/// <param name="Unit">Unit.</param>
/// <param name="Basis">What it rests on.</param>
internal sealed record Estimate(string File, int At, string Place, double Value, double Low, double High, string Unit, string Basis)
{
    /// <summary>All of a file.</summary>
    internal static IEnumerable<Estimate> In(string file, JsonNode root) =>
        from number in Numbers(root, []).Select((n, at) => (At: at, n.Place, n.Members))
        let basis = Text(number.Members, "basis")
        where basis != "published" && number.Members.ContainsKey("low") && number.Members.ContainsKey("high")
        select new Estimate(
            file,
            number.At,
            string.Join('.', number.Place),
            number.Members["value"]!.GetValue<double>(),
            number.Members["low"]!.GetValue<double>(),
            number.Members["high"]!.GetValue<double>(),
            Text(number.Members, "unit") ?? "",
            basis);

    /// <summary>Takes this estimate of a document to be known as <paramref name="value"/>: its range is that alone.</summary>
    internal void Fix(JsonNode root, double value)
    {
        var members = Numbers(root, []).ElementAt(At).Members;
        (members["value"], members["low"], members["high"]) = (value, value, value);
    }

    private static IEnumerable<(string[] Place, JsonObject Members)> Numbers(JsonNode? node, string[] place) => node switch
    {
        JsonObject o when o["value"] is JsonValue && o.ContainsKey("basis") => [(place, o)],
        JsonObject o => o.SelectMany(m => Numbers(m.Value, m.Key is "numbers" or "aids" ? place : [.. place, m.Key])),
        JsonArray a => a.SelectMany((item, i) => Numbers(item, [.. place, Text(item, "id") ?? Text(item, "kind") ?? i.ToString(CultureInfo.InvariantCulture)])),
        _ => [],
    };

    private static string? Text(JsonNode? node, string member) => node is JsonObject o && o[member] is JsonValue v && v.TryGetValue(out string? text) ? text : null;
}
