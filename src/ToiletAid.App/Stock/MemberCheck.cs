using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.App.Typed;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Stock;

/// <summary>Checks of single members of a catalogue; each notes what is wrong where it stands.</summary>
internal static class MemberCheck
{
    /// <summary>A quantity with its origin, in the range of that name and of its dimension.</summary>
    /// <param name="parent">The object that it belongs to.</param>
    /// <param name="name">Its name.</param>
    /// <param name="required">True when it must be there.</param>
    /// <returns>The value in SI when all is well; otherwise null.</returns>
    public static double? Sourced(JsonWalker parent, string name, bool required)
    {
        var (unit, low, high) = StockRanges.Member(name);
        var at = required ? parent.Required(name) : parent.Member(name);
        if (at is not { } member || (!required && member.Element.ValueKind == JsonValueKind.Null))
        {
            return null;
        }

        if (member.Element.ValueKind != JsonValueKind.Object)
        {
            member.Fault("wrong-kind", $"{member.Quote()} should be an object with value, unit, basis and source");
            return null;
        }

        int before = member.Issues.Count;
        member.OnlyMembers("value", "low", "high", "unit", "basis", "source");
        var expected = Units.Find(unit)!;
        var given = Unit(member, expected);
        Origin(member, required: true);
        Text(member, "source");
        double? value = Number(member, "value", required: true), least = Number(member, "low", required: false), most = Number(member, "high", required: false);
        if (given is null || value is not { } v)
        {
            return null;
        }

        if (!((least ?? v) <= v && v <= (most ?? v)))
        {
            member.Fault("not-in-order", $"low {Spoken.Number(least ?? v)} and high {Spoken.Number(most ?? v)} must enclose value {Spoken.Number(v)}");
        }

        foreach (double number in new[] { v, least ?? v, most ?? v }.Distinct())
        {
            // A billionth forgives the rounding of a change of unit at the very ends.
            double here = expected.FromSi(given.ToSi(number));
            if (!(here >= low - 1e-9 && here <= high + 1e-9))
            {
                member.Fault("out-of-range", $"{Spoken.Amount(number, given)} is out of range for {Plain(name)}, which is {Spoken.Number(low)} to {Spoken.Amount(high, expected)}");
                break;
            }
        }

        return member.Issues.Count == before ? given.ToSi(v) : null;
    }

    /// <summary>A text that is not empty.</summary>
    public static string? Text(JsonWalker parent, string name, bool required = true)
    {
        var at = required ? parent.Required(name) : parent.Member(name);
        if (at is not { } member || (!required && member.Element.ValueKind == JsonValueKind.Null))
        {
            return null;
        }

        string? text = member.Text();
        if (text is not null && string.IsNullOrWhiteSpace(text))
        {
            member.Fault("empty", $"{Plain(name)} is empty, write it");
        }
        else if (text is not null && ReadableText.Fault(text) is { } fault)
        {
            member.Fault("not-readable", $"{Plain(name)} {fault}");
        }

        return text;
    }

    /// <summary>What kind of knowledge a number is. A clinic counts nothing over simulated people, so that is none of the choices.</summary>
    public static void Origin(JsonWalker parent, bool required)
    {
        if ((required ? parent.Required("basis") : parent.Member("basis")) is { } member)
        {
            Word(member, Basis.Computed);
        }
    }

    /// <summary>One word of an enum.</summary>
    public static T? Word<T>(JsonWalker parent, string name, bool required)
        where T : struct, Enum
    {
        if ((required ? parent.Required(name) : parent.Member(name)) is not { } member)
        {
            return null;
        }

        return Word<T>(member);
    }

    /// <summary>A list of different words of an enum.</summary>
    public static int WordList<T>(JsonWalker parent, string name)
        where T : struct, Enum
    {
        if (parent.Required(name) is not { } member)
        {
            return 0;
        }

        var seen = new HashSet<T>();
        foreach (var item in member.Items())
        {
            if (Word<T>(item) is { } word && !seen.Add(word))
            {
                item.Fault("twice", $"{Words.Of(word)} appears twice, keep one of them");
            }
        }

        return seen.Count;
    }

