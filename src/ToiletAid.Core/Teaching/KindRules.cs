using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Safety;

namespace ToiletAid.Core.Teaching;

/// <summary>What the hazard table says of a kind by itself: each rule is asked with nothing known, then with one answer known, over all plans of the kind.</summary>
/// <param name="knowledge">Questions, kinds and rules.</param>
public sealed class KindRules(KnowledgeBase knowledge)
{
    /// <summary>Stands for the highest number that a question takes.</summary>
    public const string High = "high";

    private readonly HazardTable _hazards = new(knowledge.Rules, knowledge.Questions, knowledge.Evidence);

    /// <summary>What rules out every plan of a kind, whatever else is known.</summary>
    /// <param name="aid">The kind.</param>
    public IEnumerable<KindRule> RulesOut(Aid aid) => Of(_hazards.RulesOut, aid, _ => true);

    /// <summary>Warnings that the kind brings by itself, most serious first.</summary>
    /// <param name="aid">The kind.</param>
    public IEnumerable<KindRule> Cautions(Aid aid) =>
        Of(_hazards.Cautions.Where(c => !c.OfThePerson), aid, p => p.Companion is null && p.AddOns.IsEmpty).OrderBy(r => r.Finding.Rule.Severity);

    private IEnumerable<KindRule> Of(IEnumerable<RuleCheck> rules, Aid aid, Func<Plan, bool> counts)
    {
        foreach (var rule in rules)
        {
            var byQuestion = rule.Questions.Select(q => knowledge.Questions[q])
                .Select(q => (q.Id, Found: Given(q).Select(a => (a.Option, Finding: Always(rule, aid, a.Known, counts))).Where(f => f.Finding is not null).ToList()))
                .ToList();

            // What no answer brings is about a question that was not asked yet, and not about the kind.
            if (Always(rule, aid, Answers.None, counts) is { } forAll)
            {
                if (byQuestion.TrueForAll(q => q.Found.Count > 0))
                {
                    yield return new(forAll, null, []);
                }

                continue;
            }

            foreach (var (id, found) in byQuestion.Where(q => q.Found.Count > 0))
            {
                yield return new(found[0].Finding!, id, [.. found.Select(f => f.Option)]);
            }
        }
    }

    private static IEnumerable<(string Option, Answers Known)> Given(Question question) => question.Kind switch
    {
        QuestionKind.Choice => question.Options.Select(o => (o.Id, Only(question, new AnswerValue.Choice(o.Id)))),
        QuestionKind.Many => question.Options.Select(o => (o.Id, Only(question, new AnswerValue.Many([o.Id])))),
        QuestionKind.Number => [(High, Only(question, new AnswerValue.Number(question.Number!.High, question.Number.Units[0])))],
        _ => [],
    };

    private static Answers Only(Question question, AnswerValue value) => Answers.None.With(question.Id, new(value, null));

    /// <summary>The rule where it applies to all plans that count.</summary>
    private Finding? Always(RuleCheck rule, Aid aid, Answers known, Func<Plan, bool> counts)
    {
        RuleOutcome? last = null;
        foreach (var plan in new PlanSpace(knowledge.Catalogue, knowledge.Evidence, known).Of(aid).Where(counts))
        {
            last = rule.Check(new(knowledge, known, plan, new PlanDemands()));
            if (last.Applies != true)
            {
                return null;
            }
        }

        return last is null ? null : new(rule.Rule, last.Slots);
    }
}
