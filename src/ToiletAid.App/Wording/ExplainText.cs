using Humanizer;
using ToiletAid.App.Sessions;
using ToiletAid.App.Typed;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Explaining;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Wording;

/// <summary>Why, why not, what would change it and what to ask next, as lines to be read aloud.</summary>
/// <param name="knowledge">Questions and kinds of aid.</param>
public sealed class ExplainText(KnowledgeBase knowledge)
{
    /// <summary>Why a kind of aid has its place, with what speaks against it and what was tried of it; nothing where a red flag stopped the ranking.</summary>
    /// <param name="advice">The advice.</param>
    /// <param name="aid">Id of the kind.</param>
    public IEnumerable<string> Why(Advice advice, string aid)
    {
        if (advice.Ranked.FirstOrDefault(r => r.Plan.Aid.Id == aid) is { } ranked)
        {
            yield return $"Place {ranked.Rank} of {advice.Ranked.Length}. {PlanText.Name(ranked.Plan)}.";
            yield return AdviceText.HowSure(ranked);
            foreach (string line in AdviceText.Reasons(ranked))
            {
                yield return line;
            }

            if (ranked.BeatenBy is { } better)
            {
                yield return $"Whatever the priorities, {PlanText.Method(better)} is better.";
            }

            foreach (string line in ranked.Tried.SelectMany(new TrialText(knowledge).Lines))
            {
                yield return line;
            }

            yield break;
        }

        foreach (var ruledOut in advice.RuledOut.Where(r => r.Aid.Id == aid))
        {
            yield return $"{ruledOut.Aid.Name} is ruled out.";
            foreach (var reason in ruledOut.Reasons)
            {
                yield return AdviceText.Sentence(reason);
            }
        }
    }

    /// <summary>What would put a method first.</summary>
    public IEnumerable<string> WhyNot(WhyNot found)
    {
        string name = Name(found.Aid);
        if (found.IsFirst)
        {
            return [$"{name} is first."];
        }

        if (found.Changes.IsEmpty)
        {
            return [$"No change of one answer would put {PlanText.Lower(name)} first, nor would any pair of changes that was tried. {found.Tried} changes were tried."];
        }

        return
        [
            found.Changes.Length == 1 ? $"One other answer would put {PlanText.Lower(name)} first." : $"Two other answers together would put {PlanText.Lower(name)} first.",
            .. found.Changes.Select(Change),
        ];
    }

    /// <summary>Answers that would change the first place if they were a little wrong.</summary>
    public IEnumerable<string> Counterfactuals(IReadOnlyCollection<Counterfactual> counterfactuals) => counterfactuals.Count == 0
        ? ["First place stays the same if any one answer is off by one step or one measuring error."]
        :
        [
            $"{Spoken.Capital("answer".ToQuantity(counterfactuals.Count, ShowQuantityAs.Words))} would change the first place if {(counterfactuals.Count == 1 ? "it were" : "they were")} a little different.",
            .. counterfactuals.Select(f => $"{Change(f.Change)} Then {PlanText.Lower(Name(f.First))} would be first."),
        ];

    /// <summary>What to ask next.</summary>
    public static IEnumerable<string> Next(IReadOnlyList<QuestionValue> plan)
    {
        if (plan.Count == 0)
        {
            return ["No other question of this depth can change the first place, a caution or the set-up."];
        }

        return
        [
            MoreQuestions(plan.Count),
            $"Next: {plan[0].Question.Prompt}",
            .. Bring(plan[0]),
            .. plan.Count > 1 ? [$"After it: {plan.Skip(1).Select(v => v.Question.Name).Humanize("and")}."] : (string[])[],
        ];
    }

    /// <summary>How many questions are still worth asking.</summary>
    public static string MoreQuestions(int count) =>
        $"{Spoken.Capital("more question".ToQuantity(count, ShowQuantityAs.Words))} could change the result.";

    private static IEnumerable<string> Bring(QuestionValue value)
    {
        if (value.ChangeShare is > 0 and < 1)
        {
            yield return $"{SlotText.OfHundred(value.ChangeShare)} of 100 likely answers would put another plan first.";
        }

        if (!value.Rules.IsEmpty)
        {
            yield return $"{Spoken.Capital("rule".ToQuantity(value.Rules.Length, ShowQuantityAs.Words))} about the best plans cannot be settled without it.";
        }

        if (value.SetsUp)
        {
            yield return "The set-up depends on it.";
        }
    }

    private static string Change(AnswerChange change)
    {
        string to = AnswerWording.Of(change.Question, change.To);
        return change.From is null or AnswerValue.NotKnown
            ? $"{Spoken.Capital(change.Question.Name)}, not known now. If it is: {to}."
            : $"{Spoken.Capital(change.Question.Name)}. Now: {AnswerWording.Of(change.Question, change.From)}. If it were: {to}.";
    }

    private string Name(string aid) => knowledge.Catalogue.Aids.First(a => a.Id == aid).Name;
}
