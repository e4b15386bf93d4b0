using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Nodes;
using ToiletAid.App.Files;
using ToiletAid.App.Sessions;
using ToiletAid.App.Typed;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Stock;

/// <summary>Guided measuring of one aid: which kind it resembles, what it is called, then number by number. What is not measured keeps the kind's value.</summary>
/// <param name="catalogue">The kinds.</param>
public sealed class AidMeasuring(AidCatalogue catalogue) : IMeasuring
{
    private const int Opening = 4;
    private const int ShapeStep = 3;
    private const int Decimals = 4;

    private readonly Dictionary<string, TypedQuantity> _measured = new(StringComparer.Ordinal);
    private ImmutableArray<Measurement> _measurements = [];
    private Aid? _kind;
    private string? _id;
    private string? _name;
    private AidShape? _shape;

    /// <summary>Number of the current step, from 0.</summary>
    public int Position { get; private set; }

    /// <summary>Number of all steps; until the kind is chosen only the opening ones are known.</summary>
    public int Total => Opening + _measurements.Length;

    /// <summary>True when nothing is left to ask.</summary>
    public bool IsDone => Position >= Total;

    /// <summary>Number of measured numbers.</summary>
    public int Count => _measured.Count;

    private bool HasShape => _kind?.Reach is ReachKind.Handle or ReachKind.Jet;

    /// <summary>Where the number that is asked for stands in the aid's JSON; null before the numbers and after them.</summary>
    internal string[]? CurrentPath => Current?.Path;

    private Measurement? Current => Position >= Opening && !IsDone ? _measurements[Position - Opening] : null;

