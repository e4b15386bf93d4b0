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
    public IEnumerable<KindRule> RulesOut(Aid aid) => Of(_hazards.RulesOut, aid, _ => true, mayLookElsewhere: false);

    /// <summary>Warnings that the kind brings by itself, most serious first.</summary>
    /// <param name="aid">The kind.</param>
    public IEnumerable<KindRule> Cautions(Aid aid) =>
        Of(_hazards.Cautions.Where(c => !c.OfThePerson), aid, p => p.Companion is null, mayLookElsewhere: true).OrderBy(r => r.Finding.Rule.Severity);

    private IEnumerable<KindRule> Of(IEnumerable<RuleCheck> rules, Aid aid, Func<Plan, bool> counts, bool mayLookElsewhere)
    {
        foreach (var rule in rules)
        {
            Finding? When(Answers known) => Always(rule, aid, known, counts, mayLookElsewhere);
            var byQuestion = rule.Questions.Select(q => knowledge.Questions[q])
                .Select(q => (Question: q, Found: Given(q).Select(a => (a.Option, Finding: When(a.Known))).Where(f => f.Finding is not null).ToList()))
                .ToList();
            if (When(Answers.None) is { } forAll)
            {
                // What no answer brings is about a question that was not asked yet, and not about the kind.
                var choices = byQuestion.FindAll(q => q.Question.Kind != QuestionKind.Number);
                if (choices.TrueForAll(q => q.Found.Count > 0))
                {
                    var part = choices.Find(q => q.Found.Count < q.Question.Options.Length);
                    yield return new(forAll, part.Question?.Id, part.Question is null ? [] : [.. part.Found.Select(f => f.Option)]);
                }

                continue;
            }

            foreach (var (question, found) in byQuestion.Where(q => q.Found.Count > 0))
            {
                yield return new(found[0].Finding!, question.Id, [.. found.Select(f => f.Option)]);
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

    /// <summary>The rule where it applies to all plans that count. One that looks at other answers than its own may not apply to somebody else.</summary>
    private Finding? Always(RuleCheck rule, Aid aid, Answers known, Func<Plan, bool> counts, bool mayLookElsewhere)
    {
        RuleOutcome? last = null;
        var looked = new List<QuestionId>();
        var watched = known.Watched(looked);
        foreach (var plan in new PlanSpace(knowledge.Catalogue, knowledge.Evidence, known).Of(aid).Where(counts))
        {
            last = rule.Check(new(knowledge, watched, plan, new PlanDemands()));
            if (last.Applies != true)
            {
                return null;
            }
        }

        return last is null || (!mayLookElsewhere && looked.Except(rule.Questions).Any()) ? null : new(rule.Rule, last.Slots);
    }
}
