using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Statistics;

namespace ToiletAid.App.Clinics;

/// <summary>Reads a clinic's own coefficients and says everything that is wrong with them.</summary>
/// <param name="knowledge">Limits.</param>
internal sealed class ClinicReader(KnowledgeBase knowledge)
{
    private const int LongestId = 64;
    private const int MostPeople = 100_000_000;

    private static readonly JsonDocumentOptions Strict = new() { MaxDepth = 8, AllowDuplicateProperties = false };

    /// <summary>Reads text.</summary>
    /// <param name="utf8">The text, UTF-8.</param>
    internal Checked<ClinicCoefficients> Read(ReadOnlyMemory<byte> utf8)
    {
        try
        {
            using var document = JsonDocument.Parse(utf8, Strict);
            var issues = new List<Issue>();
            var root = new JsonWalker(document.RootElement, string.Empty, issues);
            var clinic = Clinic(root, utf8.Span);
            return clinic is not null && issues.Count == 0 ? Checked<ClinicCoefficients>.Good(clinic) : Checked<ClinicCoefficients>.Bad(issues);
        }
        catch (JsonException e)
        {
            return Checked<ClinicCoefficients>.Bad(JsonText.Broken(e, "save it again with toiletaid outcomes --save"));
        }
        catch (InvalidOperationException)
        {
            return Checked<ClinicCoefficients>.Bad(new Issue("not-utf-8", string.Empty, "it has characters that are not UTF-8, save it again with toiletaid outcomes --save"));
        }
    }

    private ClinicCoefficients? Clinic(JsonWalker root, ReadOnlySpan<byte> file)
    {
        if (root.Element.ValueKind != JsonValueKind.Object || root.Member("holds")?.Element is not { ValueKind: JsonValueKind.String } holds || holds.GetString() != ClinicFile.Holds)
        {
            root.Fault("wrong-file", "it is not a file of a clinic's own values, make one with toiletaid outcomes --save");
            return null;
        }

        root.OnlyMembers("format", "hash", "holds", "data", "people", "tries", "kinds");
        if (Number(root, "format", 1, 1_000_000, whole: true) is { } format && (int)format != ClinicFile.Format)
        {
            root.Member("format")!.Value.Fault("newer-format", string.Create(CultureInfo.InvariantCulture, $"format {format} is not one that this program reads, use {ClinicFile.Format}"));
        }

        string? hash = root.Required("hash")?.Text();
        if (hash is not null && (!ContentHash.IsOne(hash) || ContentHash.Check(file, hash) != Seal.Whole))
        {
            root.Member("hash")!.Value.Fault("changed", "the file was changed after it was saved, restore it from a copy or save it again with toiletaid outcomes --save");
        }

        string? data = root.Required("data")?.Text();
        double? people = Number(root, "people", 0, MostPeople, whole: true), tries = Number(root, "tries", 0, MostPeople, whole: true);
        double least = knowledge.Evidence.Value(EvidenceIds.ClinicLeastPeople);
        if (people < least)
        {
            root.Member("people")!.Value.Fault("too-few", string.Create(CultureInfo.InvariantCulture, $"it rests on {people} people, which tells less than the built-in values, wait until there are {least}"));
        }

        ImmutableArray<KindCoefficients> kinds = root.Required("kinds") is { } list ? Kinds(list) : [];
        return hash is null || data is null || people is null || tries is null || kinds.IsEmpty || root.Issues.Count > 0 ? null
            : new() { Checksum = ClinicFile.Shown(hash), Data = data, People = (int)people, Tries = (int)tries, Kinds = kinds };
    }

    private ImmutableArray<KindCoefficients> Kinds(JsonWalker list)
    {
        JsonWalker[] items = [.. list.Items()];
        ImmutableArray<KindCoefficients> kinds = [.. items.Select(Kind).OfType<KindCoefficients>()];
        if (list.Issues.Count == 0)
        {
            if (kinds.IsEmpty || kinds[^1].Aid is not null || kinds.Count(k => k.Aid is null) != 1)
            {
                list.Fault("no-others", "the last of the kinds has aid null and stands for every other kind, restore it");
            }

            foreach (var twice in kinds.GroupBy(k => k.Aid).Where(g => g.Count() > 1))
            {
                list.Fault("twice", $"{twice.Key ?? "null"} appears twice, keep one of them");
            }
        }

        return kinds;
    }

