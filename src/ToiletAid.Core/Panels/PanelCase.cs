using System.Collections.Immutable;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Panels;

/// <summary>A case that raters and the tool rank.</summary>
/// <param name="Code">Code of the case.</param>
/// <param name="Known">The answers that raters see.</param>
/// <param name="Advice">What the tool says.</param>
public sealed record PanelCase(string Code, Answers Known, Advice Advice)
{
    /// <summary>The place that the tool gives each kind, in their order; null for one that it rules out.</summary>
    /// <param name="kinds">Ids of the kinds.</param>
    public ImmutableArray<int?> Tool(ImmutableArray<string> kinds) => [.. kinds.Select(k => Advice.Ranked.FirstOrDefault(r => r.Plan.Aid.KindId == k)?.Rank)];
}
