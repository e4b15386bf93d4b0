using System.Collections.Concurrent;
using ToiletAid.App.Documents;
using ToiletAid.App.Files;

namespace ToiletAid.Acceptance.Tests.Documents;

/// <summary>Papers of the demo people. A case is computed once, since advice takes a second and a paper a moment.</summary>
internal static class Papers
{
    private static readonly ConcurrentDictionary<string, Case> Cases = new(StringComparer.Ordinal);

    internal static Case About(string name, string language = "en-GB")
    {
        var about = Cases.GetOrAdd(name, Compute);
        return about with { English = English.Of(language, about.Words) };
    }

    internal static Document Of(string name, string kind, string language = "en-GB") => kind switch
    {
        "note" => Paper.Note(About(name, language)),
        _ => Paper.Sheet(About(name, language), toHelper: kind == "helper"),
    };

    internal static string Text(string name, string kind, string language = "en-GB") =>
        string.Concat(PlainDocument.Lines(Of(name, kind, language)).Select(l => l + "\n"));

    private static Case Compute(string name)
    {
        var knowledge = BuiltIn.Knowledge();
        Assert.True(new ProfileFile(knowledge.Questions).Read(DemoPeople.File(name)).TryGet(out var profile));
        return Paper.About(knowledge, profile, null, "en-GB")!;
    }
}
