using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using ToiletAid.App.Files;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.Benchmarks.Estimates;

/// <summary>The built-in data that the ranking of somebody who answered everything uses, with one estimate at an end of its range.</summary>
internal sealed class RangedData
{
    private static readonly string[] Files = ["aids.json", "body.json", "evidence.json", "hand.json", "supplies.json"];

    /// <summary>Numbers of asking, trials and clinics, which the ranking does not use.</summary>
    private static readonly string[] Elsewhere = ["planner.", "trial.", "clinic.", "caseload.", "change.", "fitting."];

    private readonly KnowledgeBase _builtIn;
    private readonly Dictionary<string, byte[]> _files = [];

    internal RangedData(KnowledgeBase builtIn)
    {
        _builtIn = builtIn;
        var estimates = new List<Estimate>();
        foreach (string file in Files)
        {
            using var stream = typeof(BuiltIn).Assembly.GetManifestResourceStream(file)!;
            using var bytes = new MemoryStream();
            stream.CopyTo(bytes);
            _files[file] = bytes.ToArray();
            estimates.AddRange(Estimate.In(file, Parse(file)).Where(e => !Elsewhere.Any(x => e.Place.StartsWith(x, StringComparison.Ordinal))));
        }

        Estimates = estimates;
    }

    internal IReadOnlyList<Estimate> Estimates { get; }

    /// <summary>What would be known if an estimate were known to be <paramref name="end"/>: its range is that alone.</summary>
    /// <exception cref="JsonException">The data would contradict themselves.</exception>
    /// <exception cref="ArgumentException">The same.</exception>
    internal KnowledgeBase With(Estimate estimate, double end)
    {
        var root = Parse(estimate.File);
        estimate.Fix(root, end);
        byte[] bytes = Encoding.UTF8.GetBytes(root.ToJsonString());
        switch (estimate.File)
        {
            case "aids.json":
                var catalogue = JsonSerializer.Deserialize(bytes, KnowledgeJson.Default.CatalogueFile)!;
                return _builtIn with { Catalogue = new(catalogue.Aids, catalogue.AddOns) };
            case "body.json":
                return _builtIn with { Body = BodyTablesReader.Read(new MemoryStream(bytes)) };
            case "evidence.json":
                return _builtIn with { Evidence = new(Numbers(bytes)) };
            case "hand.json":
                return _builtIn with { Hand = new(_builtIn.Hand.Norms, new(new(Numbers(bytes)))) };
            case "supplies.json":
                var supplies = BuiltInSupplies.Of(JsonSerializer.Deserialize(bytes, KnowledgeJson.Default.SuppliesFile)!);
                return _builtIn with { Paper = supplies.Paper, Water = supplies.Water, Prices = supplies.Prices };
            default:
                throw new ArgumentException($"{estimate.File} is not among the files that are looked at", nameof(estimate));
        }
    }

    private static ImmutableSortedDictionary<string, Sourced> Numbers(byte[] bytes) => JsonSerializer.Deserialize(bytes, KnowledgeJson.Default.EvidenceFile)!.Numbers;

    private JsonNode Parse(string file) => JsonNode.Parse(_files[file])!;
}
