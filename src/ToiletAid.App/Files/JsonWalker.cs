using System.Globalization;
using System.Text.Json;

namespace ToiletAid.App.Files;

/// <summary>A place in a JSON document, that collects what is wrong with it.</summary>
/// <param name="Element">What stands there.</param>
/// <param name="Path">Where it stands, such as sessions[0].answers.grasp.</param>
/// <param name="Issues">Where faults are collected.</param>
internal readonly record struct JsonWalker(JsonElement Element, string Path, List<Issue> Issues)
{
    /// <summary>Most faults that are collected: nobody mends more at once, and a hostile file cannot fill the memory.</summary>
    private const int MostIssues = 100;

    private const int LongestQuote = 40;

    /// <summary>True when no more faults are collected.</summary>
    public bool IsFull => Issues.Count >= MostIssues;

    /// <summary>Notes a fault at this place.</summary>
    public void Fault(string code, string message)
    {
        if (!IsFull)
        {
            Issues.Add(new(code, Path, message));
        }
    }

    /// <summary>What stands here, short enough to be read aloud.</summary>
    public string Quote()
    {
        string text = Shown(Element.ValueKind == JsonValueKind.String ? Element.GetString()! : Element.GetRawText());
        return text.Length == 0 ? "nothing" : text;
    }

    /// <summary>Text of a file as it can be read aloud: short, and without control characters, which a terminal would obey.</summary>
    public static string Shown(string text)
    {
        // Taken a little longer first, so that a megabyte is not cleaned to show forty letters.
        bool isLong = text.Length > 4 * LongestQuote;
        string start = isLong ? text[..(4 * LongestQuote)] : text;
        string clean = new([.. start.Select(c => char.IsControl(c) || char.IsSurrogate(c) || IsFormatting(c) ? ' ' : c)]);
        clean = string.Join(' ', clean.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return clean.Length > LongestQuote ? clean[..LongestQuote].TrimEnd() + " and more" : isLong ? clean + " and more" : clean;
    }

    /// <summary>The member called <paramref name="name"/>, or null.</summary>
    public JsonWalker? Member(string name) =>
        Element.ValueKind == JsonValueKind.Object && Element.TryGetProperty(name, out var e) ? new(e, Join(name), Issues) : null;

    /// <summary>The member called <paramref name="name"/>, with a fault when it is missing.</summary>
    public JsonWalker? Required(string name)
    {
        var member = Member(name);
        if (member is null)
        {
            Fault("missing-member", $"{name} is missing, add it");
        }

        return member;
    }

    /// <summary>Every member; a fault when this is no object.</summary>
    public IEnumerable<(string Name, JsonWalker At)> Members()
    {
        if (!Expect(JsonValueKind.Object, "an object in braces"))
        {
            yield break;
        }

        foreach (var p in Element.EnumerateObject())
        {
            yield return (p.Name, new(p.Value, Join(p.Name), Issues));
        }
    }

    /// <summary>Every item; a fault when this is no array.</summary>
    public IEnumerable<JsonWalker> Items()
    {
        if (!Expect(JsonValueKind.Array, "a list in square brackets"))
        {
            yield break;
        }

        int i = 0;
        foreach (var e in Element.EnumerateArray())
        {
            yield return new(e, $"{Path}[{(i++).ToString(CultureInfo.InvariantCulture)}]", Issues);
        }
    }

    /// <summary>A fault for each member that is not one of these.</summary>
    public void OnlyMembers(params ReadOnlySpan<string> names)
    {
        if (Element.ValueKind != JsonValueKind.Object)
        {
            return;
        }

        foreach (var p in Element.EnumerateObject())
        {
            if (IsFull)
            {
                return;
            }

            if (!names.Contains(p.Name))
            {
                new JsonWalker(p.Value, Join(p.Name), Issues).Fault("unknown-member", $"{Shown(p.Name)} is not known here, use {string.Join(", ", names)}");
            }
        }
    }

    /// <summary>The text that stands here, or null with a fault.</summary>
    public string? Text() => Expect(JsonValueKind.String, "text in quotes") ? Element.GetString() : null;

    private bool Expect(JsonValueKind kind, string what)
    {
        if (Element.ValueKind == kind)
        {
            return true;
        }

        Fault("wrong-kind", $"{Quote()} should be {what}");
        return false;
    }

    private static bool IsFormatting(char c) =>
        char.GetUnicodeCategory(c) is UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;

    private string Join(string name) => Path.Length == 0 ? Shown(name) : $"{Path}.{Shown(name)}";
}
