using System.Collections.Concurrent;
using ToiletAid.App.Documents;
using ToiletAid.App.Files;

namespace ToiletAid.TestKit;

/// <summary>Papers of the demo people. A case is computed once, since advice takes a second and a paper a moment.</summary>
internal static class Papers
{
    private static readonly ConcurrentDictionary<string, Case> Cases = new(StringComparer.Ordinal);

    internal static Case About(string name, string language = "en-GB")
    {
        var about = Cases.GetOrAdd(name, _ => Compute(DemoPeople.File(name)));
        return about with { English = English.Of(language, about.Words) };
    }

    /// <summary>A person of profiles/visits/, who has several visits and a trial.</summary>
    internal static Case Visits(string name) => Cases.GetOrAdd(name, _ => Compute(Path.Combine(DemoPeople.Folder, "visits", name + ".json")));

    internal static Document Of(string name, string kind, string language = "en-GB") => kind switch
    {
        "note" => VisitDocuments.Note(About(name, language)),
        _ => VisitDocuments.Sheet(About(name, language), toHelper: kind == "helper"),
    };

    internal static string Text(string name, string kind, string language = "en-GB") =>
        string.Concat(PlainDocument.Lines(Of(name, kind, language)).Select(l => l + "\n"));

    private static Case Compute(string file)
    {
        var knowledge = BuiltIn.Knowledge();
        Assert.True(new ProfileFile(knowledge.Questions).Read(file).TryGet(out var profile));
        return VisitDocuments.About(knowledge, profile, null, "en-GB")!;
    }
}
