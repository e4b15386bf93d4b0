using Humanizer;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAidTui.Commands.About;

/// <summary>The facts as lines to be read aloud.</summary>
internal static class AboutText
{
    internal static IEnumerable<string> Lines(AboutFacts facts, bool withSources)
    {
        string[] version = facts.Version.Split('+');
        yield return $"toiletaid {version[0]}{(version.Length > 1 ? $", built from {version[1][..Math.Min(12, version[1].Length)]}" : string.Empty)}.";
        yield return $"Data {facts.Knowledge}. Two programs with the same data and version give the same result.";
        yield return $"It runs on {AboutFacts.Runtime}, {AboutFacts.Machine}.";
        yield return $"Licence: {AboutFacts.Licence}. It supports trained staff and is not a diagnosis.";
        yield return $"Numbers in the data: {facts.Numbers.Length}.";
        foreach (var group in facts.Numbers.GroupBy(n => n.Basis).OrderBy(g => g.Key))
        {
            yield return $"{Named(group.Key)}: {group.Count()}.";
        }

        foreach (var file in facts.Numbers.GroupBy(n => n.File))
        {
            yield return $"In {file.Key}: {string.Join(", ", file.GroupBy(n => n.Basis).OrderBy(g => g.Key).Select(g => $"{g.Count()} {(g.Key is { } b ? Words.Of(b).Replace('-', ' ') : "of no stated basis")}"))}.";
        }

        foreach (string line in withSources ? Sources(facts) : ["Type toiletaid about --sources for the publications."])
        {
            yield return line;
        }

        yield return $"Made with {"library".ToQuantity(facts.Libraries.Length)}.";
        foreach (var licence in facts.Libraries.GroupBy(l => l.Licence))
        {
            yield return $"Under {licence.Key}: {string.Join(", ", licence.Select(l => $"{l.Name} {l.Version}"))}.";
        }

        yield return "Type toiletaid about --notices for the licences in full.";
    }

    /// <summary>Publications with how many numbers rest on each; those that were not read say so.</summary>
    private static IEnumerable<string> Sources(AboutFacts facts) => facts.Numbers
        .Where(n => n.Basis is Basis.Published or Basis.FromMemory)
        .GroupBy(n => (n.Basis, n.Source))
        .OrderBy(g => g.Key)
        .Select(g => $"{Named(g.Key.Basis)}, {"number".ToQuantity(g.Count())}: {g.Key.Source!.TrimEnd('.')}.");

    private static string Named(Basis? basis) => basis switch
    {
        Basis.Published => "Published",
        Basis.CommonPractice => "Common practice",
        Basis.Estimate => "Estimates, to be measured",
        Basis.FromMemory => "From memory, to be verified",
        Basis.Decision => "Decisions of this project",
        Basis.Measured => "Measured here",
        Basis.Computed => "Counted over simulated people",
        _ => "Of no stated basis",
    };
}
