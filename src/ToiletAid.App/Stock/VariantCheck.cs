using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Stock;

/// <summary>Checks the variants of an aid of a catalogue: each has an id, names and something that it replaces.</summary>
internal static class VariantCheck
{
    private static readonly string[] Numbers =
        ["length", "tipWidth", "mass", "foldedLength", "coverage", "rubbing", "soilTouched", "easyToClean", "noticeable", "price", "monthlyConsumables"];

    private static readonly string[] Replaced = [.. Numbers, "shape", "tip", "operations", "steps", "materials"];

    /// <summary>Checks the variants, where there are any.</summary>
    public static void Check(JsonWalker aid, ReachKind? reach)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var variant in aid.Member("variants")?.Items() ?? [])
        {
            if (variant.Element.ValueKind != JsonValueKind.Object)
            {
                variant.Fault("wrong-kind", $"{variant.Quote()} should be a variant in braces");
                continue;
            }

            Members(aid, variant, reach);
            if (variant.Member("id") is { Element.ValueKind: JsonValueKind.String } id && !seen.Add(id.Element.GetString()!))
            {
                variant.Fault("twice", $"{id.Quote()} appears twice among the variants, keep one of them");
            }
        }
    }

    private static void Members(JsonWalker aid, JsonWalker variant, ReachKind? reach)
    {
        variant.OnlyMembers(["id", "name", "has", .. Replaced]);
        MemberCheck.Id(variant);
        MemberCheck.Text(variant, "name");
        MemberCheck.Text(variant, "has");
        if (!Replaced.Any(m => variant.Member(m) is not null))
        {
            variant.Fault("no-difference", "it differs in nothing from its kind, add what is different, such as tipWidth");
        }

        foreach (string number in Numbers)
        {
            if (MemberCheck.Sourced(variant, number, required: false) is 0 && number == "length" && reach is ReachKind.Handle or ReachKind.Jet)
            {
                variant.Member(number)!.Value.Fault("out-of-range", "a handle has a length above 0, measure it");
            }
        }

        MemberCheck.Word<AidShape>(variant, "shape", required: false);
        MemberCheck.Word<Tip>(variant, "tip", required: false);
        MemberCheck.Whole(variant, "steps", required: false);
        if (variant.Member("materials") is not null)
        {
            MemberCheck.Among(variant, "materials", AidCheck.Materials, "a material that an allergy is asked about");
        }

        string[] kinds = [.. (aid.Member("operations")?.Items() ?? []).Select(Kind).OfType<string>()];
        foreach (var operation in variant.Member("operations")?.Items() ?? [])
        {
            AidCheck.Operation(operation);
            if (Kind(operation) is { } kind && Words.Find<OperationKind>(kind) is not null && !kinds.Contains(kind))
            {
                operation.Fault("unknown-name", $"the kind has no step {kind} that this could replace, add it there or take it out here");
            }
        }
    }

    private static string? Kind(JsonWalker operation) =>
        operation.Element.ValueKind == JsonValueKind.Object && operation.Member("kind") is { Element.ValueKind: JsonValueKind.String } kind ? kind.Element.GetString() : null;
}
