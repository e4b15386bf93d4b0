using System.Collections.Immutable;
using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.Core.Catalogue;

namespace ToiletAid.App.Stock;

/// <summary>Reads a clinic's own stock and says everything that is wrong with it.</summary>
/// <param name="below">The catalogue that it will lie over: its ids may be named in the file.</param>
public sealed class StockReader(AidCatalogue below)
{
    /// <summary>Largest file that is read, bytes. The built-in catalogue takes about a fiftieth of it.</summary>
    public const int MostBytes = 4 * 1024 * 1024;

    private const int Format = 1;

    /// <summary>A clinic writes the file by hand, so comments and a comma too many are taken.</summary>
    internal static readonly JsonDocumentOptions Lenient =
        new() { MaxDepth = 16, AllowDuplicateProperties = false, CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    /// <summary>Reads a file.</summary>
    /// <param name="path">Path of a regular file.</param>
    public Checked<ClinicStock> ReadFile(string path)
    {
        var read = RegularFile.Read(path, MostBytes, "catalogue");
        return read.TryGet(out byte[]? bytes) ? Read(bytes) : Checked<ClinicStock>.Bad(read.Issues);
    }

    /// <summary>Reads text.</summary>
    /// <param name="utf8">The text, UTF-8.</param>
    public Checked<ClinicStock> Read(ReadOnlyMemory<byte> utf8)
    {
        if (TextForm.Fault(utf8.Span) is { } form)
        {
            return Checked<ClinicStock>.Bad(form);
        }

        utf8 = JsonText.WithoutMark(utf8);
        try
        {
            using var document = JsonDocument.Parse(utf8, Lenient);
            var issues = new List<Issue>();
            var root = new JsonWalker(document.RootElement, string.Empty, issues);
            Check(root);
            if (issues.Count > 0)
            {
                return Checked<ClinicStock>.Bad(issues);
            }

            var file = JsonSerializer.Deserialize(utf8.Span, KnowledgeJson.Default.CatalogueFile)!;
            return Checked<ClinicStock>.Good(new(file));
        }
        catch (JsonException e)
        {
            return Checked<ClinicStock>.Bad(JsonText.Broken(e, "mend it here"));
        }
        catch (InvalidOperationException)
        {
            // A string with half a surrogate pair or bytes that are not UTF-8 is found only when it is taken out.
            return Refused("not-utf-8", "it has characters that are not UTF-8, save it as UTF-8");
        }
    }

    private void Check(JsonWalker root)
    {
        if (root.Element.ValueKind != JsonValueKind.Object)
        {
            root.Fault("wrong-kind", "a catalogue is an object in braces with format, aids, addOns and, where they are known, prices");
            return;
        }

        root.OnlyMembers("format", "aids", "addOns", "prices", "basis", "source");
        if (root.Required("format") is { } format && !(format.Element.ValueKind == JsonValueKind.Number && format.Element.TryGetInt32(out int number) && number == Format))
        {
            format.Fault("unknown-format", $"{format.Quote()} is not a format that this program reads, use {Format}");
        }

        MemberCheck.Origin(root, required: false);
        MemberCheck.Text(root, "source", required: false);
        var aids = root.Required("aids")?.Items().ToImmutableArray() ?? [];
        var addOns = root.Required("addOns")?.Items().ToImmutableArray() ?? [];
        var names = new StockNames(
            [.. below.Aids.Select(a => a.Id), .. aids.Select(Id).OfType<string>()],
            [.. below.AddOns.Select(a => a.Id), .. addOns.Select(Id).OfType<string>()],
            [.. below.Aids.Select(a => a.Id)]);
        Twice(aids);
        Twice(addOns);
        foreach (var aid in aids)
        {
            AidCheck.Check(aid, names);
        }

        foreach (var addOn in addOns)
        {
            AddOnCheck.Check(addOn);
        }

        if (root.Member("prices") is { } prices)
        {
            Prices(prices);
        }
    }

    private static void Prices(JsonWalker prices)
    {
        if (prices.Element.ValueKind != JsonValueKind.Object)
        {
            prices.Fault("wrong-kind", $"{prices.Quote()} should be an object with roll, wipe or waterCubicMetre");
            return;
        }

        prices.OnlyMembers("roll", "wipe", "waterCubicMetre");
        MemberCheck.Sourced(prices, "roll", required: false);
        MemberCheck.Sourced(prices, "wipe", required: false);
        MemberCheck.Sourced(prices, "waterCubicMetre", required: false);
    }

    private static void Twice(ImmutableArray<JsonWalker> items)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var item in items)
        {
            if (Id(item) is { } id && !seen.Add(id))
            {
                item.Fault("twice", $"{id} appears twice, keep one of them");
            }
        }
    }

    private static string? Id(JsonWalker item) =>
        item.Member("id") is { Element.ValueKind: JsonValueKind.String } id ? id.Element.GetString() : null;

    private static Checked<ClinicStock> Refused(string code, string message) => Checked<ClinicStock>.Bad(new Issue(code, string.Empty, message));
}