    private KindCoefficients? Kind(JsonWalker at)
    {
        at.OnlyMembers("aid", "people", "failed", "expected", "factor", "low", "high", "why", "shifts");
        string? aid = at.Required("aid") is { Element.ValueKind: not JsonValueKind.Null } a ? Id(a) : null;
        double? people = People(at), failed = Number(at, "failed", 0, people ?? MostPeople, whole: true), expected = Number(at, "expected", 0, people ?? MostPeople);
        var limits = knowledge.Evidence[EvidenceIds.ClinicFactor];
        double? factor = Number(at, "factor", limits.Low, limits.High);
        var range = Range(at, limits.Low, limits.High, factor);
        at.Required("why")?.Text();
        CriterionShift?[] shifts = at.Required("shifts") is { } list ? [.. list.Items().Select(Shift)] : [];
        return people is null || failed is null || expected is null || factor is null || range is null || shifts.Contains(null) ? null : new()
        {
            Aid = aid,
            People = (int)people,
            Failed = (int)failed,
            Expected = expected.Value,
            Factor = factor.Value,
            Range = range.Value,
            Shifts = [.. shifts.OfType<CriterionShift>()],
        };
    }

    private CriterionShift? Shift(JsonWalker at)
    {
        at.OnlyMembers("criterion", "people", "predicted", "seen", "by", "low", "high", "why");
        Criterion? criterion = null;
        if (at.Required("criterion") is { } c && c.Text() is { } word && (criterion = Words.Find<Criterion>(word)) is null)
        {
            c.Fault("unknown-word", $"{c.Quote()} is not a criterion, use {string.Join(", ", Words.All<Criterion>())}");
        }

        var limits = knowledge.Evidence[EvidenceIds.ClinicShift];
        double? people = People(at), predicted = Number(at, "predicted", 0, 1), seen = Number(at, "seen", 0, 1), by = Number(at, "by", limits.Low, limits.High);
        var range = Range(at, limits.Low, limits.High, by);
        at.Required("why")?.Text();
        return criterion is null || people is null || predicted is null || seen is null || by is null || range is null
            ? null : new(criterion.Value, (int)people, predicted.Value, seen.Value, by.Value, range.Value);
    }

    /// <summary>How many people a cell rests on: none, or enough that nobody is told apart.</summary>
    private double? People(JsonWalker at)
    {
        double? people = Number(at, "people", 0, MostPeople, whole: true);
        double least = knowledge.Evidence.Value(EvidenceIds.ClinicLeastCell);
        if (people > 0 && people < least)
        {
            at.Member("people")!.Value.Fault("small-cell", string.Create(CultureInfo.InvariantCulture, $"{people} people could be told apart, a cell has none or at least {least}, save it again with toiletaid outcomes --save"));
        }

        return people;
    }

    private static Interval? Range(JsonWalker at, double least, double most, double? middle)
    {
        double? low = Number(at, "low", least, middle ?? most), high = Number(at, "high", middle ?? least, most);
        return low is null || high is null ? null : new(low.Value, high.Value);
    }

    private static string? Id(JsonWalker at)
    {
        if (at.Text() is { } id)
        {
            if (id.Length is > 0 and <= LongestId && id.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-'))
            {
                return id;
            }

            at.Fault("unknown-id", $"{at.Quote()} is not an id, use the id of a kind of aid such as long-clamp, or null");
        }

        return null;
    }

    private static double? Number(JsonWalker at, string member, double low, double high, bool whole = false)
    {
        if (at.Required(member) is not { } m)
        {
            return null;
        }

        if (m.Element.ValueKind == JsonValueKind.Number && m.Element.TryGetDouble(out double number) && number >= low && number <= high && (!whole || number == Math.Floor(number)))
        {
            return number;
        }

        m.Fault("out-of-range", string.Create(CultureInfo.InvariantCulture, $"{m.Quote()} should be a {(whole ? "whole " : string.Empty)}number from {low} to {high} without quotes"));
        return null;
    }
}
