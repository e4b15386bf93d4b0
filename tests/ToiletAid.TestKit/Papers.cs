using System.Collections.Concurrent;
using ToiletAid.App.Documents;
using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.Core.Person;
using ToiletAid.Core.Simulation;

namespace ToiletAid.TestKit;

/// <summary>Papers of the demo people. A case is computed once, since advice takes a second and a paper a moment.</summary>
internal static class Papers
{
    private const ulong SimulatedSeed = 24;

    private static readonly ConcurrentDictionary<string, Case> Cases = new(StringComparer.Ordinal);

    internal static Case About(string name, string language = "en-GB")
    {
        var about = Cases.GetOrAdd(name, _ => Compute(DemoPeople.File(name)));
        return about with { English = English.Of(language, about.Words) };
    }

    /// <summary>A person of profiles/visits/, who has several visits and a trial.</summary>
    internal static Case Visits(string name) => Cases.GetOrAdd(name, _ => Compute(Path.Combine(DemoPeople.Folder, "visits", name + ".json")));

    /// <summary>A simulated person, measured; one whose plans can be looked at beside those of the demo people.</summary>
    internal static Case Simulated(int number) => Cases.GetOrAdd($"simulated {number}", _ =>
    {
        var knowledge = BuiltIn.Knowledge();
        return VisitDocuments.About(knowledge, new PeopleSimulator(knowledge, BuiltIn.People()).Make(SimulatedSeed, number, Depth.Measured, new(2026, 3, 9)), null, "en-GB")!;
    });

    internal static Document Of(string name, string kind, string language = "en-GB") => kind switch
    {
        "note" => VisitDocuments.Note(About(name, language)),
        _ => VisitDocuments.Sheet(About(name, language), toHelper: kind == "helper"),
    };

    internal static string Text(string name, string kind, string language = "en-GB") =>
        Text(Of(name, kind, language));

    internal static string Text(Document document) => string.Concat(PlainDocument.Lines(document).Select(l => l + "\n"));

    private static Case Compute(string file)
    {
        var knowledge = BuiltIn.Knowledge();
        Assert.True(new ProfileFile(knowledge.Questions).Read(file).TryGet(out var profile));
        return VisitDocuments.About(knowledge, profile, null, "en-GB")!;
    }
}
