using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Knowledge;

/// <summary>Holds every id that code names against the data, so that a misspelt one ends the start and does not silently answer "no".</summary>
public static class NamedIds
{
    /// <summary>Gives the same knowledge back.</summary>
    /// <param name="knowledge">What was loaded.</param>
    /// <exception cref="ArgumentException">Code names something that the data do not have.</exception>
    public static KnowledgeBase Checked(KnowledgeBase knowledge) => Lost(knowledge) is { } lost ? throw new ArgumentException($"code names {lost}, which the data do not have", nameof(knowledge)) : knowledge;

    private static string? Lost(KnowledgeBase knowledge) =>
        QuestionIds.All.Where(q => knowledge.Questions.Find(q.Question.Text) is null).Select(q => $"the question '{q.Question}'")
            .Concat(QuestionIds.All.Where(q => q.Options is not null && !knowledge.Questions[q.Question].Options.Select(o => o.Id).ToHashSet(StringComparer.Ordinal).SetEquals(q.Options))
                .Select(q => $"options of '{q.Question}': {string.Join(", ", q.Options!)}"))
            .Concat(OptionIds.All.Where(o => !knowledge.Questions[o.Question].Options.Any(p => p.Id == o.Text)).Select(o => $"the option '{o.Text}' of '{o.Question}'"))
            .Concat(AddOnIds.All.Where(id => !knowledge.Catalogue.AddOns.Any(a => a.Id == id)).Select(id => $"the add-on '{id}'"))
            .Concat(RuleIds.All.Where(id => !knowledge.Rules.All.Any(r => r.Id == id)).Select(id => $"the rule '{id}'"))
            .Concat(EvidenceIds.All.Concat(EvidenceIds.ByOption.SelectMany(f => Entries(f, knowledge))).Where(id => knowledge.Evidence.Find(id.Text) is null).Select(id => $"the number '{id}' of the evidence"))
            .FirstOrDefault();

    private static IEnumerable<EvidenceId> Entries(EvidenceByOption family, KnowledgeBase knowledge) =>
        knowledge.Questions[family.Question].Options.Select(o => o.Id).Except(family.Without.Select(o => o.Text)).Select(o => family[o]);
}