    /// <summary>What is asked, as lines.</summary>
    public IEnumerable<string> Asking() => Position switch
    {
        0 => ["Which kind does it resemble most?", .. catalogue.Aids.Select((a, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1}. {a.Name}"))],
        1 => ["Which short id should it have?"],
        2 => ["What should it be called? Describe it in your own words, without a brand."],
        3 => ["Is it straight or curved?"],
        _ => [$"{Current!.Name}. {(Current.IsPrice ? "Take it from" : "Measure it with")} {Current.Tool}."],
    };

    /// <summary>What may be typed, short.</summary>
    public string Wanted => Position switch
    {
        0 => $"Number from 1 to {catalogue.Aids.Length}",
        1 => $"Id, or unknown to replace {_kind!.Id}",
        2 => "Name, or unknown to keep the kind's",
        3 => "straight or curved, or unknown",
        _ => $"{Spoken.Capital(Current!.Asked.Units[0].Name)}, or unknown",
    };

    /// <summary>How to find out, as lines.</summary>
    public IEnumerable<string> Help() => Position switch
    {
        0 => ["Values that are not measured are taken from that kind."],
        1 => ["Lower-case words with hyphens between them, such as long-clamp-ward-3. The id of a built-in kind replaces that kind."],
        2 => ["It is read out wherever the aid is recommended."],
        3 => ["A straight aid cannot follow the body, so it has to be longer. One that can be set to a curve counts as curved."],
        _ => [Current!.How, $"Type the number with its unit if it is not {Current.Asked.Units[0].Name}. Unknown keeps the value of the kind."],
    };

    /// <summary>Takes an answer.</summary>
    public Reply Submit(string text)
    {
        string typed = text.Trim();
        return Position switch
        {
            0 => Kind(typed),
            1 => MemberCheck.IdFault(typed) is { } fault ? Refused(Spoken.Capital(fault) + ".") : Taken(() => _id = typed, $"Id: {typed}."),
            2 => typed.Length is 0 or > 80 || ReadableText.Fault(typed) is not null ? Refused("A name has 1 to 80 letters that can be read aloud.") : Taken(() => _name = typed, $"Name: {typed}."),
            3 => Words.Find<AidShape>(typed.ToLowerInvariant()) is { } shape ? Taken(() => _shape = shape, $"Shape: {Words.Of(shape)}.") : Refused("Type straight or curved."),
            _ => Number(typed),
        };
    }

    /// <summary>Keeps the kind's value.</summary>
    public Reply Unknown()
    {
        switch (Position)
        {
            case 0: return Refused("The kind must be chosen. Type its number.");
            case 1: _id = null; break;
            case 2: _name = null; break;
            case 3: _shape = null; break;
            default: _measured.Remove(Current!.Name); break;
        }

        return Taken(() => { }, "The value of the kind is kept.");
    }

    /// <summary>One step back; false at the first.</summary>
    public bool Back()
    {
        if (Position == 0)
        {
            return false;
        }

        Position -= Position == ShapeStep + 1 && !HasShape ? 2 : 1;
        return true;
    }

    /// <summary>What was measured, one a line.</summary>
    public IEnumerable<string> Summary() =>
        _measurements.Where(m => _measured.ContainsKey(m.Name)).Select(m => $"{m.Name}: {Spoken.Amount(_measured[m.Name].Value, _measured[m.Name].Unit)}.");

    /// <summary>The measured aid, in the shape of the catalogue file.</summary>
    /// <param name="kinds">The catalogue file that the kind stands in.</param>
    /// <param name="day">Day of measuring.</param>
    public JsonObject Result(JsonNode kinds, DateOnly day)
    {
        var aid = kinds["aids"]!.AsArray().Single(a => (string)a!["id"]! == _kind!.Id)!.DeepClone().AsObject();
        // One article is no variant of a kind and has none.
        aid.Remove("variants");
        aid["id"] = _id ?? _kind!.Id;
        if (_id is { } own && !catalogue.Aids.Any(a => a.Id == own))
        {
            aid.Insert(1, "articleOf", _kind!.Id);
        }

        aid["name"] = _name ?? _kind!.Name;
        if (_shape is { } shape)
        {
            aid["shape"] = Words.Of(shape);
        }

        foreach (var m in _measurements.Where(m => _measured.ContainsKey(m.Name)))
        {
            Put(aid, m, Sourced(m, _measured[m.Name], day));
        }

        Flows(aid);
        return aid;
    }

    private Reply Kind(string typed)
    {
        var kind = int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            ? catalogue.Aids.ElementAtOrDefault(number - 1)
            : catalogue.Aids.FirstOrDefault(a => a.Id == typed);
        if (kind is null)
        {
            return Refused($"Type a number from 1 to {catalogue.Aids.Length}.");
        }

        if (kind != _kind)
        {
            _measured.Clear();
            _measurements = Measurements.Of(kind);
            _shape = null;
        }

        return Taken(() => _kind = kind, $"Kind: {kind.Name}.");
    }

    private Reply Number(string typed)
    {
        var current = Current!;
        var reading = QuantityReader.Read(typed, current.Asked);
        if (current.Name == Measurements.Strong && _measured.TryGetValue(Measurements.Gentle, out var gentle) && reading.Quantity?.Si < gentle.Si)
        {
            return Refused("The strong flow is less than the gentle one. Measure again, or go back and change the gentle one.");
        }

        return reading.Quantity is { } quantity
            ? Taken(() => _measured[current.Name] = quantity, $"{current.Name}: {Spoken.Amount(quantity.Value, quantity.Unit)}.")
            : Refused(reading.Refusal!);
    }

    private Reply Taken(Action keep, string text)
    {
        keep();
        Position += Position == ShapeStep - 1 && !HasShape ? 2 : 1;
        return new(true, text, string.Empty);
    }

    private Reply Refused(string text) => new(false, text, Wanted);

    /// <summary>The number with the error of its tool, kept within what is plausible.</summary>
    private static JsonObject Sourced(Measurement m, TypedQuantity quantity, DateOnly day)
    {
        double error = Math.Max(m.LeastError, m.ErrorShare * quantity.Si);
        double low = Math.Max(quantity.Si - error, Math.Min(m.Asked.Low, quantity.Si)), high = Math.Min(quantity.Si + error, Math.Max(m.Asked.High, quantity.Si));
        return new()
        {
            ["value"] = quantity.Value,
            ["low"] = Math.Min(Math.Round(quantity.Unit.FromSi(low), Decimals), quantity.Value),
            ["high"] = Math.Max(Math.Round(quantity.Unit.FromSi(high), Decimals), quantity.Value),
            ["unit"] = quantity.Unit.Symbol,
            ["basis"] = Words.Of(Basis.Measured),
            ["source"] = $"{(m.IsPrice ? "Taken here from" : "Measured here with")} {m.Tool}, {IsoDay.Of(day)}.",
        };
    }

    /// <summary>A kind's flow that was not measured gives way to the one that was, so that gentle stays no more than strong.</summary>
    private void Flows(JsonObject aid)
    {
        if (aid["water"] is { } water && (_measured.ContainsKey(Measurements.Gentle) != _measured.ContainsKey(Measurements.Strong)))
        {
            bool gentle = _measured.ContainsKey(Measurements.Gentle);
            double kept = (gentle ? _kind!.Water!.StrongFlow : _kind!.Water!.GentleFlow).Value, measured = _measured[gentle ? Measurements.Gentle : Measurements.Strong].Si;
            if (gentle ? measured > kept : measured < kept)
            {
                water[gentle ? "strongFlow" : "gentleFlow"] = water[gentle ? "gentleFlow" : "strongFlow"]!.DeepClone();
            }
        }
    }

    private static void Put(JsonObject aid, Measurement m, JsonObject value)
    {
        JsonNode at = aid;
        foreach (string step in m.Path[..^1])
        {
            at = at is JsonArray operations ? operations.First(o => (string)o!["kind"]! == step)! : at[step]!;
        }

        at[m.Path[^1]] = value;
    }
}
