using System.Globalization;
using System.Text.Json.Nodes;
using ToiletAid.App.Files;
using ToiletAid.App.Stock;
using ToiletAid.App.Wording;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Fitting;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Articles;

/// <summary>Keeps an article in the clinic's own stock: what was found out over the values of its kind.</summary>
public static class ArticleStock
{
    /// <summary>Puts the article into a file under an id of its own.</summary>
    /// <param name="path">Path of the file, which is good or not there.</param>
    /// <param name="facts">What is known; its kind is built in.</param>
    /// <param name="day">Day of measuring.</param>
    /// <returns>The id, and what is wrong with the whole; nothing when it was written.</returns>
    /// <exception cref="IOException">It could not be written; nothing was changed.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; nothing was changed.</exception>
    public static (string Id, IReadOnlyList<Issue> Issues) Keep(string path, ArticleFacts facts, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var kinds = BuiltIn.Aids();
        string id = FreeId(path, kinds, facts.Kind.Id);
        return (id, StockFile.Put(path, Json(kinds, facts, id, day), kinds));
    }

    /// <summary>The article in the shape of the catalogue file.</summary>
    /// <param name="kinds">The built-in kinds.</param>
    /// <param name="facts">What is known.</param>
    /// <param name="id">Its id.</param>
    /// <param name="day">Day of measuring.</param>
    public static JsonObject Json(AidCatalogue kinds, ArticleFacts facts, string id, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(kinds);
        ArgumentNullException.ThrowIfNull(facts);
        var measuring = new AidMeasuring(kinds);
        measuring.Submit(facts.Kind.Id);
        measuring.Submit(id);
        measuring.Submit($"{kinds.Aids.Single(a => a.Id == facts.Kind.Id).Name}, article {id}");
        while (!measuring.IsDone)
        {
            if (facts.Numbers.Where(n => measuring.CurrentPath is { } path && Measurements.Of(n.Key).Path.SequenceEqual(path)).Select(n => (KeyValuePair<ArticleTrait, double>?)n).FirstOrDefault() is { } number)
            {
                var unit = TraitText.UnitOf(number.Key);
                string amount = unit.FromSi(number.Value).ToString("0.######", CultureInfo.InvariantCulture);
                measuring.Submit(unit.Symbol == "money" ? amount : $"{amount} {unit.Symbol}");
            }
            else
            {
                measuring.Unknown();
            }
        }

        using var text = new StringWriter { NewLine = "\n" };
        KnowledgeText.Copy("aids.json", text);
        var aid = measuring.Result(JsonNode.Parse(text.ToString())!, day);
        Features(aid, facts.Features.Aggregate(kinds.Aids.Single(a => a.Id == facts.Kind.Id), (a, f) => f.Key.With(a, f.Value)));
        return aid;
    }

    private static void Features(JsonObject json, Aid aid)
    {
        if (json.ContainsKey("shape"))
        {
            json["shape"] = Words.Of(aid.Shape);
        }

        json["tip"] = Words.Of(aid.Tip);
        json["addOns"] = Strings(aid.AddOns);
        json["materials"] = Strings(aid.Materials);
        foreach (var (step, at) in aid.Operations.Select((o, i) => (o, i)))
        {
            var operation = json["operations"]![at]!.AsObject();
            operation["hands"] = step.Hands;
            operation["fine"] = Words.Of(step.Fine);
            operation["grasps"] = Strings(step.Grasps.Select(g => Words.Of(g)));
            operation["againstTheBody"] = step.AgainstTheBody;
            if (step.Act is { } act)
            {
                operation["act"] = Words.Of(act);
            }
        }
    }

    private static JsonArray Strings(IEnumerable<string> words) => [.. words.Select(w => (JsonNode)JsonValue.Create(w))];

    private static string FreeId(string path, AidCatalogue kinds, string kind)
    {
        var taken = File.Exists(path) && new StockReader(kinds).ReadFile(path) is { Value: { } stock } ? stock.Catalogue.Aids.Select(a => a.Id).ToHashSet(StringComparer.Ordinal) : [];
        return Enumerable.Range(1, taken.Count + 1).Select(n => string.Create(CultureInfo.InvariantCulture, $"{kind}-{n}")).First(id => !taken.Contains(id));
    }
}
