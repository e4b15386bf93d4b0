using System.Collections.Immutable;
using ToiletAid.App.Files;

namespace ToiletAid.App.Documents;

/// <summary>Words of the documents, as in the file.</summary>
public sealed record DocumentData
{
    /// <summary>Short labels by question.</summary>
    public required ImmutableDictionary<string, string> Labels { get; init; }

    /// <summary>Answers that are worth telling in the first lines, by question: ids of options, or * for any. What is not here is usual.</summary>
    public required ImmutableDictionary<string, ImmutableArray<string>> Notable { get; init; }

    /// <summary>Codes of the International Classification of Functioning, Disability and Health that have been read in a published copy.</summary>
    public required ImmutableArray<FunctionCode> Icf { get; init; }

    /// <summary>Classes of ISO 9999 that have been read in a published text.</summary>
    public required ImmutableArray<AidClass> Iso { get; init; }

    /// <summary>Kinds of aid in plain words, to the person.</summary>
    public required ImmutableDictionary<string, string> Aids { get; init; }

    /// <summary>Kinds of aid that are called otherwise when the helper is spoken to.</summary>
    public required ImmutableDictionary<string, string> AidsForHelper { get; init; }

    /// <summary>Add-ons in plain words.</summary>
    public required ImmutableDictionary<string, string> AddOns { get; init; }

    /// <summary>Words that are others in the United States.</summary>
    public required ImmutableDictionary<string, string> UnitedStates { get; init; }

    /// <summary>Sentences and headings; slots stand in braces.</summary>
    public required ImmutableDictionary<string, string> Texts { get; init; }

    /// <summary>The built-in words.</summary>
    public static DocumentData Load() => BuiltIn.Load("documents.json", DocumentsJson.Default.DocumentData);

    /// <summary>A text with its slots filled.</summary>
    /// <exception cref="KeyNotFoundException">There is no such text.</exception>
    public string Text(string key, params ReadOnlySpan<(string Name, string Value)> slots)
    {
        string text = Texts[key];
        foreach (var (name, value) in slots)
        {
            text = text.Replace("{" + name + "}", value, StringComparison.Ordinal);
        }

        return text;
    }
}
