using System.Text.Json.Nodes;
using ToiletAid.App.Files;
using ToiletAid.App.Origins;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAidTui.Commands.About;

/// <summary>The facts as JSON.</summary>
internal static class AboutJson
{
    internal static JsonObject Of(AboutFacts facts) => new()
    {
        ["version"] = facts.Version,
        ["data"] = facts.Knowledge,
        ["licence"] = AboutFacts.Licence,
        ["runtime"] = AboutFacts.Runtime,
        ["machine"] = AboutFacts.Machine,
        ["numbers"] = new JsonObject
        {
            ["all"] = facts.Numbers.Length,
            ["byBasis"] = ByBasis(facts.Numbers),
            ["files"] = JsonText.Nodes(facts.Numbers.GroupBy(n => n.File).Select(f => new JsonObject { ["file"] = f.Key, ["all"] = f.Count(), ["byBasis"] = ByBasis([.. f]) })),
        },
        ["sources"] = JsonText.Nodes(facts.Numbers.GroupBy(n => (n.Basis, n.Source)).OrderBy(g => g.Key).Select(g => new JsonObject
        {
            ["source"] = g.Key.Source,
            ["basis"] = g.Key.Basis is { } basis ? Words.Of(basis) : null,
            ["numbers"] = g.Count(),
        })),
        ["libraries"] = JsonText.Nodes(facts.Libraries.Select(l => new JsonObject { ["name"] = l.Name, ["version"] = l.Version, ["licence"] = l.Licence, ["copyright"] = l.Copyright })),
    };

    private static JsonObject ByBasis(IReadOnlyCollection<DataNumber> numbers) =>
        new(Words.All<Basis>().Select(basis => KeyValuePair.Create(basis, (JsonNode?)numbers.Count(n => n.Basis is { } b && Words.Of(b) == basis))));
}
