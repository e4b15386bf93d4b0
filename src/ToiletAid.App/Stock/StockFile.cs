using System.Text.Json;
using System.Text.Json.Nodes;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.Core.Catalogue;

namespace ToiletAid.App.Stock;

/// <summary>A clinic's own stock on disk.</summary>
public static class StockFile
{
    /// <summary>Puts an aid into a file: replaces the one of the same id, else adds it. A file that is not there is made.</summary>
    /// <param name="path">Path of the file, which is good or not there.</param>
    /// <param name="aid">The aid in the shape of the file.</param>
    /// <param name="below">The catalogue that the file lies over.</param>
    /// <returns>What is wrong with the whole; empty when it was written.</returns>
    /// <exception cref="IOException">It could not be written; nothing was changed.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; nothing was changed.</exception>
    public static IReadOnlyList<Issue> Put(string path, JsonObject aid, AidCatalogue below)
    {
        var file = File.Exists(path)
            ? JsonNode.Parse(JsonText.WithoutMark(File.ReadAllBytes(path)).Span, null, StockReader.Lenient)!
            : new JsonObject { ["format"] = 1, ["aids"] = new JsonArray(), ["addOns"] = new JsonArray() };
        var aids = file["aids"]!.AsArray();
        var old = aids.FirstOrDefault(a => (string)a!["id"]! == (string)aid["id"]!);
        if (old is null)
        {
            aids.Add((JsonNode)aid);
        }
        else
        {
            aids[aids.IndexOf(old)] = aid;
        }

        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, JsonText.Indented))
        {
            file.WriteTo(json);
        }

        buffer.WriteByte((byte)'\n');
        var read = new StockReader(below).Read(buffer.ToArray());
        if (read.Value is not null)
        {
            // A stock file tells nothing about a person, and colleagues who were let in stay let in.
            WholeFile.Write(path, buffer.ToArray(), keepRights: true);
        }

        return read.Issues;
    }
}
