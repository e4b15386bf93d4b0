using System.Globalization;
using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.App.Teaching;
using ToiletAid.Benchmarks.Interviews;
using ToiletAid.Core.Person;
using ToiletAid.Core.Teaching;

namespace ToiletAid.Benchmarks.Teaching;

/// <summary>Counts over simulated people which answers put a kind first or rule it out, as the data file of the program.</summary>
internal static class TeachingCount
{
    internal static void Run(Arguments arguments)
    {
        var knowledge = BuiltIn.Knowledge();
        var people = SimulatedPerson.Of(knowledge, knowledge.People, arguments.Seed, arguments.People)
            .Select(p => new SeenPerson(knowledge.Questions, p.Answers, p.Advice))
            .ToList();
        var tally = new TeachingTally(knowledge.Questions, people);
        using var output = Console.OpenStandardOutput();
        using var json = new Utf8JsonWriter(output, new() { Indented = true, NewLine = "\n" });
        json.WriteStartObject();
        json.WriteNumber("format", 1);
        json.WriteString("basis", "computed");
        json.WriteString("source", string.Create(CultureInfo.InvariantCulture, $"dotnet run -c Release --project tests/ToiletAid.Benchmarks -- teaching --seed {arguments.Seed} --people {arguments.People}"));
        json.WriteString("data", CountedData.Hash());
        json.WriteNumber("people", people.Count);
        json.WriteStartArray("kinds");
        foreach (var aid in knowledge.Catalogue.Aids)
        {
            var kind = tally.Of(aid.Id);
            json.WriteStartObject();
            json.WriteString("kind", kind.Kind);
            json.WriteNumber("first", kind.First);
            json.WriteNumber("ruledOut", kind.RuledOut);
            Write(json, "goodFor", kind.GoodFor);
            Write(json, "near", kind.Near);
            json.WriteStartArray("others");
            foreach (var other in kind.Others)
            {
                json.WriteStartObject();
                json.WriteString("kind", other.Kind);
                json.WriteNumber("first", other.First);
                json.WriteString("because", other.Because);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            Write(json, "notFor", kind.NotFor);
            Write(json, "behind", kind.Behind);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.Flush();
        Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{people.Count} people, {people.Count(p => p.IsOfferedNothing)} of them offered nothing"));
    }

    private static void Write(Utf8JsonWriter json, string name, IEnumerable<TeachingStatement> statements)
    {
        json.WriteStartArray(name);
        foreach (var statement in statements)
        {
            json.WriteStartObject();
            json.WriteString("question", statement.Question);
            json.WriteStartArray("options");
            foreach (string option in statement.Options)
            {
                json.WriteStringValue(option);
            }

            json.WriteEndArray();
            json.WriteString("by", Words.Of(statement.By));
            json.WriteString("because", statement.Because);
            json.WriteStartObject("count");
            json.WriteNumber("with", statement.Count.With);
            json.WriteNumber("hitsWith", statement.Count.HitsWith);
            json.WriteNumber("without", statement.Count.Without);
            json.WriteNumber("hitsWithout", statement.Count.HitsWithout);
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
