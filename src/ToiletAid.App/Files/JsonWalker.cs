using System.Globalization;
using System.Text.Json;

namespace ToiletAid.App.Files;

/// <summary>A place in a JSON document, that collects what is wrong with it.</summary>
/// <param name="Element">What stands there.</param>
/// <param name="Path">Where it stands, such as sessions[0].answers.grasp.</param>
/// <param name="Issues">Where faults are collected.</param>
internal readonly record struct JsonWalker(JsonElement Element, string Path, List<Issue> Issues)
{
    private const int LongestQuote = 40;

    /// <summary>Notes a fault at this place.</summary>
    public void Fault(string code, string message) => Issues.Add(new(code, Path, message));

    /// <summary>What stands here, short enough to be read aloud.</summary>
    public string Quote()
    {
        string text = Element.ValueKind == JsonValueKind.String ? Element.GetString()! : Element.GetRawText();
        text = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).Replace('\0', ' ');
        return text.Length > LongestQuote ? text[..LongestQuote] + " and more" : text.Length == 0 ? "nothing" : text;
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
            if (!names.Contains(p.Name))
            {
                new JsonWalker(p.Value, Join(p.Name), Issues).Fault("unknown-member", $"{p.Name} is not known here, use {string.Join(", ", names)}");
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

    private string Join(string name) => Path.Length == 0 ? name : $"{Path}.{name}";
}