    /// <summary>A list of different texts from a fixed set.</summary>
    public static void Among(JsonWalker parent, string name, IReadOnlyList<string> known, string what)
    {
        if (parent.Required(name) is not { } member)
        {
            return;
        }

        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var item in member.Items())
        {
            if (item.Text() is not { } text)
            {
                continue;
            }

            if (!known.Contains(text))
            {
                item.Fault("unknown-name", $"{item.Quote()} is not {what}, use {Spoken.Choice(known)}");
            }
            else if (!seen.Add(text))
            {
                item.Fault("twice", $"{text} appears twice, keep one of them");
            }
        }
    }

    /// <summary>A whole number in the range of that name.</summary>
    public static void Whole(JsonWalker parent, string name, bool required)
    {
        var (low, high) = StockRanges.Count(name);
        if ((required ? parent.Required(name) : parent.Member(name)) is not { } member)
        {
            return;
        }

        if (member.Element.ValueKind != JsonValueKind.Number || !member.Element.TryGetInt32(out int number))
        {
            member.Fault("wrong-kind", $"{member.Quote()} should be a whole number");
        }
        else if (number < low || number > high)
        {
            member.Fault("out-of-range", $"{number} is out of range for {Plain(name)}, which is {low} to {high}");
        }
    }

    /// <summary>True or false, where they are given.</summary>
    public static void Flag(JsonWalker parent, string name)
    {
        if (parent.Member(name) is { Element.ValueKind: not (JsonValueKind.True or JsonValueKind.False) } member)
        {
            member.Fault("wrong-kind", $"{member.Quote()} should be true or false");
        }
    }

    /// <summary>An id in lower-case words with hyphens.</summary>
    public static void Id(JsonWalker parent)
    {
        if (Text(parent, "id") is { Length: > 0 } id && IdFault(id) is { } fault)
        {
            parent.Member("id")!.Value.Fault("not-an-id", fault);
        }
    }

    /// <summary>What is wrong with an id, or null.</summary>
    public static string? IdFault(string id) =>
        id.Length <= 40 && id.Split('-').All(part => part.Length > 0 && part.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c))) && char.IsAsciiLetterLower(id[0])
            ? null
            : "an id has lower-case words with hyphens between them and at most 40 letters, such as long-clamp";

    private static T? Word<T>(JsonWalker member, params ReadOnlySpan<T> but)
        where T : struct, Enum
    {
        string? text = member.Text();
        string[] others = new string[but.Length];
        for (int i = 0; i < but.Length; i++)
        {
            others[i] = Words.Of(but[i]);
        }

        var word = others.Contains(text) ? null : Words.Find<T>(text);
        if (text is not null && word is null)
        {
            member.Fault("unknown-word", $"{member.Quote()} is not known here, use {Spoken.Choice([.. Words.All<T>().Except(others)])}");
        }

        return word;
    }

    private static Unit? Unit(JsonWalker member, Unit expected)
    {
        if (Text(member, "unit") is not { } symbol)
        {
            return null;
        }

        var unit = Units.Find(symbol);
        if (unit is null || unit.Dimension != expected.Dimension || (expected.Dimension == Dimension.Number && unit != expected))
        {
            var possible = Units.All.Where(u => u.Dimension == expected.Dimension && (expected.Dimension != Dimension.Number || u == expected)).Select(u => u.Symbol).ToList();
            member.Member("unit")!.Value.Fault("wrong-unit", $"{(symbol.Length == 0 ? "nothing" : symbol)} is not a unit for this, use {Spoken.Choice(possible)}");
            return null;
        }

        return unit;
    }

    private static double? Number(JsonWalker parent, string name, bool required)
    {
        if ((required ? parent.Required(name) : parent.Member(name)) is not { } member)
        {
            return null;
        }

        if (member.Element.ValueKind == JsonValueKind.Number && member.Element.TryGetDouble(out double number) && double.IsFinite(number))
        {
            return number;
        }

        member.Fault("wrong-kind", $"{member.Quote()} should be a number");
        return null;
    }

    /// <summary>A member's name as words: headGirth is head girth.</summary>
    private static string Plain(string name) => string.Concat(name.Select(c => char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : $"{c}"));
}
