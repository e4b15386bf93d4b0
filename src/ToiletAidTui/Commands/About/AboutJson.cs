using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.App.Origins;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAidTui.Commands.About;

/// <summary>The facts as JSON.</summary>
internal static class AboutJson
{
    internal static void Write(TextWriter output, AboutFacts facts)
    {
        output.WriteLine(JsonText.Of(JsonText.Indented, json =>
        {
            json.WriteStartObject();
            json.WriteString("version", facts.Version);
            json.WriteString("data", facts.Knowledge);
            json.WriteString("licence", AboutFacts.Licence);
            json.WriteString("runtime", AboutFacts.Runtime);
            json.WriteString("machine", AboutFacts.Machine);
            json.WriteStartObject("numbers");
            Count(json, facts.Numbers);
            json.WriteStartArray("files");
            foreach (var file in facts.Numbers.GroupBy(n => n.File))
            {
                json.WriteStartObject();
                json.WriteString("file", file.Key);
                Count(json, [.. file]);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
            Sources(json, facts.Numbers);
            Libraries(json, facts);
            json.WriteEndObject();
        }));
    }

    private static void Count(Utf8JsonWriter json, IReadOnlyCollection<DataNumber> numbers)
    {
        json.WriteNumber("all", numbers.Count);
        json.WriteStartObject("byBasis");
        foreach (var basis in Words.All<Basis>())
        {
            json.WriteNumber(basis, numbers.Count(n => n.Basis is { } b && Words.Of(b) == basis));
        }

        json.WriteEndObject();
    }

    private static void Sources(Utf8JsonWriter json, IEnumerable<DataNumber> numbers)
    {
        json.WriteStartArray("sources");
        foreach (var source in numbers.GroupBy(n => (n.Basis, n.Source)).OrderBy(g => g.Key))
        {
            json.WriteStartObject();
            json.WriteString("source", source.Key.Source);
            json.WriteString("basis", source.Key.Basis is { } basis ? Words.Of(basis) : null);
            json.WriteNumber("numbers", source.Count());
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Libraries(Utf8JsonWriter json, AboutFacts facts)
    {
        json.WriteStartArray("libraries");
        foreach (var library in facts.Libraries)
        {
            json.WriteStartObject();
            json.WriteString("name", library.Name);
            json.WriteString("version", library.Version);
            json.WriteString("licence", library.Licence);
            json.WriteString("copyright", library.Copyright);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
